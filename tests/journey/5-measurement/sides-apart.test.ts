import { describe, expect, it } from 'vitest';
import type { OutlinePoint } from '../../../src/journey/4-thread-signal/outline-edges';
import { fitThread } from '../../../src/journey/5-measurement/fit-thread';
import { sidesApart } from '../../../src/journey/5-measurement/sides-apart';
import { anyForm } from '../../../src/journey/5-measurement/thread-form';
import type { ThreadSolution } from '../../../src/journey/5-measurement/thread-solution';
import { seededRandom } from '../../../src/quantity/random';

const pitchMm = 1.5;

/** Two outlines with crests of 60° flanks, the right one's pitch `share` of the left one's. */
function solution(share: number): ThreadSolution {
  const random = seededRandom(4);
  const points = (['left', 'right'] as const).flatMap((side) =>
    Array.from({ length: 240 }, (_, i): OutlinePoint => {
      const s = -6 + i * 0.05;
      const turns = s / pitchMm / (side === 'left' ? 1 : share) + (side === 'left' ? 0 : 0.5);
      const off = Math.abs(turns - Math.round(turns));
      const r = 8 - Math.min(0.61, Math.max(0, (off - 0.07) * Math.sqrt(3))) * pitchMm;
      return {
        side,
        photo: [0, 0],
        s,
        r: r + 0.01 * random.normal(),
        slope: 0,
        uMm: 0.01,
      };
    }),
  );
  const start = {
    pitchMm,
    crestS: 0,
    left: [7.6, 0] as const,
    right: [7.6, 0] as const,
    amplitudeMm: 0.4,
    explained: 0.9,
  };
  const fit = fitThread(points, 0, start, {
    blurMm: 0.02,
    form: anyForm,
    handed: 1,
    ridges: null,
    mmPerPx: 0.1,
  });
  return { points, fit } as unknown as ThreadSolution;
}

describe('sides with pitches of their own', () => {
  it('the two outlines of one thread are not apart', () => {
    expect(sidesApart(solution(1))).toBe(0);
  });

  it('a shadow on the paper beside the thread, 3 % smaller, is', () => {
    const apart = sidesApart(solution(0.97));
    expect(apart).toBeGreaterThan(0.015);
    expect(apart).toBeLessThan(0.045);
  });
});
