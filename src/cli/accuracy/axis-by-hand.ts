import type { PhotoPoint } from '../../journey/overlay';
import { seededRandom } from '../../quantity/random';
import type { Truth } from './truth';

/** How far a person's ends of the axis may lie beside the true ones, mm. */
const mostOffMm = 1;

/** The axis as a person would show it: the true ends of the thread, free end first, each put somewhere within 1 mm
 *  of its place, photo frame. The same for the same photo. Null where the truth does not hold the camera. */
export function axisByHand(truth: Truth): readonly [PhotoPoint, PhotoPoint] | null {
  const { camera, cxcy, width, height } = truth;
  if (!camera || !cxcy || !width || !height) return null;
  const { uniform } = seededRandom(seedOf(truth.name));
  const end = ([x, y, z]: Truth['axis_p0']): PhotoPoint => {
    const far = mostOffMm * Math.sqrt(uniform());
    const way = 2 * Math.PI * uniform();
    const p = [x + far * Math.cos(way), y + far * Math.sin(way), z];
    const [right = 0, up = 0, back = 0] = [0, 1, 2].map((k) =>
      camera.reduce((sum, row, i) => sum + (row[k] ?? 0) * ((p[i] ?? 0) - (row[3] ?? 0)), 0),
    );
    const u = right / -back;
    const v = -up / -back;
    const f = truth.f_px * (1 + truth.k1 * (u * u + v * v));
    return [(width - 1) / 2 + cxcy[0] + f * u, (height - 1) / 2 + cxcy[1] + f * v];
  };
  return [end(truth.axis_p0), end(truth.axis_p1)];
}

/** FNV-1a of a photo's name. */
const seedOf = (name: string): number =>
  [...name].reduce((seed, letter) => Math.imul(seed ^ letter.charCodeAt(0), 16777619), 2166136261);
