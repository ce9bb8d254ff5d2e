import * as portable from '../../quantity/portable-math';
import type { PosedCamera, Vec3 } from '../2-card-pose/camera';
import { periodRange, usualSize } from '../4-limbs/usual-size';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import {
  type SurfacePeriod,
  surfacePeriodNear,
  surfacePeriods,
} from '../4-thread-signal/surface-period';
import { type BoreTraits, boreOdds } from './bore-odds';
import {
  type Bore,
  boreFrame,
  unrollWall,
  type WallWindow,
  wallMmPerPx,
  wallWindows,
} from './bore-wall';

/** A place where a bore may be: a ring that is its rim, or its first crests, and how well it stands out. */
export interface MouthGuess {
  readonly mouth: Vec3;
  readonly inwards: Vec3;
  readonly radiusMm: number;
  /** As `Ring.share`. */
  readonly share: number;
}

/** A bore whose far wall repeats as a thread does. Lengths are those of the plane that the guess lay on. */
export interface SeatedBore {
  readonly bore: Bore;
  readonly window: WallWindow;
  /** Likeliest first. */
  readonly periods: readonly BorePeriod[];
  readonly traits: BoreTraits;
  /** Logarithm of the odds that a thread lies here. */
  readonly odds: number;
  /** Radius at which the pattern holds best, and how far it may be off for the pattern's score to fall by a
   *  tenth. */
  readonly uRadiusMm: number;
}

export interface BorePeriod extends SurfacePeriod {
  readonly hand: 'right' | 'left';
  /** How far the axis must lie aside of the ring's middle for the pattern to climb as one start does, mm. */
  readonly asideMm: number;
  readonly traits: BoreTraits;
  readonly worth: number;
}

/** Share of left-hand threads on fittings (common practice: rare). */
const leftHanded = 0.015;
/** Of a ring's middle across the view, over its radius. */
const uAside = 0.015;
/** Of pitch over radius, as for threads outside. */
const uLnRatio = 0.7;
/** Radius over the crests by that of the ring: the rim is wider by the chamfer. */
const ratios = [0.82, 0.86, 0.9, 0.94, 0.98, 1.02];
/** A blind or short thread fills the upper part of what is seen. */
const depths = [1, 0.62];
const mostRefined = 3;

interface Look {
  readonly guess: MouthGuess;
  readonly bore: Bore;
  readonly window: WallWindow;
  readonly worth: number;
}

/** The likeliest bore among some rings: radius and axis such that the far wall's ridges are straight and climb as
 *  one start does. */
export function seatBore(photo: PosedPhoto, guesses: readonly MouthGuess[]): SeatedBore[] {
  const { camera } = photo;
  const looks: Look[] = [];
  for (const guess of guesses)
    for (const ratio of ratios) {
      const bore = { ...guess, radiusMm: ratio * guess.radiusMm };
      const [widest] = wallWindows(camera, bore);
      if (!widest) continue;
      for (const depth of depths) {
        const toMm = widest.fromMm + depth * (widest.toMm - widest.fromMm);
        const window = { ...widest, toMm };
        const stepMm = Math.max(1.2 * wallMmPerPx(camera, bore), bore.radiusMm / 50);
        const view = unrollWall(photo, bore, window, { stepMm, rowCount: 20 });
        const found = surfacePeriods(view, periodRange(bore.radiusMm));
        const worth = Math.max(
          Number.NEGATIVE_INFINITY,
          ...found.map((q) => boreOdds(traitsOf(camera, { guess, bore, movedMm: 0 }, q, found))),
        );
        if (found.length > 0) looks.push({ guess, bore, window, worth });
      }
    }
  looks.sort((a, b) => b.worth - a.worth);
  const seats: SeatedBore[] = [];
  for (const look of looks) {
    if (seats.length === mostRefined) break;
    if (looks.indexOf(look) > 0 && seats.some((s) => sameBore(s.bore, look.bore))) continue;
    const seat = refined(photo, look);
    if (seat) seats.push(seat);
  }
  return seats.sort((a, b) => b.odds - a.odds);
}

const sameBore = (a: Bore, b: Bore) =>
  Math.abs(a.radiusMm / b.radiusMm - 1) < 0.06 &&
  Math.hypot(a.mouth[0] - b.mouth[0], a.mouth[1] - b.mouth[1], a.mouth[2] - b.mouth[2]) <
    0.1 * a.radiusMm;

/** How much the climb grows where the axis is moved aside by 1 mm, for a period of 1 mm. A wall point at azimuth φ
 *  moves by sin φ across; seen at an angle, that is sin φ/(cos φ·tan θ) along the wall, nearly 1.2·φ/tan θ. */
function climbPerMm(camera: PosedCamera, { mouth, inwards }: Bore): number {
  const w = [0, 1, 2].map((i) => camera.centre[i] - mouth[i]);
  const along = Math.abs(w[0] * inwards[0] + w[1] * inwards[1] + w[2] * inwards[2]);
  const range = Math.hypot(w[0], w[1], w[2]);
  return (1.2 * 2 * Math.PI * along) / Math.sqrt(range * range - along * along);
}

