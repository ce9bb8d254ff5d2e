import { middleValue } from '../../quantity/order';
import type { Vision } from '../../vision/vision';
import type { PlaneView } from './face-plane';

/** Edges of a plane seen square-on. */
export interface RingEdges {
  readonly width: number;
  readonly height: number;
  readonly pxPerMm: number;
  /** Twice the edge's direction as a unit vector, times its strength 0…1: across a ring it is (cos 2φ, sin 2φ), along
   *  it the opposite, whichever side is brighter. */
  readonly cos2: Float32Array;
  readonly sin2: Float32Array;
}

/** Over which noise of the grey values is evened out, and over which a ring may be off while it is sought, px. */
const blurPx = 1.5;

export function ringEdges(view: PlaneView, vision: Vision): RingEdges {
  const { width, height, pxPerMm } = view;
  const { data } = vision.blur(view, blurPx);
  const n = width * height;
  const dx = new Float32Array(n);
  const dy = new Float32Array(n);
  const strengths: number[] = [];
  for (let y = 1; y < height - 1; y++)
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      // Over the local brightness: a dark ring in a dark bore is as good as a bright one.
      const level = data[i] + 12;
      dx[i] = (data[i + 1] - data[i - 1]) / level;
      dy[i] = (data[i + width] - data[i - width]) / level;
      if ((x & 3) === 0 && (y & 3) === 0) strengths.push(dx[i] * dx[i] + dy[i] * dy[i]);
    }
  // Most of the window is paper: four times its gradients is an edge.
  const noise2 = 16 * (middleValue(strengths) ?? 0) + 1e-5;
  const cos2 = new Float32Array(n);
  const sin2 = new Float32Array(n);
  for (let i = 0; i < n; i++) {
    const a = dx[i];
    const b = dy[i];
    const m = a * a + b * b;
    const w = 1 / (m + noise2);
    cos2[i] = (a * a - b * b) * w;
    sin2[i] = 2 * a * b * w;
  }
  return { width, height, pxPerMm, cos2, sin2 };
}
