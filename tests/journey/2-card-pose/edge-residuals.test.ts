import { expect, test } from 'vitest';
import { posed, project, type Vec3 } from '../../../src/journey/2-card-pose/camera';
import {
  across,
  acrossDerivatives,
  cameraMove,
  facing,
} from '../../../src/journey/2-card-pose/edge-residuals';

/** Some numbers of an oblique view through a lens with distortion, moved one by one. */
const start = [1500, 640, 470, 0.02, 0.2, -0.15, 0.1, -80, -60, 310];
const cameraOf = (p: readonly number[]) =>
  posed({
    fPx: p[0],
    cx: p[1],
    cy: p[2],
    k1: p[3],
    rotation: [p[4], p[5], p[6]],
    translation: [p[7], p[8], p[9]],
  });
const shape = { scaleX: 1.002, scaleY: 0.997 };
const points = Array.from({ length: 12 }, (_, i) => {
  const onCard: Vec3 = [15 * i, (41 * i) % 130, 0];
  const outward: Vec3 = i % 2 === 0 ? [1, 0, 0] : [0, -1, 0];
  const seen = project(cameraOf(start), onCard);
  const measured = [seen[0] + 0.3, seen[1] - 0.2] as const;
  return { markerId: 0, side: i % 4, onCard, outward, measured, uPx: 0.1, blurPx: 1 };
});

test('derivatives of edge residuals are those that differences show', () => {
  const sides = facing(points, cameraOf(start), shape);
  const n = points.length;
  const weight = Float64Array.from(points, (_, i) => 1 + i / 7);
  /** …, inset, aspect, bow in xx, xy and yy. */
  const at = [...start, 0.05, 0.003, 0.8, -0.5, 0.3];
  const residuals = (p: readonly number[]) => {
    const out = new Float64Array(n);
    across(cameraOf(p), sides, p[11], [p[12], p[13], p[14]], out);
    return out.map((d, i) => (d + p[10]) * weight[i]);
  };
  const changed = (j: number, by: number) => at.map((v, i) => (i === j ? v + by : v));
  const steps = at.map((v) => 1e-5 * Math.max(0.01, Math.abs(v)));
  const moves = start.map((_, j) =>
    cameraMove(cameraOf(changed(j, -steps[j])), cameraOf(changed(j, steps[j])), 2 * steps[j]),
  );
  const found = new Float64Array(at.length * n);
  acrossDerivatives(
    {
      camera: cameraOf(at),
      moves,
      sides,
      aspect: at[11],
      bow: [at[12], at[13], at[14]],
      weight,
      stride: n,
    },
    found,
  );
  at.forEach((_, j) => {
    const above = residuals(changed(j, steps[j]));
    const below = residuals(changed(j, -steps[j]));
    const shown = above.map((r, i) => (r - below[i]) / (2 * steps[j]));
    const size = Math.max(...shown.map(Math.abs));
    expect(size).toBeGreaterThan(0);
    shown.forEach((slope, i) => {
      expect(Math.abs(found[j * n + i] - slope)).toBeLessThan(1e-5 * size);
    });
  });
});
