import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';
import { atHeight, type PosedCamera } from '../2-card-pose/camera';
import { cameraFrom } from '../2-card-pose/camera-parameters';
import type { CameraFit } from '../2-card-pose/fit-camera';
import type { Reference } from '../2-reference/reference';
import {
  type AxisFrame,
  axisThrough,
  type Extent,
  leanAt,
  middleOf,
  photoAt,
} from '../4-thread-signal/axis-frame';
import { surfaceBend } from '../4-thread-signal/surface-bend';
import { surfacePeriodNear } from '../4-thread-signal/surface-period';
import { ridgesUnrolled } from '../4-thread-signal/unrolled-surface';
import type { PhotoPoint } from '../overlay';
import learnt from './allowances.json';
import { hexRatio } from './hex-height';
import { type SeatedThread, seatThread } from './seat-thread';

/** Set by `npm run calibrate` from photos whose focal length is known: how far the pattern of a thread bends about a
 *  true camera, periods. */
export interface BendSpread {
  /** Standard deviation seen straight from above, and what each unit of the view's lean along the axis adds. */
  readonly straight: number;
  readonly leaning: number;
  /** Share of threads whose bend says nothing. */
  readonly astray: number;
}

/** Places on a normal distribution, in its standard deviations, and their weights: Gauss–Hermite of five points
 *  (Abramowitz and Stegun, table 25.10, carried over to unit variance). */
const nodes = [
  [-2.85697, 0.011257],
  [-1.355626, 0.222076],
  [0, 0.533333],
  [1.355626, 0.222076],
  [2.85697, 0.011257],
] as const;
/** Cameras less likely than this are not looked through. */
const leastShare = 1e-3;
/** Span within which the period is sought again under another camera, relative. */
const nearby = 0.006;
/** Bends are sought within a period either way. */
const anyBend = 1 / 2;

/** Density of a bend, periods, about the true camera. */
export function bendDensity(bend: number, lean: number, s: BendSpread = learnt.bend): number {
  const u = Math.hypot(s.straight, s.leaning * lean);
  const bell = portable.exp(-0.5 * (bend / u) ** 2) / (u * Math.sqrt(2 * Math.PI));
  return (1 - s.astray) * bell + s.astray * anyBend;
}

/** A camera that the photo leaves possible. */
interface Possible {
  readonly fit: CameraFit;
  /** Of the fit's own focal length, ln. */
  readonly lnF: number;
  readonly parameters: Float64Array;
  readonly share: number;
}

/** A seat, and the reference with the camera under which it was found. */
export interface SeenThrough {
  readonly reference: Reference;
  readonly seat: SeatedThread;
}

/** Each turn of a thread is a ring about its axis: seen along a ray that leans along the axis, its top is displaced
 *  against its sides by the radius times the lean, and the lean at a place off the middle of a photo says how far the
 *  camera was. Lenses that a photo from straight above leaves possible are weighed by how straight they make the
 *  unrolled thread. Whether or not they are told, the thread is seated once more from where it has come to lie: limbs and
 *  hex are nearer then (on 46 seen renders that state their lens, the diameter within 1 % on 36 → 41). */
export function seatedAgain(
  grey: GreyImage,
  reference: Reference,
  seat: SeatedThread,
): SeenThrough {
  const { camera } = reference;
  if (!reference.lenses)
    return { reference, seat: seatedUnder(grey, camera, seat, camera) ?? seat };
  const told = possibleCameras(reference.lenses).map((one) => {
    const seen = bendThrough(grey, camera, seat, cameraOf(one));
    return { ...one, share: one.share * (seen ? bendDensity(seen.bend, seen.lean) : anyBend) };
  });
  const likelier = { ...reference, ...together(told) };
  const again = seatedUnder(grey, camera, seat, likelier.camera);
  return again ? { reference: likelier, seat: again } : { reference, seat };
}

/** Each lens at five places of what the card leaves of its focal length; the rest of the camera goes along. */
function possibleCameras(lenses: NonNullable<CameraFit['lenses']>): Possible[] {
  return lenses.flatMap(({ fit, share }) => {
    const n = fit.parameters.length;
    const u = Math.sqrt(fit.covariance[0]);
    return nodes.flatMap(([z, weight]) => {
      if (share * weight < leastShare) return [];
      const parameters = fit.parameters.map((p, i) => p + (z * fit.covariance[i * n]) / u);
      return [{ fit, lnF: z * u, parameters, share: share * weight }];
    });
  });
}