/** A bore behind a ring, its axis moved aside of the ring's middle. */
interface Trial {
  readonly guess: MouthGuess;
  readonly bore: Bore;
  readonly movedMm: number;
}

function traitsOf(
  camera: PosedCamera,
  trial: Trial,
  q: SurfacePeriod,
  all: readonly SurfacePeriod[],
): BoreTraits {
  const { guess, bore } = trial;
  const { climbs, asideMm } = windingOf(camera, trial, q);
  const z = asideMm / (uAside * guess.radiusMm);
  const prior = climbs === 1 ? 1 - leftHanded : leftHanded;
  const finest = Math.min(...all.map((one) => one.periodMm));
  return {
    score: portable.log(Math.max(0.01, q.score)),
    turn: portable.log(prior) - 0.5 * Math.min(z * z, 9),
    size: usualSize(q.periodMm, bore.radiusMm, uLnRatio),
    multiple: portable.log(finest / q.periodMm),
    share: portable.log(Math.max(0.05, guess.share)),
  };
}

/** The way it winds, and how far the axis is from the ring's middle then. */
function windingOf(
  camera: PosedCamera,
  { guess, bore, movedMm }: Trial,
  q: SurfacePeriod,
): { readonly climbs: 1 | -1; readonly asideMm: number } {
  const perMm = climbPerMm(camera, bore) / q.periodMm;
  const u = uAside * guess.radiusMm;
  const [right, left] = ([1, -1] as const).map((climbs) => {
    const asideMm = movedMm + (climbs - q.climb) / perMm;
    const prior = climbs === 1 ? 1 - leftHanded : leftHanded;
    return { climbs, asideMm, p: portable.log(prior) - 0.5 * (asideMm / u) ** 2 };
  });
  return right.p >= left.p ? right : left;
}

const radiusHops = [0.03, 0.012];

function refined(photo: PosedPhoto, { guess, bore: first, window }: Look): SeatedBore | null {
  const { camera } = photo;
  const left = boreFrame(camera, first).left;
  const stepMm = Math.max(0.8 * wallMmPerPx(camera, first), first.radiusMm / 110);
  const at = (radiusMm: number, asideMm: number): Bore => ({
    mouth: [0, 1, 2].map((i) => guess.mouth[i] + asideMm * left[i]) as unknown as Vec3,
    inwards: first.inwards,
    radiusMm,
  });
  const seen = (bore: Bore) => unrollWall(photo, bore, window, { stepMm, rowCount: 32 });
  let radiusMm = first.radiusMm;
  let asideMm = 0;
  let best = likeliest(surfacePeriods(seen(at(radiusMm, 0)), periodRange(radiusMm)), radiusMm, 0);
  if (!best) return null;
  let uRadiusMm = radiusHops[0] * radiusMm;
  for (const hop of radiusHops) {
    const trial = { guess, bore: at(radiusMm, asideMm), movedMm: asideMm };
    asideMm = windingOf(camera, trial, best).asideMm;
    asideMm = Math.max(-0.08 * radiusMm, Math.min(0.08 * radiusMm, asideMm));
    const near = (k: number) => {
      const r = radiusMm * (1 + k * hop);
      const q = surfacePeriodNear(seen(at(r, asideMm)), (best!.periodMm * r) / radiusMm, 0.03);
      return { r, q, score: q?.score ?? 0 };
    };
    const [below, here, above] = [near(-1), near(0), near(1)];
    const bend = below.score - 2 * here.score + above.score;
    const top = [below, here, above].reduce((a, b) => (b.score > a.score ? b : a));
    const peak =
      bend < 0 ? near(Math.max(-2, Math.min(2, (below.score - above.score) / (2 * bend)))) : top;
    const chosen = peak.score > top.score ? peak : top;
    if (!chosen.q) return null;
    if (bend < 0) uRadiusMm = hop * radiusMm * Math.sqrt((0.2 * top.score) / -bend);
    radiusMm = chosen.r;
    best = chosen.q;
  }
  const bore = at(radiusMm, asideMm);
  const all = surfacePeriods(seen(bore), periodRange(radiusMm));
  if (!all.some((q) => Math.abs(q.periodMm / best!.periodMm - 1) < 0.01)) all.push(best);
  const periods = all
    .map((q): BorePeriod => {
      const trial = { guess, bore, movedMm: asideMm };
      const { climbs, asideMm: aside } = windingOf(camera, trial, q);
      const traits = traitsOf(camera, trial, q, all);
      const worth = portable.exp(boreOdds(traits));
      return { ...q, hand: climbs === 1 ? 'right' : 'left', asideMm: aside, traits, worth };
    })
    .sort((a, b) => b.worth - a.worth);
  return {
    bore,
    window,
    periods,
    traits: periods[0].traits,
    odds: boreOdds(periods[0].traits),
    uRadiusMm,
  };

  function likeliest(list: readonly SurfacePeriod[], r: number, moved: number) {
    const trial = { guess, bore: at(r, moved), movedMm: moved };
    const rated = list.map((q) => ({ q, worth: boreOdds(traitsOf(camera, trial, q, list)) }));
    return rated.reduce((a, b) => (b.worth > a.worth ? b : a), rated[0])?.q ?? null;
  }
}
