import { describe, expect, it } from 'vitest';
import type { OutlinePoint } from '../../../src/journey/4-thread-signal/outline-edges';
import { fitThread } from '../../../src/journey/5-measurement/fit-thread';
import { raggedMm } from '../../../src/journey/5-measurement/outline-scatter';
import { seededRandom } from '../../../src/quantity/random';
import { drawnPriors, drawnThread, startAt } from './drawn-outline';

const { pitchMm, radiusMm, flat } = drawnThread;

/** Crest flats and straight 60° flanks down to 0.61 p: ISO 68-1, drawn here on its own. */
function tooth(turns: number): number {
  const off = Math.abs(turns - Math.round(turns));
  return -Math.min(0.61, Math.max(0, (off - flat / 2) * Math.sqrt(3))) * pitchMm;
}

/** Both outlines of a right-handed thread seen from afar, in a frame turned by `turn` and moved by
 *  `offsetMm` against the thread's axis. */
function outline(turn: number, offsetMm: number, noiseMm: number): OutlinePoint[] {
  const random = seededRandom(11);
  return (['left', 'right'] as const).flatMap((side) =>
    Array.from({ length: 240 }, (_, i): OutlinePoint => {
      const s = -6 + i * 0.05;
      const sign = side === 'left' ? 1 : -1;
      const r = radiusMm + tooth(s / pitchMm + (side === 'left' ? 0 : 0.5));
      return {
        side,
        photo: [0, 0],
        s: s - sign * r * turn,
        r: r + sign * (offsetMm + turn * s) + noiseMm * random.normal(),
        slope: 0,
        uMm: 0.01,
      };
    }),
  );
}

const start = (pitch: number) => startAt(pitch, 0.6);

describe('a thread fitted to its outline', () => {
  it.each([0, 0.012, -0.015])('axis turned by %f rad: pitch, radius and turn come out', (turn) => {
    const fit = fitThread(outline(turn, 0.2, 0.01), 0, start(1.49), drawnPriors);
    expect(fit.pitchMm / pitchMm - 1).toBeCloseTo(0, 3);
    expect(fit.crestRadiusMm).toBeCloseTo(radiusMm, 1);
    expect(Math.abs(fit.axisTurn - turn)).toBeLessThan(0.001);
    expect(fit.axisOffsetMm).toBeCloseTo(0.2, 2);
    expect(fit.scatterMm).toBeLessThan(0.03);
    expect(fit.flankBalance).toBeGreaterThan(0.9);
  });

  it('a start half a tooth away and 1 % off finds the same valley', () => {
    const right = fitThread(outline(0, 0, 0.01), 0, start(1.5), drawnPriors);
    const wrong = fitThread(
      outline(0, 0, 0.01),
      0,
      { ...start(1.515), crestS: pitchMm / 2 },
      drawnPriors,
    );
    expect(wrong.pitchMm).toBeCloseTo(right.pitchMm, 4);
    expect(wrong.scatterMm).toBeCloseTo(right.scatterMm, 3);
  });

  it('one kind of flank alone counts for less against the surface', () => {
    const rising = outline(0, 0, 0.02).filter(({ s, side }) => {
      const turns = s / pitchMm + (side === 'left' ? 0 : 0.5);
      return turns - Math.round(turns) < 0.05;
    });
    // As if the highlight on that flank moved along as the view turns: 1 % over the whole.
    const drifting = rising.map((q) => ({ ...q, s: q.s * 1.01 }));
    const surfacePitch = { value: pitchMm, u: 0.003 };
    const fit = fitThread(drifting, 0, start(1.5), { ...drawnPriors, surfacePitch });
    expect(fit.flankBalance).toBeLessThan(0.4);
    expect(fit.pitchMm / pitchMm - 1).toBeLessThan(0.006);
  });
});

describe('an outline that keeps to no thread', () => {
  it('says nothing of the radius until scatter is noise, then a tooth depth', () => {
    expect(raggedMm(0.03 * pitchMm, pitchMm)).toBe(0);
    expect(raggedMm(0.4 * pitchMm, pitchMm)).toBeGreaterThan(0.5 * pitchMm);
  });
});
