import { describe, expect, it } from 'vitest';
import {
  coneThrough,
  type NosePoint,
  ratherRim,
  straightRun,
} from '../../../src/journey/5-measurement/nose-cone';

/** Contact lines of a cone by solving its tangency directly: the cone r = m·s touched by rays of slope
 *  t; independent of the correction under test. Units mm. */
function coneOutline(m: number, t: number, mmPerPx: number, scatterMm: number): NosePoint[] {
  const points: NosePoint[] = [];
  for (const side of ['left', 'right'] as const)
    for (let s = 6; s <= 10; s += mmPerPx / 2) {
      // Azimuth of the contact by bisection on n·v, n = (−m, cos ψ, sin ψ), v = (t, 0, −1).
      let [low, high] = [-1.5, 1.5];
      for (let i = 0; i < 60; i++) {
        const psi = (low + high) / 2;
        if (-m * t - Math.sin(psi) > 0) low = psi;
        else high = psi;
      }
      const r = m * s * Math.cos(low);
      const foot = s + t * m * s * Math.sin(low);
      const wave = scatterMm * Math.sin(37 * s + (side === 'left' ? 0 : 1));
      points.push({ side, s: foot, r: r + wave, slope: t });
    }
  return points;
}

describe('a cone through its outline', () => {
  it.each([
    [37, 0],
    [37, 0.3],
    [45, -0.3],
    [45, 0.15],
  ])('has %d° at viewing slope %d', (deg, slope) => {
    const points = coneOutline(Math.tan((deg * Math.PI) / 180), slope, 0.1, 0.01);
    const run = straightRun(points, 0.1, { from: 20, to: 60 });
    const cone = coneThrough(run!, 0.1, 0.1);
    expect(cone!.halfAngleDeg).toBeCloseTo(deg, 0);
    expect(Math.abs(cone!.halfAngleDeg - deg)).toBeLessThan(0.3);
  });

  it('is not misled by a chamfer of another angle beyond it', () => {
    const cone = coneOutline(Math.tan((37 * Math.PI) / 180), 0, 0.1, 0.02);
    const top = Math.max(...cone.map((q) => q.r));
    const end = Math.max(...cone.map((q) => q.s));
    const beyond = (['left', 'right'] as const).flatMap((side) =>
      Array.from({ length: 16 }, (_, i) => ({
        side,
        s: end + 0.05 * i,
        r: top + 0.05 * i * Math.tan((55 * Math.PI) / 180),
        slope: 0,
      })),
    );
    const run = straightRun([...cone, ...beyond], 0.1, { from: 20, to: 60 });
    const fitted = coneThrough(run!, 0.1, 0.1);
    expect(Math.abs(fitted!.halfAngleDeg - 37)).toBeLessThan(1);
  });

  it.each([0.2, 0.3, 0.4, 0.6])('is told from the rim of a flat face seen at slope %d', (slope) => {
    const rim: NosePoint[] = (['left', 'right'] as const).flatMap((side) =>
      Array.from({ length: 60 }, (_, i) => {
        const lift = (i / 60) * 5;
        const wave = 0.02 * Math.sin(29 * lift + (side === 'left' ? 0 : 1));
        // A circle of radius 6 mm: a point `lift` above the axis is seen that much times the slope nearer.
        return { side, s: 10 - slope * lift, r: Math.sqrt(36 - lift * lift) + wave, slope: -slope };
      }),
    );
    const run = straightRun(rim, 0.1, { from: 20, to: 60 });
    expect(run).not.toBeNull();
    expect(ratherRim(run!)).toBe(true);
    const cone = coneOutline(Math.tan((45 * Math.PI) / 180), slope, 0.1, 0.02);
    expect(ratherRim(straightRun(cone, 0.1, { from: 20, to: 60 })!)).toBe(false);
  });
});
