import type { Estimate } from '../../quantity/estimate';
import * as portable from '../../quantity/portable-math';
import {
  type AxisFrame,
  type Extent,
  grazing,
  middleOf,
  photoAt,
} from '../4-thread-signal/axis-frame';
import { mmPerPxAt } from '../4-thread-signal/axis-moves';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import type { CrestLines } from './crest-lines';
import { type CrestBelief, closeCrestsOf } from './limb-network';
import { closeLook, limbPatch } from './limb-patch';

/** The crest lines of both sides by a close look all along a thread: what its axis lacks, and its cone. */
export interface CloseLines {
  /** At the middle of the zone, mm. */
  readonly radiusMm: number;
  readonly uRadiusMm: number;
  /** Growth of the radius along s. */
  readonly halfTaper: number;
  readonly uHalfTaper: number;
  /** What the axis lacks: mm to the left at the middle, and turn towards the left. */
  readonly offsetMm: number;
  readonly turn: number;
  readonly uTurn: number;
  /** Logarithm of the odds of these lines against lines of another radius. */
  readonly odds: number;
  /** How well a side's windows show its line, on the side that shows less: mean logarithm of what they hold of it, as a share
   *  of a bin. */
  readonly shown: number;
}

/** What windows say of a line where they show none. */
export const shownBlind = -portable.log(closeLook.bins);

/** Windows side by side; those between them, half a window on, see the same turns at another phase: the mean of what the
 *  network says of either is nearer than one (on 111 seen renders the diameter within 1 % on 92 → 95, within 0.5 % on
 *  67 → 75). */
const mostWindows = 7;
/** The network is surer than it is right on what it has not seen. */
const doubt = 0.03;
/** Steps of a line's place, of a pitch; and how far from the radius that is expected it is sought. */
const stepsPerPitch = 48;
const reachPitches = 1.1;
/** Greatest growth of a side's line along the axis. */
const mostGrowth = 0.06;
/** Lines less likely by this (logarithm) against their side's best are left out. */
const leastLog = 9;
const mostLines = 250;
/** What is known beforehand: of the radius, as a share of it, and of the turn, rad. */
const priors = { radius: 0.02, turn: 0.012 };
/** Growth of the radius that threads are made with: none, but for what turning leaves, or 1:16 on diameter towards the hex,
 *  seldom another (ISO 7-1, ASME B1.20.1; shares and how nearly: common practice and judgement). Seen at a slant, a growth that
 *  is not there is a pitch that is wrong by as much times the slant. */
const tapers = [
  { growth: 0, u: 0.001, share: 0.8 },
  { growth: 1 / 32, u: 0.003, share: 0.17 },
  { growth: 0, u: 0.03, share: 0.03 },
];
/** Places nearer to the best one than this share of a pitch are one peak. */
const peakPitches = 0.25;
/** Odds are not told beyond this. */
const leastFar = 1e-6;

interface Look {
  readonly x: number;
  readonly belief: CrestBelief;
  /** Grazing radius of the first bin's and the last bin's middle, mm. */
  readonly from: number;
  readonly to: number;
}

/** A line of crests along one side: place at the middle, growth, and logarithm of its density. */
interface Line {
  readonly at: number;
  readonly growth: number;
  readonly log: number;
}

interface Body {
  readonly frame: AxisFrame;
  readonly zone: Extent;
  readonly pitchMm: number;
  readonly crests: Pick<CrestLines, 'radiusMm' | 'uRadiusMm' | 'halfTaper'>;
}

/** `aside`: where the limbs' middle is expected, mm to the left of the axis. Null where nothing of the thread is
 *  seen on one of its sides. */
export function closeLines(
  photo: PosedPhoto,
  { frame, zone, pitchMm, crests: { radiusMm, uRadiusMm, halfTaper } }: Body,
  aside: Estimate,
): CloseLines | null {
  const { camera } = photo;
  const middle = middleOf(zone);
  const length = zone.toS - zone.fromS;
  const wide = closeLook.turns * pitchMm;
  const apart = Math.max(1, Math.min(mostWindows, Math.floor(length / wide)));
  const count = 2 * apart - 1;
  const looks = { left: [] as Look[], right: [] as Look[] };
  for (let k = 0; k < count; k++) {
    const s = count === 1 ? middle : zone.fromS + wide / 2 + (k * (length - wide)) / (count - 1);
    const expected = radiusMm + halfTaper * (s - middle);
    const fold = { middleS: s, pitchMm, radiusMm: expected, halfTaper };
    const patch = limbPatch(photo, frame, closeLook, fold);
    if (!patch) continue;
    const pitchPx = pitchMm / mmPerPxAt(camera, frame, zone);
    const beliefs = closeCrestsOf(patch, pitchPx);
    for (const [side, sign] of [
      ['left', 1],
      ['right', -1],
    ] as const) {
      const r = (bin: number) =>
        sign *
        grazing(camera, frame, photoAt(camera, frame, s, sign * (patch.fromR + bin * patch.binMm)))
          .r;
      looks[side].push({
        x: s - middle,
        belief: beliefs[side],
        from: r(0.5),
        to: r(closeLook.bins - 0.5),
      });
    }
  }
  if (looks.left.length === 0) return null;
  const worth = apart / count;
  const windows = worth * looks.left.length;
  const grid = { radiusMm, uRadiusMm, pitchMm, halfTaper, lengthMm: length, aside, worth, windows };
  return joined(linesOf(looks.left, grid), linesOf(looks.right, grid), grid);
}

