import * as portable from '../../quantity/portable-math';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { type BaseShape, baseShares, type StandingView, standingView } from './base-line';
import type { FacePlane } from './face-plane';
import { bodyBelief, type LineBelief } from './sector-network';
import {
  bodyGrid,
  bodyPatch,
  type RingGuess,
  rowAt,
  sectorsOf,
  widestAzimuth,
} from './sector-patch';

/** Height of the mouth over all bodies that are about as well seen as the likeliest, mm. */
export interface MouthHeight {
  readonly heightMm: number;
  readonly uMm: number;
}

const sectors = sectorsOf(bodyGrid);
const azimuths = Float64Array.from(
  { length: sectors },
  (_, s) => widestAzimuth * ((2 * (s + 0.5)) / sectors - 1),
);
/** Heights over the outer ring's radius. */
const heights = { from: 0.6, to: 3.2, hop: 0.012 };
/** Half across flats over the radius of the face's outer edge: a hex is chamfered to 0.93…1 of its flats (common
 *  practice), a round body a little or not at all. */
const bodies = { from: 0.98, to: 1.1, hop: 0.02, usual: 1.03, u: 0.03 };
/** Logarithm of how much rarer a round body is than a hex (common practice). */
const roundRarer = 3;
const hexTurns = 30;
/** Share below which a row is as good as excluded, and how much of a sector's word its neighbours have not said. */
const leastShare = 0.003;
const ownShare = 0.5;

/** How high the mouth of a body is that stands on the card with its axis square to it, by where its side is seen to end;
 *  `outer`: the edge of its face as the card's plane shows it. */
export function mouthHeight(photo: PosedPhoto, card: FacePlane, outer: RingGuess): MouthHeight {
  return heightOf(
    standingView(photo.camera, card, outer),
    bodyBelief(bodyPatch(photo, card, outer)),
  );
}

/** The same by what is believed of that. */
export function heightOf(view: StandingView, belief: LineBelief): MouthHeight {
  const { outer, distanceMm } = view;
  const logs = belief.shares.map((p) => portable.log(p + leastShare));
  const depths = [];
  for (let ratio = heights.from; ratio < heights.to; ratio *= 1 + heights.hop) depths.push(ratio);
  const worth = new Float64Array(depths.length).fill(Number.NEGATIVE_INFINITY);
  for (let ratio = bodies.from; ratio < bodies.to; ratio += bodies.hop) {
    const usual = -0.5 * ((ratio - bodies.usual) / bodies.u) ** 2;
    for (let k = -1; k < hexTurns; k++) {
      const turn = k < 0 ? null : (k * Math.PI) / 3 / hexTurns;
      const shape: BaseShape = { half: ratio * outer.radius, turn };
      const shares = baseShares(view, shape, azimuths);
      const prior = usual - (turn === null ? roundRarer : 0);
      for (let i = 0; i < depths.length; i++) {
        const value = prior + ownShare * seen(logs, shares, depths[i], distanceMm / outer.radius);
        if (value > worth[i]) worth[i] = value;
      }
    }
  }
  const most = worth.reduce((a, b) => Math.max(a, b));
  let all = 0;
  let mean = 0;
  let square = 0;
  for (let i = 0; i < depths.length; i++) {
    const depth = depths[i] * outer.radius;
    const heightMm = (depth * distanceMm) / (distanceMm + depth);
    const w = portable.exp(worth[i] - most);
    all += w;
    mean += w * heightMm;
    square += w * heightMm * heightMm;
  }
  mean /= all;
  return { heightMm: mean, uMm: Math.sqrt(Math.max(0, square / all - mean * mean)) };
}

/** Sum of the logarithms over all sectors that see the base at such a depth; lengths over the outer ring's radius. */
function seen(logs: Float64Array, shares: Float64Array, depth: number, distance: number): number {
  const { rows } = bodyGrid;
  let sum = 0;
  let n = 0;
  for (let s = 0; s < sectors; s++) {
    const ratio = (depth + distance) / shares[s] - distance;
    if (!(ratio > 0)) continue;
    n++;
    const row = rowAt(bodyGrid, ratio);
    if (row < 0 || row > rows - 1.001) {
      sum += portable.log(leastShare);
      continue;
    }
    const i = Math.floor(row);
    const k = s * rows + i;
    sum += logs[k] + (row - i) * (logs[k + 1] - logs[k]);
  }
  return n > 0 ? (sum * sectors) / n : Number.NEGATIVE_INFINITY;
}
