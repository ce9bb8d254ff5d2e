import { expect, test } from 'vitest';
import { photograph } from '../../fixtures/synthetic/photo';
import { drawScene, finishes } from '../../fixtures/synthetic/scene';
import { threadedRod } from '../../fixtures/synthetic/threaded-rod';
import { measured } from '../measured';

/** Drawn photos, not photographs (fixtures/synthetic). */
const identify = async (bytes: Uint8Array) => measured(bytes);

test.each([
  ['right', 1],
  ['left', -1],
] as const)(
  'a %s-handed thread is called so',
  async (name, hand) => {
    const drawn = drawScene(7, 1);
    const rod = { ...drawn.fitting.rod, hand, dents: [] };
    const { bytes, truth } = await photograph({
      ...drawn,
      field: 'light',
      printScale: [1, 1],
      bars: null,
      finish: { ...finishes.find((finish) => finish.name === 'dull')!, mirror: 0.02 },
      fitting: {
        ...drawn.fitting,
        rod,
        solids: [threadedRod(rod), ...drawn.fitting.solids.slice(1)],
      },
    });
    const result = await identify(bytes);
    expect(result.outcome).toBe('measured');
    if (result.outcome !== 'measured') return;
    expect(result.measurement.hand).toBe(name);
    expect(Math.abs(result.measurement.pitchMm.value / truth.pitch_mm - 1)).toBeLessThan(0.01);
  },
  60_000,
);

test('hose barbs are not taken for the thread', async () => {
  // A bright thread that mirrors the paper, and barbs beyond the hex that are plainer than it.
  const scene = await photograph(drawScene(2, 51));
  const result = await identify(scene.bytes);
  if (result.outcome !== 'measured') throw new Error(result.refusal.reason);
  const { pitchMm, majorDiameterMm } = result.measurement;
  expect(Math.abs(pitchMm.value - 1.5875)).toBeLessThan(4 * pitchMm.u);
  expect(pitchMm.u).toBeLessThan(0.1);
  expect(Math.abs(majorDiameterMm.value - 18.98)).toBeLessThan(4 * majorDiameterMm.u);
}, 60_000);
