import * as portable from '../../quantity/portable-math';
import type { PosedCamera, Vec3 } from '../2-card-pose/camera';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { type FacePlane, onPlane, turnedPlane } from './face-plane';
import { type LineBelief, type MouthBelief, mouthBelief } from './sector-network';
import {
  awayAt,
  mouthGrid,
  mouthPatch,
  type RingGuess,
  ratioAt,
  rowAt,
  sectorsOf,
} from './sector-patch';

/** A mouth on a plane that lies as its face does, mm of that plane: its middle, the rim, where face and bore meet, a
 *  circle as wide as the crests, and the face's outer edge. */
export interface Mouth {
  readonly plane: FacePlane;
  readonly x: number;
  readonly y: number;
  readonly rim: number;
  readonly crests: number;
  readonly outer: number;
  /** Logarithm of the odds that it is a mouth at all. */
  readonly odds: number;
  /** How well the three circles go through what was believed: mean logarithm of a sector's share. */
  readonly fit: number;
}

const sectors = sectorsOf(mouthGrid);
const lines = ['rim', 'crests', 'outer'] as const;
/** Share below which a row is as good as excluded. */
const leastShare = 0.001;

/** The mouth near a guess, looked at `looks` times. `turns`: the face may be turned about the plane's `down`. */
export function mouthNear(
  photo: PosedPhoto,
  plane: FacePlane,
  guess: RingGuess,
  { looks, turns }: { readonly looks: number; readonly turns: boolean },
): Mouth {
  const look = (on: FacePlane, near: RingGuess) =>
    mouthOf(photo.camera, on, near, mouthBelief(mouthPatch(photo, on, near)), turns);
  let mouth = look(plane, guess);
  for (let again = 1; again < looks; again++) {
    const { x, y, crests } = mouth;
    mouth = look(mouth.plane, { x, y, radius: crests });
  }
  return mouth;
}

/** Offsets over the guess's radius, turn in rad, logarithms of the radii over it. */
type Parameters = [number, number, number, number, number, number];

/** The mouth whose circles go best through what is believed of a patch about a guess. */
export function mouthOf(
  camera: PosedCamera,
  plane: FacePlane,
  guess: RingGuess,
  belief: MouthBelief,
  turns: boolean,
): Mouth {
  const view = sectorView(camera, plane, guess);
  const logs = lines.map((line) => logarithms(belief[line]));
  let best = started(belief, view);
  let most = worth(best);
  for (let hop = 0.08; hop > 0.001; hop /= 2)
    for (let again = 0; again < 4; again++) {
      const before = most;
      for (let i = 0; i < best.length; i++) {
        if (i === 2 && !turns) continue;
        for (const way of [hop, -hop]) {
          const tried: Parameters = [...best];
          tried[i] += way;
          const value = worth(tried);
          if (value <= most) continue;
          most = value;
          best = tried;
        }
      }
      if (most === before) break;
    }
  const r = guess.radius;
  const [x, y, turn, ...radii] = best;
  view.turn(turn);
  const [rim, crests, outer] = radii.map((ln, line) =>
    meanRadius(ln, (tried) => around(line, x, y, portable.exp(tried))),
  );
  const turned = turnedPlane(plane, guess.x, guess.y, turn);
  return {
    plane: turned,
    x: x * r,
    y: y * r,
    rim: r * portable.exp(rim),
    crests: r * portable.exp(crests),
    outer: r * portable.exp(outer),
    odds: belief.odds,
    fit: most / (lines.length * sectors),
  };

  function worth(p: Parameters): number {
    view.turn(p[2]);
    let sum = -0.5 * (p[2] / uTurn) ** 2;
    for (let line = 0; line < lines.length; line++)
      sum += around(line, p[0], p[1], portable.exp(p[3 + line]));
    return sum;
  }

  function around(line: number, x: number, y: number, radius: number): number {
    let sum = 0;
    for (let s = 0; s < sectors; s++) sum += at(logs[line], s, view.seenAt(s, x, y, radius));
    return sum;
  }
}

/** How much of a sector's word its neighbours have not said. */
const ownShare = 0.3;
/** Radii about the likeliest over which their mean is taken: steps of the logarithm. */
const radiusHop = 0.004;
const radiusHops = 30;

/** Mean of a radius' logarithm over all that are likely; `worth`: logarithm of how likely one is. */
function meanRadius(likeliest: number, worth: (ln: number) => number): number {
  const most = worth(likeliest);
  let all = 0;
  let mean = 0;
  for (let k = -radiusHops; k <= radiusHops; k++) {
    const weight = portable.exp(ownShare * (worth(likeliest + radiusHop * k) - most));
    all += weight;
    mean += weight * k;
  }
  return likeliest + (radiusHop * mean) / all;
}

