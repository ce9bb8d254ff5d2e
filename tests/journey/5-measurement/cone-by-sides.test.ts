import { describe, expect, it } from 'vitest';
import type { Side } from '../../../src/journey/4-thread-signal/outline-edges';
import { coneBySides } from '../../../src/journey/5-measurement/cone-by-sides';
import type { NosePoint } from '../../../src/journey/5-measurement/nose-cone';

const mmPerPx = 0.1;

/** One side of a cone seen square on, half a pixel from point to point: `fromR` at its narrow end, mm. */
function straightSide(
  side: Side,
  deg: number,
  { fromR = 4, lengthMm = 3, scatterMm = 0.01 }: Partial<Record<string, number>> = {},
): NosePoint[] {
  const m = Math.tan((deg * Math.PI) / 180);
  return Array.from({ length: Math.round((2 * lengthMm) / mmPerPx) }, (_, i) => {
    const s = (i * mmPerPx) / 2;
    return { side, s, r: fromR + m * s + scatterMm * Math.sin(17 * i), slope: 0 };
  });
}

/** What light on metal leaves of a side. */
const speckles = (side: Side): NosePoint[] =>
  Array.from({ length: 40 }, (_, i) => ({
    side,
    s: 0.07 * i,
    r: 4 + 1.5 * Math.sin(7.3 * i),
    slope: 0,
  }));

describe('the angle of a cone by its sides', () => {
  it.each([30, 37, 45])('is told by one of them where the other is speckled: %d°', (deg) => {
    const cone = coneBySides([...straightSide('left', deg), ...speckles('right')], mmPerPx)!;
    expect(Math.abs(cone.value - deg)).toBeLessThan(0.5);
    // One side cannot tell a turn of the axis from a sharper cone.
    expect(cone.u).toBeGreaterThan(1.5);
    expect(cone.u).toBeLessThan(2.5);
  });

  it('is told by both where the axis lies a millimetre aside', () => {
    const aside = [
      ...straightSide('left', 37, { fromR: 5 }),
      ...straightSide('right', 37, { fromR: 3 }),
    ];
    const cone = coneBySides(aside, mmPerPx)!;
    expect(Math.abs(cone.value - 37)).toBeLessThan(0.3);
    expect(cone.u).toBeLessThan(1.5);
  });

  it('is the mean of both where the axis is turned', () => {
    const turned = [...straightSide('left', 34.5), ...straightSide('right', 39.5)];
    expect(Math.abs(coneBySides(turned, mmPerPx)!.value - 37)).toBeLessThan(0.5);
  });

  it('is nearer to the surer side, whose own turn is all that the other can tell', () => {
    const unsure = { lengthMm: 2.1, scatterMm: 0.07 };
    const uneven = [...straightSide('left', 37), ...straightSide('right', 41, unsure)];
    const { value } = coneBySides(uneven, mmPerPx)!;
    expect(value).toBeGreaterThan(37);
    expect(value).toBeLessThan(39.2);
  });

  it('is open where both contradict each other, or neither is long and straight enough', () => {
    const apart = [...straightSide('left', 30), ...straightSide('right', 45)];
    expect(coneBySides(apart, mmPerPx)).toBeNull();
    expect(coneBySides(straightSide('left', 37, { lengthMm: 1 }), mmPerPx)).toBeNull();
    expect(coneBySides([...speckles('left'), ...speckles('right')], mmPerPx)).toBeNull();
    expect(coneBySides([], mmPerPx)).toBeNull();
  });
});
