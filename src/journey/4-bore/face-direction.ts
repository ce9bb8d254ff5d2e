import * as portable from '../../quantity/portable-math';
import type { Vision } from '../../vision/vision';
import { type PosedCamera, rayThrough, type Vec3 } from '../2-card-pose/camera';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { type MouthBox, ringRadii, wholeBox } from './face-bore';
import { type FacePlane, footOf, onPlane, planeView } from './face-plane';
import { type RingEdges, ringEdges } from './ring-edges';
import { findRings, ringShare, weightOf } from './rings';

/** Which way the upright face of a part looks that lies on the card. */
export interface FaceDirection {
  readonly plane: FacePlane;
  /** Around the face, on the plane. */
  readonly box: MouthBox;
}

/** What was found of the part: its hull in the photo, and whether it reaches out of the window. */
export interface PartSeen {
  readonly hull: readonly (readonly [number, number])[];
  readonly touchesRim: boolean;
}

/** Directions of the axis on the card that are tried, from the one straight away from the camera, rad. */
const most = 0.56;
const hop = 0.07;
/** A mouth turned towards the camera by eye, and how much that counts against rings that stand out. */
const uDirection = 0.3;
const directionTrust = 0.5;
const coarsePxPerMm = 3;
const finePxPerMm = 5;
/** What lies in the card's window is hardly wider. */
const largestPartMm = 55;
const mostRings = 6;
/** Directions that are looked at more closely. */
const mostClose = 6;
/** The edge of the face over the rim (common practice, as in mouth-plane.ts). */
const faceOverRim = { from: 1.14, to: 1.9 };

/** Two rings about one middle, rim and edge of the face. */
interface Pair {
  readonly direction: number;
  readonly at: Vec3;
  readonly rim: number;
  readonly outer: number;
  readonly weight: number;
}

/** The directions in which rim and face are rings about one middle, clearest first: on a plane that lies otherwise they are ellipses.
 *  `at`: a point somewhere in its middle. */
export function faceDirections(
  photo: PosedPhoto,
  at: Vec3,
  seen: PartSeen,
  vision: Vision,
): FaceDirection[] {
  const { camera } = photo;
  const straight = portable.atan2(at[1] - camera.centre[1], at[0] - camera.centre[0]);
  const pairs: Pair[] = [];
  for (let d = -most; d <= most + 1e-9; d += hop) {
    const pair = clearestPair(photo, at, straight + d, seen, vision);
    const against = 0.5 * directionTrust * (d / uDirection) ** 2;
    if (pair) pairs.push({ ...pair, weight: pair.weight - against });
  }
  pairs.sort((a, b) => b.weight - a.weight);
  const close = pairs.slice(0, mostClose).map((pair) => turned(photo, pair, vision));
  const distinct: Pair[] = [];
  for (const pair of close.sort((a, b) => b.weight - a.weight))
    if (!distinct.some((other) => samePlace(other, pair))) distinct.push(pair);
  return distinct.map(({ at: middle, direction, outer }) => {
    const r = 1.1 * outer;
    return {
      plane: uprightPlane(middle, direction),
      box: { fromX: -r, toX: r, fromY: -r, toY: r },
    };
  });
}

const samePlace = (a: Pair, b: Pair) =>
  Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1], a.at[2] - b.at[2]) < 0.1 * a.outer &&
  Math.abs(a.direction - b.direction) < 0.03;

function uprightPlane(origin: Vec3, direction: number): FacePlane {
  const c = portable.cos(direction);
  const s = portable.sin(direction);
  return { origin, right: [-s, c, 0], down: [0, 0, 1], inwards: [c, s, 0] };
}

