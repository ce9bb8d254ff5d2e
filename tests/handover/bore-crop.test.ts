import { expect, test } from 'vitest';
import { threadCrop } from '../../src/handover/thread-crop';
import type { Overlay, PhotoPoint } from '../../src/journey/overlay';

/** Rings of a bore as an ellipse of half axes 80 and 50 px, turned by an angle, the second one deeper. */
function bore(angle: number): Overlay {
  const ring = (deep: number) => {
    const points = Array.from({ length: 72 }, (_, k): PhotoPoint => {
      const t = (2 * Math.PI * k) / 72;
      const [x, y] = [80 * Math.cos(t), 50 * Math.sin(t) + deep];
      return [
        500 + x * Math.cos(angle) - y * Math.sin(angle),
        400 + x * Math.sin(angle) + y * Math.cos(angle),
      ];
    });
    return [...points, points[0]];
  };
  return {
    widthPx: 1000,
    heightPx: 800,
    markers: [],
    reference: [],
    outline: [ring(0), ring(30)],
    axis: [
      [500, 400],
      [500 - 30 * Math.sin(angle), 400 + 30 * Math.cos(angle)],
    ],
    contactLines: [],
    crests: [],
  };
}

test.each([0, 0.5, 2, -2.8])('the rings of a bore turned by %f, dimensioned', (angle) => {
  const overlay = bore(angle);
  const crop = threadCrop(overlay)!;
  const [a, b, c, d, e, f] = crop.matrix;
  const scale = Math.hypot(a, b);
  for (const [x, y] of overlay.outline.flat()) {
    const [u, v] = [a * x + c * y + e, b * x + d * y + f];
    expect(u).toBeGreaterThan(0);
    expect(u).toBeLessThan(crop.width);
    expect(v).toBeGreaterThan(0);
    expect(v).toBeLessThan(crop.height);
  }
  // The arrows stand a diameter apart, which is twice the larger half axis.
  const [left, right] = crop.arrows;
  expect(right.at[0] - left.at[0]).toBeCloseTo(160 * scale, 6);
  expect(right.at[1]).toBe(left.at[1]);
});

test('a drawing without rings has no crop', () => {
  expect(threadCrop({ ...bore(0), outline: [] })).toBeNull();
  // An outline that does not close is of no bore.
  expect(threadCrop({ ...bore(0), outline: [bore(0).outline[0].slice(0, 40)] })).toBeNull();
});