/** Of a direction that is sought by rings, in one look; rad. */
const uTurn = 0.15;

/** Logarithm of the share at a ratio, between rows by a straight line. */
function at(logs: Float64Array, sector: number, ratio: number): number {
  const { rows } = mouthGrid;
  if (!(ratio > 0)) return portable.log(leastShare);
  const row = Math.max(0, Math.min(rows - 1.001, rowAt(mouthGrid, ratio)));
  const i = Math.floor(row);
  const k = sector * rows + i;
  return logs[k] + (row - i) * (logs[k + 1] - logs[k]);
}

/** Each row with some of its neighbours': what is believed to a row has no slope to climb by. */
const blur = [1, 4, 6, 4, 1].map((v) => v / 16);

function logarithms({ shares }: LineBelief): Float64Array {
  const { rows } = mouthGrid;
  return shares.map((_, i) => {
    const row = i % rows;
    let sum = 0;
    for (let k = -2; k <= 2; k++)
      if (row + k >= 0 && row + k < rows) sum += blur[k + 2] * shares[i + k];
    return portable.log(sum + leastShare);
  });
}

/** Middle and radii as each line is believed to lie in the mean. */
function started(belief: MouthBelief, { directions }: SectorView): Parameters {
  const means = lines.map((line) => meanRatios(belief[line]));
  const [rim] = means;
  let x = 0;
  let y = 0;
  for (let s = 0; s < sectors; s++) {
    x += (2 * rim[s] * directions[2 * s]) / sectors;
    y += (2 * rim[s] * directions[2 * s + 1]) / sectors;
  }
  const [a, b, c] = means.map((all) =>
    portable.log(all.reduce((sum, ratio) => sum + ratio, 0) / sectors),
  );
  return [x, y, 0, a, b, c];
}

function meanRatios({ shares }: LineBelief): Float64Array {
  const { rows } = mouthGrid;
  const out = new Float64Array(sectors);
  for (let s = 0; s < sectors; s++) {
    let mean = 0;
    for (let row = 0; row < rows; row++) mean += shares[s * rows + row] * row;
    out[s] = ratioAt(mouthGrid, mean);
  }
  return out;
}

interface SectorView {
  /** Of each sector on the plane: x and y in turn. */
  readonly directions: Float64Array;
  /** Turns the plane of the circles about `down`. */
  readonly turn: (angle: number) => void;
  /** How far from the guess a circle on that plane is seen in a sector: all over the guess's radius. */
  readonly seenAt: (sector: number, x: number, y: number, radius: number) => number;
}

/** Rays of the patch against a circle on a plane that goes through the guess and may be turned. */
function sectorView(camera: PosedCamera, plane: FacePlane, guess: RingGuess): SectorView {
  const { away, across } = awayAt(plane, camera, guess.x, guess.y);
  const middle = onPlane(plane, guess.x, guess.y);
  const w = [0, 1, 2].map((i) => (middle[i] - camera.centre[i]) / guess.radius) as unknown as Vec3;
  const wr = dot(w, plane.right);
  const wd = dot(w, plane.down);
  const wi = dot(w, plane.inwards);
  const directions = new Float64Array(2 * sectors);
  for (let s = 0; s < sectors; s++) {
    const angle = (2 * Math.PI * (s + 0.5)) / sectors;
    const c = portable.cos(angle);
    const t = portable.sin(angle);
    directions[2 * s] = c * away[0] + t * across[0];
    directions[2 * s + 1] = c * away[1] + t * across[1];
  }
  let [cos, sin] = [1, 0];
  return {
    directions,
    turn: (angle) => {
      cos = portable.cos(angle);
      sin = portable.sin(angle);
    },
    seenAt: (sector, x, y, radius) => {
      const ux = directions[2 * sector];
      const uy = directions[2 * sector + 1];
      // Of the ray's foot and its direction along the turned plane's right and inwards.
      const k = cos * wi + sin * wr;
      const m = sin * ux;
      const a = k * cos * ux - (cos * wr - sin * wi) * m;
      const b = k * uy - wd * m;
      const p = a - x * m;
      const q = b - y * m;
      const quadratic = p * p + q * q - radius * radius * m * m;
      const half = -k * (x * p + y * q + radius * radius * m);
      const rest = (x * x + y * y - radius * radius) * k * k;
      const under = half * half - quadratic * rest;
      return under < 0 ? Number.NaN : (Math.sqrt(under) - half) / quadratic;
    },
  };
}

const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
