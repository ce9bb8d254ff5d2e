import { describe, expect, it } from 'vitest';
import type { OutlinePoint } from '../../../src/journey/4-thread-signal/outline-edges';
import { fitThread } from '../../../src/journey/5-measurement/fit-thread';
import { onWholeFlanks } from '../../../src/journey/5-measurement/whole-flanks';
import { seededRandom } from '../../../src/quantity/random';
import { drawnPriors, drawnThread, startAt } from './drawn-outline';

const { pitchMm, radiusMm, flat } = drawnThread;

/** ISO 68-1's crest flats and straight flanks, and beside them a cone or chamfer that cuts them off. */
function outline(cutFromTurns: number, noiseMm: number): OutlinePoint[] {
  const random = seededRandom(3);
  return (['left', 'right'] as const).flatMap((side) =>
    Array.from({ length: 260 }, (_, i): OutlinePoint => {
      const s = -6.5 + i * 0.05;
      const turns = s / pitchMm + (side === 'left' ? 0 : 0.5);
      const off = Math.abs(turns - Math.round(turns));
      const tooth = -Math.min(0.61, Math.max(0, (off - flat / 2) * Math.sqrt(3))) * pitchMm;
      const chamfer = Math.min(0, (cutFromTurns - s / pitchMm) * 1.1 * pitchMm);
      const r = radiusMm + Math.min(tooth, chamfer) + noiseMm * random.normal();
      return { side, photo: [0, 0], s, r, slope: 0, uMm: 0.01 };
    }),
  );
}

const fitted = (points: readonly OutlinePoint[]) =>
  fitThread(points, 0, startAt(1.49, 0), drawnPriors);

describe('flanks at the ends of a thread', () => {
  it('whole to the last: all are kept', () => {
    const points = outline(99, 0.01);
    expect(onWholeFlanks(points, fitted(points)).length).toBeGreaterThan(0.93 * points.length);
  });

  it('cut off by a chamfer: left out, and the pitch is right without them', () => {
    const points = outline(3.6, 0.01);
    const kept = onWholeFlanks(points, fitted(points));
    const after = fitted(kept);
    expect(Math.max(...kept.map((q) => q.s))).toBeLessThan(4.1 * pitchMm);
    expect(Math.min(...kept.map((q) => q.s))).toBeLessThan(-4 * pitchMm);
    expect(Math.abs(after.pitchMm / pitchMm - 1)).toBeLessThan(0.0005);
  });
});
