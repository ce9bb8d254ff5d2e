import * as portable from '../../quantity/portable-math';
import { type PosedCamera, project, projectRow, type Vec3 } from '../2-card-pose/camera';
import { addLine, folded, folding } from '../4-limbs/folded-light';
import { levelRows } from '../4-limbs/turn-patch';
import type { AxisFrame } from '../4-thread-signal/axis-frame';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { type Bore, boreFrame, seenAzimuth } from './bore-wall';

/** The far wall of a bore, rows of azimuth about `inwards` as far either way as it is seen, so many phases to a turn. */
export const wallLook = { turns: 2, rows: 24, phases: 24 };
/** Sub-samples of a phase, and of a row. */
const sub = 2;
/** Where less is seen either way, ridges show no course (judgement). */
const leastRad = (20 * Math.PI) / 180;

/** The turns about a depth below the mouth. */
export interface WallFold {
  readonly middleMm: number;
  readonly pitchMm: number;
  readonly hand: 'right' | 'left';
}

/** The direction from the axis to the wall that faces the camera. */
const facing = ({ along: d, left: l }: AxisFrame): Vec3 => [
  l[1] * d[2] - l[2] * d[1],
  l[2] * d[0] - l[0] * d[2],
  l[0] * d[1] - l[1] * d[0],
];

/** The point of the far wall at a depth that faces the camera, card frame. */
export function onWall(camera: PosedCamera, bore: Bore, depthMm: number): Vec3 {
  const frame = boreFrame(camera, bore);
  const { mouth: o, inwards: d, radiusMm: r } = bore;
  const f = facing(frame);
  return [
    o[0] + depthMm * d[0] + r * f[0],
    o[1] + depthMm * d[1] + r * f[1],
    o[2] + depthMm * d[2] + r * f[2],
  ];
}

/** How the far wall is seen at a depth. */
export interface WallView {
  /** Tangent of the angle between the view and the wall along the bore. */
  readonly lean: number;
  /** A pitch along the wall, px. */
  readonly pitchPx: number;
}

export function wallView(
  camera: PosedCamera,
  bore: Bore,
  { middleMm, pitchMm }: WallFold,
): WallView {
  const at = onWall(camera, bore, middleMm);
  const c = camera.centre;
  const view: Vec3 = [at[0] - c[0], at[1] - c[1], at[2] - c[2]];
  const d = bore.inwards;
  const along = view[0] * d[0] + view[1] * d[1] + view[2] * d[2];
  const squared = view[0] * view[0] + view[1] * view[1] + view[2] * view[2];
  const [a, b] = [-0.5, 0.5].map((k) =>
    project(camera, onWall(camera, bore, middleMm + k * pitchMm)),
  );
  return {
    lean: Math.sqrt(Math.max(0, squared - along * along)) / along,
    pitchPx: Math.hypot(b[0] - a[0], b[1] - a[1]),
  };
}

/** A few turns of the far wall unrolled at the crests' radius along their helix and folded on the pitch: mean over the turns
 *  less each row's, then spread; values[(channel·rows + row)·phases + phase], phases inwards. Null where too little of the
 *  wall is seen or the photo ends. */
export function wallPatch(
  { grey, camera }: PosedPhoto,
  bore: Bore,
  { middleMm, pitchMm, hand }: WallFold,
): Float32Array | null {
  const { turns, rows, phases } = wallLook;
  const widest = seenAzimuth(camera, bore, middleMm + (turns / 2) * pitchMm);
  if (widest < leastRad) return null;
  const frame = boreFrame(camera, bore);
  const { mouth: o, inwards: d, radiusMm } = bore;
  const [l, f] = [frame.left, facing(frame)];
  const step = pitchMm / (phases * sub);
  const columns = turns * phases * sub;
  const fold = folding({ rows, phases, turns, sub });
  const at = new Float64Array(2 * columns);
  const climbs = hand === 'right' ? 1 : -1;
  for (let j = 0; j < rows * sub; j++) {
    const azimuth = widest * ((2 * (j + 0.5)) / (rows * sub) - 1);
    const [a, b] = [radiusMm * portable.sin(azimuth), radiusMm * portable.cos(azimuth)];
    // Along a ridge of the helix all azimuths meet at one phase.
    const s = middleMm + (climbs * azimuth * pitchMm) / (2 * Math.PI) - ((columns - 1) / 2) * step;
    const start: Vec3 = [
      o[0] + s * d[0] + a * l[0] + b * f[0],
      o[1] + s * d[1] + a * l[1] + b * f[1],
      o[2] + s * d[2] + a * l[2] + b * f[2],
    ];
    projectRow(camera, start, [step * d[0], step * d[1], step * d[2]], columns, at);
    if (!addLine(fold, grey, at, Math.floor(j / sub))) return null;
  }
  const out = folded(fold);
  levelRows(out, rows, phases);
  return out;
}