interface Grid {
  readonly radiusMm: number;
  readonly uRadiusMm: number;
  readonly pitchMm: number;
  readonly halfTaper: number;
  readonly lengthMm: number;
  readonly aside: Estimate;
  /** Of one look: how many of them see something of their own; and of all of a side's. */
  readonly worth: number;
  readonly windows: number;
}

/** Lines of one side that are not much less likely than its best. */
function linesOf(
  looks: readonly Look[],
  { radiusMm, pitchMm, halfTaper, lengthMm, worth }: Grid,
): Line[] {
  const step = pitchMm / stepsPerPitch;
  const half = Math.ceil((reachPitches * pitchMm) / step);
  // A growth that moves the ends of the line by one step.
  const growthStep = (2 * step) / Math.max(lengthMm, 4 * pitchMm);
  const growths = looks.length > 1 ? Math.ceil(mostGrowth / growthStep) : 0;
  const lines: Line[] = [];
  let best = Number.NEGATIVE_INFINITY;
  for (let j = -growths; j <= growths; j++)
    for (let i = -half; i <= half; i++) {
      const at = radiusMm + i * step;
      const growth = halfTaper + j * growthStep;
      let log = 0;
      for (const look of looks) log += worth * logDensity(look, at + growth * look.x);
      if (log > best) best = log;
      lines.push({ at, growth, log });
    }
  return lines
    .filter(({ log }) => log > best - leastLog)
    .sort((a, b) => b.log - a.log)
    .slice(0, mostLines);
}

function logDensity({ belief, from, to }: Look, r: number): number {
  const bin = ((r - from) / (to - from)) * (closeLook.bins - 1);
  const flat = doubt + belief.none * (1 - doubt);
  const k = Math.floor(bin);
  const inside = k >= 0 && k < closeLook.bins - 1;
  const density = inside ? belief.bins[k] + (bin - k) * (belief.bins[k + 1] - belief.bins[k]) : 0;
  return portable.log((1 - flat) * density + flat / closeLook.bins);
}

/** Both sides together: a cone about an axis. */
function joined(lefts: readonly Line[], rights: readonly Line[], grid: Grid): CloseLines {
  const { radiusMm, pitchMm } = grid;
  const uRadius = Math.hypot(2 * grid.uRadiusMm, priors.radius * radiusMm);
  // Of all pairs only the logarithms are kept: what else a pair is takes less time to make again than to collect.
  const logs = new Float64Array(lefts.length * rights.length);
  const usual = usualTapers();
  let top = 0;
  let k = 0;
  for (const a of lefts)
    for (const b of rights) {
      const radius = (a.at + b.at) / 2;
      const offset = (a.at - b.at) / 2;
      const turn = (a.growth - b.growth) / 2;
      const z2 =
        ((radius - radiusMm) / uRadius) ** 2 +
        ((offset - grid.aside.value) / grid.aside.u) ** 2 +
        (turn / priors.turn) ** 2;
      logs[k] = a.log + b.log - 0.5 * z2 + usual((a.growth + b.growth) / 2);
      if (logs[k] > logs[top]) top = k;
      k++;
    }
  const left = lefts[Math.floor(top / rights.length)];
  const right = rights[top % rights.length];
  const best = {
    radius: (left.at + right.at) / 2,
    taper: (left.growth + right.growth) / 2,
    turn: (left.growth - right.growth) / 2,
  };
  let near = 0;
  let far = 0;
  const sums = { radius: 0, radius2: 0, taper: 0, taper2: 0, offset: 0, turn: 0, turn2: 0 };
  k = 0;
  for (const a of lefts)
    for (const b of rights) {
      const p = portable.exp(logs[k++] - logs[top]);
      const radius = (a.at + b.at) / 2;
      if (Math.abs(radius - best.radius) > peakPitches * pitchMm) {
        far += p;
        continue;
      }
      const taper = (a.growth + b.growth) / 2;
      const turn = (a.growth - b.growth) / 2;
      near += p;
      sums.radius += p * radius;
      sums.radius2 += p * (radius - best.radius) ** 2;
      sums.taper += p * taper;
      sums.taper2 += p * (taper - best.taper) ** 2;
      sums.offset += p * ((a.at - b.at) / 2);
      sums.turn += p * turn;
      sums.turn2 += p * (turn - best.turn) ** 2;
    }
  const mean = (sum: number) => sum / near;
  const spread = (sum2: number, about: number) => Math.sqrt(Math.max(0, sum2 / near - about ** 2));
  const radius = mean(sums.radius);
  const taper = mean(sums.taper);
  const turn = mean(sums.turn);
  return {
    radiusMm: radius,
    uRadiusMm: Math.hypot(spread(sums.radius2, radius - best.radius), pitchMm / stepsPerPitch / 2),
    halfTaper: taper,
    uHalfTaper: spread(sums.taper2, taper - best.taper),
    offsetMm: mean(sums.offset),
    turn,
    uTurn: spread(sums.turn2, turn - best.turn),
    odds: -portable.log(far / near + leastFar),
    shown: Math.min(left.log, right.log) / grid.windows,
  };
}

/** `usualTaper`, each reckoned once: pairs of lines share few growths. */
function usualTapers(): (growth: number) => number {
  const known = new Map<number, number>();
  return (growth) => {
    let usual = known.get(growth);
    if (usual === undefined) {
      usual = usualTaper(growth);
      known.set(growth, usual);
    }
    return usual;
  };
}

/** Logarithm of the density of a growth of the radius, up to a constant. */
const usualTaper = (growth: number): number =>
  portable.log(
    tapers.reduce((sum, t) => {
      const z = (growth - t.growth) / t.u;
      return sum + (t.share / t.u) * portable.exp(-0.5 * z * z);
    }, 1e-6),
  );