const cameraOf = ({ fit, parameters }: Possible): PosedCamera => cameraFrom(parameters, fit.prior);

/** The bend that a seated thread shows through a camera, periods, and how that camera's view leans along the axis.
 *  Null where too little is seen. */
export function bendThrough(
  grey: GreyImage,
  seenBy: PosedCamera,
  seat: SeatedThread,
  camera: PosedCamera,
): { readonly bend: number; readonly lean: number } | null {
  const { frame, zone, scale } = moved(seenBy, seat, camera);
  const { crests } = seat;
  const cone = {
    radiusMm: scale * crests.radiusMm,
    halfTaper: crests.halfTaper,
    middleS: middleOf(zone),
  };
  const periodMm = scale * seat.pitchMm;
  const view = ridgesUnrolled({ grey, camera }, frame, zone, cone, periodMm);
  const period = surfacePeriodNear(view, periodMm, nearby);
  const seen = period && surfaceBend(view, period);
  return seen && { bend: seen.bend, lean: leanAt(camera, frame, middleOf(zone)) };
}

/** A camera's place in the likeliest lens, and the covariance about it of all that is left possible. */
function together(
  told: readonly Possible[],
): Pick<CameraFit, 'camera' | 'parameters' | 'prior' | 'covariance'> {
  const all = told.reduce((sum, { share }) => sum + share, 0);
  const byLens = new Map<CameraFit, number>();
  for (const { fit, share } of told) byLens.set(fit, (byLens.get(fit) ?? 0) + share);
  const [top] = [...byLens].sort((a, b) => b[1] - a[1])[0]!;
  const n = top.parameters.length;
  const inTop = told.filter(({ fit }) => fit === top);
  const parameters = top.parameters.map(
    (_, i) => inTop.reduce((sum, one) => sum + one.share * one.parameters[i], 0) / byLens.get(top)!,
  );
  const covariance = new Float64Array(n * n);
  for (const { fit, parameters: own, share } of told) {
    const apart = own.map((v, i) => v - parameters[i]);
    apart[0] += portable.log(fit.prior.fPx / top.prior.fPx);
    const c = fit.covariance;
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) {
        // What is left of a lens once its focal length is known.
        const rest = c[i * n + j] - (c[i * n] * c[j * n]) / c[0];
        covariance[i * n + j] += (share / all) * (rest + apart[i] * apart[j]);
      }
  }
  return { camera: cameraFrom(parameters, top.prior), parameters, prior: top.prior, covariance };
}

/** A seat's place as another camera sees it: the same line in the photo, at the height that its hex then has. */
function moved(
  seenBy: PosedCamera,
  { frame, zone, hex }: SeatedThread,
  camera: PosedCamera,
): { readonly frame: AxisFrame; readonly zone: Extent; readonly scale: number } {
  const at = (s: number, r: number) => photoAt(seenBy, frame, s, r);
  const [from, to] = [at(zone.fromS, 0), at(zone.toS, 0)];
  const [left, right] = [at(zone.toS, hex.halfWidthMm), at(zone.toS, -hex.halfWidthMm)];
  const apart = (a: PhotoPoint, b: PhotoPoint, heightMm: number): number => {
    const [p, q] = [atHeight(camera, a, heightMm), atHeight(camera, b, heightMm)];
    return Math.hypot(p[0] - q[0], p[1] - q[1]);
  };
  let { heightMm } = hex;
  for (let i = 0; i < 4; i++) heightMm = (hexRatio / 2) * apart(left, right, heightMm);
  const length = apart(from, to, heightMm);
  return {
    frame: axisThrough(camera, from, to, heightMm),
    zone: { fromS: 0, toS: length },
    scale: length / (zone.toS - zone.fromS),
  };
}

/** The thread seated once more where another camera sees it. */
function seatedUnder(
  grey: GreyImage,
  seenBy: PosedCamera,
  seat: SeatedThread,
  camera: PosedCamera,
): SeatedThread | null {
  const { frame, zone, scale } = moved(seenBy, seat, camera);
  const periods = seat.periods.map((q) => ({ ...q, periodMm: scale * q.periodMm }));
  const radiusMm = scale * seat.crests.radiusMm;
  return seatThread(grey, camera, { frame, zone, radiusMm, periods, freeEndFirst: true });
}
