import { expect, test } from 'vitest';
import { overlapMm } from '../../src/journey/wear/overlap';
import { findThread } from '../../src/standards/threads';
import { overlapShape } from '../../src/ui/wear/overlap-geometry';

test('the half section is to scale: what bears is as high as the overlap', () => {
  for (const name of ['3/4-16 UNF', 'M22x1.5', 'G1/2']) {
    const thread = findThread(name)!;
    const worn = thread.basicMajorMm - 0.6;
    const shape = overlapShape(thread, worn, thread.crests.minMm);
    const [low, high] = shape.bearing[0]!;
    expect(high[1] - low[1], name).toBeCloseTo(overlapMm(worn, thread), 9);
    // Flanks lean by half the flank angle.
    const lean = Math.abs(high[0] - low[0]) / (high[1] - low[1]);
    expect((Math.atan(lean) * 360) / Math.PI).toBeCloseTo(thread.flankAngleDeg, 6);
    // At the pitch line a tooth takes half of the pitch.
    expect(shape.part.length).toBe(shape.mate.length);
    expect(shape.lengthMm).toBeCloseTo(3 * thread.pitchMm, 9);
  }
});

test('nothing bears once the crest is below the bore', () => {
  const thread = findThread('3/4-16 UNF')!;
  expect(overlapShape(thread, 17.5, thread.crests.minMm).bearing).toEqual([]);
  for (const [, r] of overlapShape(thread, 10, thread.crests.minMm).part)
    expect(Number.isFinite(r)).toBe(true);
});
