import * as portable from '../../quantity/portable-math';
import type { PosedCamera } from '../2-card-pose/camera';
import { type FacePlane, footOf } from './face-plane';
import { awayAt, type RingGuess } from './sector-patch';

/** Eye and mouth of a body that stands with its axis square to a plane, as that plane shows them: below the camera on
 *  it, how far it is away, and the direction from there to the mouth's middle, mm. */
export interface StandingView {
  readonly foot: readonly [number, number];
  readonly distanceMm: number;
  readonly outer: RingGuess;
  readonly away: readonly [number, number];
  readonly across: readonly [number, number];
}

export function standingView(
  camera: PosedCamera,
  plane: FacePlane,
  outer: RingGuess,
): StandingView {
  const { x, y, distanceMm } = footOf(plane, camera.centre);
  const { away, across } = awayAt(plane, camera, outer.x, outer.y);
  return { foot: [x, y], distanceMm, outer, away, across };
}

/** Half across a body's flats or its radius, mm as the mouth's plane shows it; `turn`, the direction of one flat's
 *  normal on the plane, rad; null for a round body. */
export interface BaseShape {
  readonly half: number;
  readonly turn: number | null;
  /** Middle of the body where it is not that of the outer ring. */
  readonly at?: readonly [number, number];
}

/** Of its half width, how far beside the body its base is still told. */
const aside = 0.01;

/** Where the base of a body is seen on the cylinder below the outer ring, for azimuths from the side that faces the
 *  camera: share of the way from the eye to the foot of that cylinder's line on the base's plane. NaN where its
 *  silhouette is seen instead. A base `depth` below the mouth is seen (depth + z)/share − z below it, z being the eye's
 *  distance. */
export function baseShares(
  { foot, outer, away, across }: StandingView,
  shape: BaseShape,
  azimuths: Float64Array,
): Float64Array {
  const [x, y] = shape.at ?? [outer.x, outer.y];
  const ax = x - foot[0];
  const ay = y - foot[1];
  const out =
    shape.turn === null ? roundShare(ax, ay, shape.half) : hexShare(ax, ay, shape.half, shape.turn);
  return azimuths.map((azimuth) => {
    const c = -portable.cos(azimuth);
    const s = portable.sin(azimuth);
    return out(
      outer.x + outer.radius * (c * away[0] + s * across[0]) - foot[0],
      outer.y + outer.radius * (c * away[1] + s * across[1]) - foot[1],
    );
  });
}

/** How far along (px, py) a ray comes out of a hexagon about (ax, ay). */
function hexShare(ax: number, ay: number, half: number, turn: number) {
  const normals = Array.from({ length: 6 }, (_, k) => {
    const angle = turn + (k * Math.PI) / 3;
    return [portable.cos(angle), portable.sin(angle)] as const;
  });
  return (px: number, py: number): number => {
    let most = Number.NaN;
    for (const normal of normals) {
      // Distance of the face from the eye along its normal: negative where it looks towards the camera.
      const face = half + normal[0] * ax + normal[1] * ay;
      const share = face / (normal[0] * px + normal[1] * py);
      if (face < 0 && share > 0 && !(share <= most)) most = share;
    }
    for (const normal of normals)
      if (normal[0] * (most * px - ax) + normal[1] * (most * py - ay) > (1 + aside) * half)
        return Number.NaN;
    return most;
  };
}

function roundShare(ax: number, ay: number, half: number) {
  return (px: number, py: number): number => {
    const pp = px * px + py * py;
    const pa = px * ax + py * ay;
    const under = pa * pa - pp * (ax * ax + ay * ay - half * half);
    return under < 0 ? Number.NaN : (pa - Math.sqrt(under)) / pp;
  };
}
