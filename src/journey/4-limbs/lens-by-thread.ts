import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';
import { atHeight, type PosedCamera } from '../2-card-pose/camera';
import { cameraFrom } from '../2-card-pose/camera-parameters';
import type { CameraFit } from '../2-card-pose/fit-camera';
import type { Reference } from '../2-reference/reference';
import { type AxisFrame, axisThrough, type Extent, photoAt } from '../4-thread-signal/axis-frame';
import type { PhotoPoint } from '../overlay';
import learnt from './allowances.json';
import { type HelixBend, helixBend } from './helix-bend';
import { hexRatio } from './hex-height';
import { type SeatedThread, seatThread } from './seat-thread';
import { type TurnPhases, turnPhases, type WoundBody } from './turn-phases';

/** Set by `npm run calibrate` from photos whose focal length is known: how far a thread's helix bends about a true
 *  camera, periods. */
export interface BendSpread {
  /** Expected of the networks' crests, with each unit of the view's lean along the axis. */
  readonly drawn: number;
  /** Standard deviation seen straight from above, and what each unit of the view's lean along the axis adds. */
  readonly straight: number;
  readonly leaning: number;
  /** Share of threads whose bend says nothing. */
  readonly astray: number;
}

/** Places on a normal distribution, in its standard deviations. */
const nodes = Array.from({ length: 25 }, (_, i) => (i - 12) / 4);
/** Cameras less likely than this are not looked through. */
const leastShare = 1e-4;
/** Density of a bend of which nothing is known: they go round after one period. */
const anyBend = 1;

/** Density of a bend, periods, about the true camera. */
export function bendDensity(bend: number, lean: number, s: BendSpread = learnt.bend): number {
  const u = Math.hypot(s.straight, s.leaning * lean);
  const off = bend - s.drawn * lean;
  const bell = [-1, 0, 1].reduce(
    (sum, turns) => sum + portable.exp(-0.5 * ((off + turns) / u) ** 2),
    0,
  );
  return ((1 - s.astray) * bell) / (u * Math.sqrt(2 * Math.PI)) + s.astray * anyBend;
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
 *  camera was. Lenses that a photo from straight above leaves possible are weighed by how little they bend the helix on
 *  which the crests of the top and of both limbs lie. Whether or not they are told, the thread is seated once more from where it has come to lie: limbs and
 *  hex are nearer then (on 46 seen renders that state their lens, the diameter within 1 % on 36 → 41). */
export function seatedAgain(
  grey: GreyImage,
  reference: Reference,
  seat: SeatedThread,
): SeenThrough {
  const { camera } = reference;
  if (!reference.lenses)
    return { reference, seat: seatedUnder(grey, camera, seat, camera) ?? seat };
  const phases = turnPhases({ grey, camera }, woundOf(seat));
  const told = possibleCameras(reference.lenses).map((one) => {
    const seen = bendThrough(phases, camera, seat, cameraOf(one));
    return { ...one, share: one.share * (seen ? bendDensity(seen.bend, seen.lean) : anyBend) };
  });
  const likelier = { ...reference, ...together(told) };
  const again = seatedUnder(grey, camera, seat, likelier.camera);
  return again ? { reference: likelier, seat: again } : { reference, seat };
}

/** Each lens all over what the card leaves of its focal length; the rest of the camera goes along. */
function possibleCameras(lenses: NonNullable<CameraFit['lenses']>): Possible[] {
  return lenses.flatMap(({ fit, share }) => {
    const n = fit.parameters.length;
    const u = Math.sqrt(fit.covariance[0]);
    const weights = nodes.map((z) => portable.exp(-0.5 * z * z));
    const all = weights.reduce((sum, w) => sum + w, 0);
    return nodes.flatMap((z, i) => {
      const weight = weights[i] / all;
      if (share * weight < leastShare) return [];
      const parameters = fit.parameters.map((p, i) => p + (z * fit.covariance[i * n]) / u);
      return [{ fit, lnF: z * u, parameters, share: share * weight }];
    });
  });
}

const cameraOf = ({ fit, parameters }: Possible): PosedCamera => cameraFrom(parameters, fit.prior);

/** A seated thread as its crests' phases are told about. */
const woundOf = ({ frame, zone, crests, pitchMm, periods }: SeatedThread): WoundBody => ({
  frame,
  zone,
  pitchMm,
  radiusMm: crests.radiusMm,
  halfTaper: crests.halfTaper,
  hand: periods[0].hand,
});

/** The bend that a seated thread shows through the camera that it was seated under; null where too little is seen. */
export function bendSeen(
  grey: GreyImage,
  camera: PosedCamera,
  seat: SeatedThread,
): HelixBend | null {
  const body = woundOf(seat);
  return helixBend(camera, body, turnPhases({ grey, camera }, body));
}

/** The same crests through another camera. */
function bendThrough(
  phases: readonly TurnPhases[],
  seenBy: PosedCamera,
  seat: SeatedThread,
  camera: PosedCamera,
): HelixBend | null {
  const { frame, zone, scale } = moved(seenBy, seat, camera);
  const body = woundOf(seat);
  const scaled = { pitchMm: scale * body.pitchMm, radiusMm: scale * body.radiusMm };
  return helixBend(camera, { ...body, ...scaled, frame, zone }, phases);
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