function clearestPair(
  { grey, camera }: PosedPhoto,
  at: Vec3,
  direction: number,
  { hull, touchesRim }: PartSeen,
  vision: Vision,
): Pair | null {
  const plane = uprightPlane(at, direction);
  const box = wholeBox(seenOn(camera, plane, hull), touchesRim);
  const width = box.toX - box.fromX;
  const height = box.toY - box.fromY;
  if (!(width > 0 && height > 0)) return null;
  const view = { ...plane, origin: onPlane(plane, box.fromX, box.fromY) };
  const size = { widthMm: width, heightMm: height };
  const edges = ringEdges(planeView(grey, camera, view, size, coarsePxPerMm), vision);
  const search = {
    fromX: 0,
    toX: width,
    fromY: 0,
    toY: height,
    ...ringRadii(width, height),
  };
  let best: Pair | null = null;
  for (const ring of findRings(edges, search, mostRings))
    for (let ratio = faceOverRim.from; ratio < faceOverRim.to; ratio += 0.02)
      for (const radius of [ring.radius * ratio, ring.radius / ratio]) {
        const share = ringShare(edges, ring.x, ring.y, radius);
        const weight = together(weightOf(ring), weightOf({ radius, share }));
        if (best && weight <= best.weight) continue;
        best = {
          direction,
          at: onPlane(view, ring.x, ring.y),
          rim: Math.min(radius, ring.radius),
          outer: Math.max(radius, ring.radius),
          weight,
        };
      }
  return best;
}

/** Where on a plane a hull in the photo is seen, no larger than any part. */
function seenOn(
  camera: PosedCamera,
  plane: FacePlane,
  hull: readonly (readonly [number, number])[],
): MouthBox {
  const limit = largestPartMm;
  const { distanceMm } = footOf(plane, camera.centre);
  const seen = hull.flatMap((point) => {
    const ray = rayThrough(camera, point);
    const toward = ray[0] * plane.inwards[0] + ray[1] * plane.inwards[1];
    if (toward < 0.05) return [];
    const k = distanceMm / toward;
    const on: Vec3 = [
      camera.centre[0] + k * ray[0],
      camera.centre[1] + k * ray[1],
      camera.centre[2] + k * ray[2],
    ];
    return [footOf(plane, on)];
  });
  const clamped = (v: number) => Math.max(-limit, Math.min(limit, v));
  const xs = seen.map(({ x }) => x);
  const ys = seen.map(({ y }) => y);
  return {
    fromX: clamped(Math.min(...xs)),
    toX: clamped(Math.max(...xs)),
    fromY: clamped(Math.min(...ys)),
    toY: clamped(Math.max(...ys)),
  };
}

/** The same pair where it stands out most when the plane is turned a little, by ever smaller turns. */
function turned(photo: PosedPhoto, pair: Pair, vision: Vision): Pair {
  let best = settled(photo, pair, vision);
  for (const turn of [0.06, 0.03, 0.015])
    for (const way of [1, -1]) {
      for (let again = 0; again < 3; again++) {
        const direction = best.direction + way * turn;
        const tried = settled(photo, { ...best, direction }, vision);
        if (tried.weight <= best.weight) break;
        best = tried;
      }
    }
  return best;
}

/** Middle and radii that fit best on one plane. */
function settled({ grey, camera }: PosedPhoto, pair: Pair, vision: Vision): Pair {
  const half = 1.15 * pair.outer + 1;
  const plane = uprightPlane(pair.at, pair.direction);
  const view = { ...plane, origin: onPlane(plane, -half, -half) };
  const size = { widthMm: 2 * half, heightMm: 2 * half };
  const edges = ringEdges(planeView(grey, camera, view, size, finePxPerMm), vision);
  let at = { x: half, y: half, rim: pair.rim, outer: pair.outer };
  let weight = pairWeight(edges, at);
  for (const step of [0.4, 0.2])
    for (const name of ['x', 'y', 'rim', 'outer'] as const)
      for (const way of [1, -1])
        for (let again = 0; again < 3; again++) {
          const tried = { ...at, [name]: at[name] + way * step };
          const value = pairWeight(edges, tried);
          if (value <= weight) break;
          weight = value;
          at = tried;
        }
  return {
    direction: pair.direction,
    at: onPlane(view, at.x, at.y),
    rim: at.rim,
    outer: at.outer,
    weight,
  };
}

const pairWeight = (
  edges: RingEdges,
  at: { readonly x: number; readonly y: number; readonly rim: number; readonly outer: number },
): number =>
  together(
    weightOf({ radius: at.rim, share: ringShare(edges, at.x, at.y, at.rim) }),
    weightOf({ radius: at.outer, share: ringShare(edges, at.x, at.y, at.outer) }),
  );

/** One clear ring with a poor one is no pair. */
const together = (a: number, b: number): number => 2 * Math.sqrt(Math.max(0, a) * Math.max(0, b));
