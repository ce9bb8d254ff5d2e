import { readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { nodeDecoders } from '../../../src/cli/node-decoders';
import { loadNodeVision } from '../../../src/cli/node-vision';
import { readPhoto } from '../../../src/journey/1-photo/read-photo';
import { findReference } from '../../../src/journey/2-reference/find-reference';
import { findFitting } from '../../../src/journey/3-find/find-fitting';
import { findBore, mouthGuesses } from '../../../src/journey/4-bore/find-bore';
import type { PlacedBore } from '../../../src/journey/4-bore/placed-bore';
import { wallPatch } from '../../../src/journey/4-bore/wall-patch';
import { wallPitch } from '../../../src/journey/4-bore/wall-phases';
import type { PosedPhoto } from '../../../src/journey/4-thread-signal/posed-photo';
import { defaultOptions } from '../../../src/journey/identification';

/** A render of known geometry, mouth up. */
const folder = new URL('../../../fixtures/female/', import.meta.url);
const truth = JSON.parse(readFileSync(new URL('gf022.truth.json', folder), 'utf8'));

let photo: PosedPhoto;
let found: PlacedBore;

beforeAll(async () => {
  const bytes = new Uint8Array(readFileSync(new URL('gf022.jpg', folder)));
  const vision = await loadNodeVision();
  const read = await readPhoto(new AbortController().signal, bytes, nodeDecoders);
  if (!read.ok) throw new Error(read.reason);
  const { grey } = read.value;
  const exact = { x: 1, y: 1, u: 1e-6 };
  const reference = findReference(read.value, vision, exact, defaultOptions.reference);
  if (!reference.ok) throw new Error(reference.reason);
  const fitting = findFitting(grey, reference.value, vision);
  if (!fitting.ok) throw new Error(fitting.reason);
  photo = { grey, camera: reference.value.camera };
  const { usual, others } = mouthGuesses(photo.camera, fitting.value);
  const placed = findBore(photo, [...usual, ...others]);
  if (!placed) throw new Error('no bore');
  found = placed;
}, 60_000);

test.each([-0.012, 0.012])(
  'crests on the wall draw a pitch that is off by %f towards the true one',
  (off) => {
    const { seat, scale } = found;
    const pitchMm = (truth.pitch_mm / scale) * (1 + off);
    const drawn = wallPitch(photo, seat.bore, seat.window, { pitchMm, hand: 'right' });
    if (!drawn) throw new Error('nothing seen');
    expect(Math.abs((drawn.value * scale) / truth.pitch_mm - 1)).toBeLessThan(0.006);
    expect(drawn.u / drawn.value).toBeLessThan(0.006);
  },
);

test('of a bore that is looked into along its axis no wall is seen', () => {
  const { bore } = found.seat;
  const { centre } = photo.camera;
  const inwards = bore.mouth.map((v, i) => v - centre[i]);
  const n = Math.hypot(...inwards);
  const along = { ...bore, inwards: inwards.map((v) => v / n) as unknown as typeof bore.inwards };
  const fold = { middleMm: 4, pitchMm: truth.pitch_mm, hand: 'right' as const };
  expect(wallPatch(photo, along, fold)).toBeNull();
  expect(wallPatch(photo, bore, fold)).not.toBeNull();
});
