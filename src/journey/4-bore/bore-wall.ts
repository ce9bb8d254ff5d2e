import * as portable from '../../quantity/portable-math';
import type { PosedCamera, Vec3 } from '../2-card-pose/camera';
import type { AxisFrame } from '../4-thread-signal/axis-frame';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { type Unrolled, unroll } from '../4-thread-signal/unrolled-surface';

/** A bore: middle of its mouth and the direction inwards, card frame; radius over the crests, mm. */
export interface Bore {
  readonly mouth: Vec3;
  readonly inwards: Vec3;
  readonly radiusMm: number;
}

/** What of the far wall is looked at: from `fromMm` to `toMm` below the mouth, as far either way as it is seen so deep. */
export interface WallWindow {
  readonly fromMm: number;
  readonly toMm: number;
  readonly widestRad: number;
}

/** Azimuths beyond this are seen too obliquely to show ridges. */
const widestRad = (72 * Math.PI) / 180;
/** Chamfer and first, cut turn, in radii. */
const chamferShare = 0.14;
/** Share of the mouth's radius within which the wall behind it is seen past the rim. */
const rimShare = 0.97;
/** Threads are seldom deeper than this, in radii (common practice: about a diameter). */
const deepest = 2.2;

/** The bore's axis with `left` such that azimuth 0 is the wall that faces the camera. */
export function boreFrame(camera: PosedCamera, { mouth, inwards }: Bore): AxisFrame {
  const w: Vec3 = [
    mouth[0] - camera.centre[0],
    mouth[1] - camera.centre[1],
    mouth[2] - camera.centre[2],
  ];
  const k = dot(w, inwards);
  const far: Vec3 = [w[0] - k * inwards[0], w[1] - k * inwards[1], w[2] - k * inwards[2]];
  const n = Math.max(1e-9, Math.hypot(far[0], far[1], far[2]));
  const left: Vec3 = [
    (inwards[1] * far[2] - inwards[2] * far[1]) / n,
    (inwards[2] * far[0] - inwards[0] * far[2]) / n,
    (inwards[0] * far[1] - inwards[1] * far[0]) / n,
  ];
  return { origin: mouth, along: inwards, left };
}

/** Where the camera is over the plane of the mouth: its height, and how far aside of the axis, mm. */
function eyeOver(camera: PosedCamera, { mouth, inwards }: Bore) {
  const w: Vec3 = [
    camera.centre[0] - mouth[0],
    camera.centre[1] - mouth[1],
    camera.centre[2] - mouth[2],
  ];
  const above = -dot(w, inwards);
  const aside = Math.sqrt(Math.max(0, dot(w, w) - above * above));
  return { above, aside };
}

/** Windows of the wall past the near rim, the one that shows most first. */
export function wallWindows(camera: PosedCamera, bore: Bore): WallWindow[] {
  const { radiusMm } = bore;
  const { above, aside } = eyeOver(camera, bore);
  const fromMm = chamferShare * radiusMm;
  const depthAt = (azimuth: number) => {
    // The ray from the wall at depth x crosses the mouth at share x/(above + x) of its way to the camera.
    const px = radiusMm * portable.cos(azimuth);
    const py = radiusMm * portable.sin(azimuth);
    let low = 0;
    let high = deepest * radiusMm;
    for (let i = 0; i < 14; i++) {
      const x = (low + high) / 2;
      const t = x / (above + x);
      if (Math.hypot(px - t * (px + aside), py - t * py) < rimShare * radiusMm) low = x;
      else high = x;
    }
    return low;
  };
  const out: WallWindow[] = [];
  for (const degrees of [36, 48, 60, 72]) {
    const widest = (degrees * Math.PI) / 180;
    const toMm = depthAt(widest);
    if (toMm - fromMm > 0.25 * radiusMm)
      out.push({ fromMm, toMm, widestRad: Math.min(widest, widestRad) });
  }
  const area = (v: WallWindow) => (v.toMm - v.fromMm) * v.widestRad;
  return out.sort((a, b) => area(b) - area(a));
}

/** How far either way the far wall is seen at a depth below the mouth, rad; 0 where nothing is. */
export function seenAzimuth(camera: PosedCamera, bore: Bore, depthMm: number): number {
  const { radiusMm: r } = bore;
  const { above, aside } = eyeOver(camera, bore);
  // The ray to the camera crosses the mouth at (r(1 − t) cos φ − t·aside, r(1 − t) sin φ), t = depth/(above + depth).
  const t = depthMm / (above + depthMm);
  const [near, off] = [r * (1 - t), t * aside];
  if (!(above > 0) || off <= 0) return 0;
  const cosine = (near * near + off * off - (rimShare * r) ** 2) / (2 * near * off);
  if (cosine >= 1) return 0;
  return cosine <= portable.cos(widestRad) ? widestRad : portable.acos(cosine);
}

/** Length of the wall that a pixel shows where it is seen best, mm. */
export function wallMmPerPx(camera: PosedCamera, { mouth, inwards }: Bore): number {
  const w: Vec3 = [
    mouth[0] - camera.centre[0],
    mouth[1] - camera.centre[1],
    mouth[2] - camera.centre[2],
  ];
  const range = Math.hypot(w[0], w[1], w[2]);
  const c = Math.min(0.999, Math.abs(dot(w, inwards)) / range);
  return range / camera.fPx / Math.sqrt(1 - c * c);
}

export function unrollWall(
  photo: PosedPhoto,
  bore: Bore,
  { fromMm, toMm, widestRad: widest }: WallWindow,
  grid: { readonly stepMm: number; readonly rowCount: number },
): Unrolled {
  const zone = { fromS: fromMm, toS: toMm };
  const cone = { radiusMm: bore.radiusMm, halfTaper: 0, middleS: 0 };
  return unroll(photo, boreFrame(photo.camera, bore), zone, cone, {
    ...grid,
    inside: { widestRad: widest },
  });
}

const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
