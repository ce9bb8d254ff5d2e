import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { type Corrections, defaultOptions } from '../../../src/journey/identification';
import { measured as measuredOnce } from '../../measured';

/** A rendered photo of known geometry; the photo frame of its truth's axis is taken from the answer without help. */
const folder = new URL('../../../fixtures/photos/', import.meta.url);
const truth = JSON.parse(readFileSync(new URL('d11.truth.json', folder), 'utf8'));
const bytes = new Uint8Array(readFileSync(new URL('d11.jpg', folder)));

async function measured(corrections: Corrections | null) {
  return measuredOnce(bytes, { ...defaultOptions, corrections });
}

/** Without any help; both tests start from it. */
async function measuredAlone() {
  const alone = await measured(null);
  if (alone.outcome !== 'measured' || !alone.overlay.axis) throw new Error('not measured');
  return { ...alone, axis: alone.overlay.axis };
}

test('an axis drawn over the thread is taken, moved a little or not; one drawn elsewhere is not overruled', async () => {
  const alone = await measuredAlone();
  const [from, to] = alone.axis;
  const px = alone.reference.pxPerMm;
  const moved = await measured({
    axis: [
      [from[0] + px, from[1]],
      [to[0], to[1] + px],
    ],
    side: 'both',
  });
  if (moved.outcome !== 'measured') throw new Error(moved.refusal.reason);
  expect(Math.abs(moved.measurement.pitchMm.value / truth.pitch_mm - 1)).toBeLessThan(0.006);
  const nonsense = await measured({
    axis: [
      [60, 60],
      [60 + 12 * px, 60 + 3 * px],
    ],
    side: 'both',
  });
  const pitch = nonsense.outcome === 'measured' ? nonsense.measurement.pitchMm.value : 0;
  expect(pitch).not.toBeCloseTo(alone.measurement.pitchMm.value, 3);
}, 60_000);

test('one side alone gives another answer than both', async () => {
  const { axis } = await measuredAlone();
  const [left, right] = [
    await measured({ axis, side: 'left' }),
    await measured({ axis, side: 'right' }),
  ];
  if (left.outcome !== 'measured' || right.outcome !== 'measured') throw new Error('refused');
  expect(left.overlay.outline[1].length).toBe(0);
  expect(right.overlay.outline[0].length).toBe(0);
  expect(left.measurement.majorDiameterMm.value).not.toBe(right.measurement.majorDiameterMm.value);
}, 60_000);
