import type { Measured } from '../../journey/identification';
import type { PhotoPoint } from '../../journey/overlay';
import { leastSquares } from '../../quantity/least-squares';
import { card, markers } from '../../scale-card/geometry';
import { trueCrestMm } from './true-crest';
import type { Truth } from './truth';

/** True diameter over the crests at the middle of the zone that was measured. On a straight thread it is the
 *  same everywhere; on a taper it depends on where, so the zone's ends in the photo are carried to
 *  the true axis: lens from the truth, pose from the marker corners, by code of its own. */
export function trueMajorMm(truth: Truth, answer: Measured): number {
  if (truth.minor_mm !== undefined) return truth.minor_mm;
  const ends = answer.overlay.axis;
  if (truth.taper === 0 || !ends)
    return (truth.crest_major_at_start_mm + truth.crest_major_at_end_mm) / 2;
  const pose = poseOf(truth, answer);
  const [p0, p1] = [truth.axis_p0, truth.axis_p1];
  const length = Math.hypot(p1[0] - p0[0], p1[1] - p0[1], p1[2] - p0[2]);
  const along = ends.map((end) => {
    const [x, y] = atHeight(truth, answer, pose, end, p0[2]);
    return ((x - p0[0]) * (p1[0] - p0[0]) + (y - p0[1]) * (p1[1] - p0[1])) / length;
  });
  return 2 * trueCrestMm(truth, (along[0]! + along[1]!) / 2);
}

interface Pose {
  /** Image right, image down and the viewing direction, in the world frame. */
  readonly axes: readonly [readonly number[], readonly number[], readonly number[]];
  readonly centre: readonly [number, number, number];
  /** The lens's centre off the photo's, px. */
  readonly offPx: readonly [number, number];
}

function statedPose({ camera, cxcy }: Truth): Pose | null {
  if (!camera) return null;
  const column = (i: number, sign = 1) => camera.map((row) => sign * row[i]!);
  const [x, y, z] = column(3);
  return {
    axes: [column(0), column(1, -1), column(2, -1)],
    centre: [x!, y!, z!],
    offPx: cxcy ?? [0, 0],
  };
}

const poseOf = (truth: Truth, answer: Measured): Pose =>
  statedPose(truth) ?? poseFromCorners(truth, answer);

/** A photo point on the level at this height over the card: x, y in the world frame, mm. */
export function worldAt(
  truth: Truth,
  answer: Measured,
  at: PhotoPoint,
  heightMm: number,
): [number, number] {
  return atHeight(truth, answer, poseOf(truth, answer), at, heightMm);
}

function axesOf([a, b, c]: ArrayLike<number> & Iterable<number>) {
  const [ca, sa, cb, sb, cc, sc] = [a!, b!, c!].flatMap((v) => [Math.cos(v), Math.sin(v)]);
  // Rz(c)·Ry(b)·Rx(a): columns are image right, image down and the viewing direction.
  return [
    [cc! * cb!, sc! * cb!, -sb!],
    [cc! * sb! * sa! - sc! * ca!, sc! * sb! * sa! + cc! * ca!, cb! * sa!],
    [cc! * sb! * ca! + sc! * sa!, sc! * sb! * ca! - cc! * sa!, cb! * ca!],
  ] as const;
}

function poseFromCorners(truth: Truth, answer: Measured): Pose {
  const { markers: seen, widthPx, heightPx } = answer.overlay;
  const half = card.markerSideMm / 2;
  const corners = [
    [-half, half],
    [half, half],
    [half, -half],
    [-half, -half],
  ] as const;
  const rows = seen.flatMap(({ id, corners: at }) =>
    corners.map(([dx, dy], i) => ({
      x: markers[id]!.xMm - card.widthMm / 2 + dx,
      y: card.heightMm / 2 - markers[id]!.yMm + dy,
      at: at[i]!,
    })),
  );
  const start = Math.atan2(-(rows[1]!.at[1] - rows[0]!.at[1]), rows[1]!.at[0] - rows[0]!.at[0]);
  const fit = leastSquares({
    // Looking straight down.
    parameters: [Math.PI, 0, start, 0, 0, truth.distance_mm],
    count: 2 * rows.length,
    loss: 'huber',
    lossScale: 2,
    maxIterations: 200,
    residuals: (p, out) => {
      const [right, down, forward] = axesOf(p.subarray(0, 3));
      for (const [i, { x, y, at }] of rows.entries()) {
        const d = [x - p[3]!, y - p[4]!, -p[5]!];
        const z = dot(d, forward);
        const u = dot(d, right) / z;
        const v = dot(d, down) / z;
        const k = truth.f_px * (1 + truth.k1 * (u * u + v * v));
        out[2 * i] = k * u + (widthPx - 1) / 2 - at[0];
        out[2 * i + 1] = k * v + (heightPx - 1) / 2 - at[1];
      }
    },
  });
  const [x, y, z] = fit.parameters.subarray(3);
  return { axes: axesOf(fit.parameters.subarray(0, 3)), centre: [x!, y!, z!], offPx: [0, 0] };
}

function atHeight(
  truth: Truth,
  { overlay }: Measured,
  { axes: [right, down, forward], centre, offPx }: Pose,
  [u, v]: readonly [number, number],
  heightMm: number,
): [number, number] {
  const x = (u - (overlay.widthPx - 1) / 2 - offPx[0]) / truth.f_px;
  const y = (v - (overlay.heightPx - 1) / 2 - offPx[1]) / truth.f_px;
  const k = 1 / (1 + truth.k1 * (x * x + y * y));
  const d = [0, 1, 2].map((i) => k * x * right[i]! + k * y * down[i]! + forward[i]!);
  const t = (heightMm - centre[2]) / d[2]!;
  return [centre[0] + t * d[0]!, centre[1] + t * d[1]!];
}

const dot = (a: readonly number[], b: readonly number[]) =>
  a[0]! * b[0]! + a[1]! * b[1]! + a[2]! * b[2]!;
