import { type PosedCamera, rayThrough, type Vec3 } from '../2-card-pose/camera';
import { cameraFrom } from '../2-card-pose/camera-parameters';
import type { PosedCard } from '../2-card-pose/pose-from-markers';
import { hexRatio } from '../4-limbs/hex-height';
import { grazing, photoAt } from '../4-thread-signal/axis-frame';
import { atHeight, recentred } from '../4-thread-signal/axis-moves';
import type { PhotoPoint } from '../overlay';
import type { ThreadSolution } from './thread-solution';

/** From camera parameters (fit-camera.ts), an error of height, mm, and a tilt of the axis, rad: length
 *  and diameter over those of the solution, and the taper on diameter. */
export type SharedGeometry = (
  parameters: Float64Array,
  heightOffMm: number,
  tiltRad: number,
) => { readonly length: number; readonly diameter: number; readonly taper: number };

/** How length and diameter at the axis change with the camera and the height, from the four contact
 *  points of the crest cone at the ends of the zone and the widest part's two, all fixed in the photo. */
export function sharedGeometry(card: PosedCard, solution: ThreadSolution): SharedGeometry {
  const { frame, zone, fit, middleS, hexHalfWidthMm, resting } = solution;
  const { camera } = card;
  const rangeMm = frame.origin[2] - camera.centre[2];
  const radius = (s: number) => fit.crestRadiusMm + fit.halfTaper * (s - middleS);
  const contact = (s: number, side: 1 | -1): PhotoPoint => {
    const r = radius(s);
    const offset = fit.axisOffsetMm + fit.axisTurn * (s - middleS);
    return photoAt(camera, frame, s, side * r * Math.hypot(1, r / rangeMm) + offset);
  };
  const ends = [zone.fromS, zone.toS].map((s) => [contact(s, 1), contact(s, -1)] as const);
  const corners = hexHalfWidthMm
    ? ([1, -1] as const).map((side) => photoAt(camera, frame, zone.toS, side * hexHalfWidthMm))
    : null;
  const measure = (at: PosedCamera, heightOff: number, tiltRad: number) => {
    let height = resting.heightMm + heightOff;
    if (corners) {
      for (let i = 0; i < 4; i++) {
        const [a, b] = corners.map((p) => onPlane(at, p, height));
        height = hexRatio * 0.5 * Math.hypot(a[0] - b[0], a[1] - b[1]) + heightOff;
      }
    }
    let axis = atHeight(at, axisLike(at, ends, height), height, { fromS: 0, toS: 1 });
    let near = { s: 0, r: 0 };
    let far = { s: 0, r: 0 };
    for (let i = 0; i < 3; i++) {
      const seen = ends.map((pair) => pair.map((p) => grazing(at, axis, p)));
      const middle = seen.map(([a, b]) => ({ s: (a.s + b.s) / 2, off: (a.r + b.r) / 2 }));
      near = { s: middle[0].s, r: (seen[0][0].r - seen[0][1].r) / 2 };
      far = { s: middle[1].s, r: (seen[1][0].r - seen[1][1].r) / 2 };
      const turn = (middle[1].off - middle[0].off) / (far.s - near.s);
      axis = recentred(at, axis, near.s, middle[0].off, turn);
    }
    // A tilted axis: one end nearer to the camera by half the length times the tilt.
    const lift = (tiltRad * (far.s - near.s)) / 2 / rangeMm;
    const first = near.r * (1 + lift);
    const last = far.r * (1 - lift);
    const length = far.s - near.s;
    return { length, diameter: first + last, taper: (2 * (last - first)) / length };
  };
  const base = measure(cameraFrom(card.parameters, card.prior), 0, 0);
  return (parameters: Float64Array, heightOff: number, tiltRad: number) => {
    const seen = measure(cameraFrom(parameters, card.prior), heightOff, tiltRad);
    return {
      length: seen.length / base.length,
      diameter: seen.diameter / base.diameter,
      taper: seen.taper - base.taper + 2 * fit.halfTaper,
    };
  };
}

function onPlane(camera: PosedCamera, point: PhotoPoint, heightMm: number): Vec3 {
  const ray = rayThrough(camera, point);
  const k = (-heightMm - camera.centre[2]) / ray[2];
  return [camera.centre[0] + k * ray[0], camera.centre[1] + k * ray[1], -heightMm];
}

function axisLike(
  camera: PosedCamera,
  ends: readonly (readonly [PhotoPoint, PhotoPoint])[],
  heightMm: number,
) {
  const [a, b] = ends.map(([p, q]) => {
    const l = onPlane(camera, p, heightMm);
    const r = onPlane(camera, q, heightMm);
    return [(l[0] + r[0]) / 2, (l[1] + r[1]) / 2] as const;
  });
  const n = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const d: Vec3 = [(b[0] - a[0]) / n, (b[1] - a[1]) / n, 0];
  return {
    origin: [a[0], a[1], -heightMm] as Vec3,
    along: d,
    left: [d[1], -d[0], 0] as Vec3,
  };
}
