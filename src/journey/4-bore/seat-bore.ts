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
import { wallPitch } from './wall-phases';

/** A mouth and the radius over the crests behind it, as it looks. */
export interface SeenMouth {
  readonly mouth: Vec3;
  readonly inwards: Vec3;
  readonly radiusMm: number;
  /** As `Mouth.odds`. */
  readonly odds: number;
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
}

export interface BorePeriod extends SurfacePeriod {
  readonly hand: 'right' | 'left';
  /** How far the axis must lie aside of the mouth's middle for the pattern to climb as one start does, mm. */
  readonly asideMm: number;
  readonly traits: BoreTraits;
  readonly worth: number;
}

/** Share of left-hand threads on fittings (common practice: rare). */
const leftHanded = 0.015;
/** Of a mouth's middle across the view, over its radius. */
const uAside = 0.01;
const mostAside = 0.06;
/** Of pitch over radius, as for threads outside. */
const uLnRatio = 0.7;
/** A blind or short thread fills the upper part of what is seen. */
const depths = [1, 0.62];
/** A network's word counts no further than this. */
const mostMouthOdds = 6;

/** How finely a wall is unrolled at first, and in the end: so many pixels and at most such a share of the radius. */
const coarse = { px: 1.2, ofRadius: 1 / 50, rowCount: 20 };
const fine = { px: 0.8, ofRadius: 1 / 110, rowCount: 32 };

/** The likeliest thread behind a mouth: its axis such that the far wall's ridges climb as one start does. */
export function seatBore(photo: PosedPhoto, guess: SeenMouth): SeatedBore | null {
  let best: Trial | null = null;
  let most = Number.NEGATIVE_INFINITY;
  const { mouth, inwards, radiusMm } = guess;
  const bore = { mouth, inwards, radiusMm };
  const [widest] = wallWindows(photo.camera, bore);
  if (!widest) return null;
  for (const depth of depths) {
    const toMm = widest.fromMm + depth * (widest.toMm - widest.fromMm);
    const trial = { guess, bore, window: { ...widest, toMm }, movedMm: 0 };
    for (const q of weighed(photo.camera, trial, periodsOf(photo, trial, coarse)))
      if (boreOdds(q.traits) > most) {
        most = boreOdds(q.traits);
        best = trial;
      }
  }
  return best && refined(photo, best);
}

/** How much the climb grows where the axis is moved aside by 1 mm, for a period of 1 mm. A wall point at azimuth φ
 *  moves by sin φ across; seen at an angle, that is sin φ/(cos φ·tan θ) along the wall, nearly 1.2·φ/tan θ. */
function climbPerMm(camera: PosedCamera, { mouth, inwards }: Bore): number {
  const w = [0, 1, 2].map((i) => camera.centre[i] - mouth[i]);
  const along = Math.abs(w[0] * inwards[0] + w[1] * inwards[1] + w[2] * inwards[2]);
  const range = Math.hypot(w[0], w[1], w[2]);
  return (1.2 * 2 * Math.PI * along) / Math.sqrt(range * range - along * along);
}

/** A bore behind a mouth, its axis moved aside of the mouth's middle. */
interface Trial {
  readonly guess: SeenMouth;
  readonly bore: Bore;
  readonly window: WallWindow;
  readonly movedMm: number;
}

function unrolled(photo: PosedPhoto, bore: Bore, window: WallWindow, how: typeof coarse) {
  const stepMm = Math.max(how.px * wallMmPerPx(photo.camera, bore), how.ofRadius * bore.radiusMm);
  return unrollWall(photo, bore, window, { stepMm, rowCount: how.rowCount });
}

const periodsOf = (photo: PosedPhoto, { bore, window }: Trial, how: typeof coarse) =>
  surfacePeriods(unrolled(photo, bore, window, how), periodRange(bore.radiusMm));

/** Likeliest first. */
function weighed(camera: PosedCamera, trial: Trial, all: readonly SurfacePeriod[]): BorePeriod[] {
  return all
    .map((q): BorePeriod => {
      const { climbs, asideMm } = windingOf(camera, trial, q);
      const traits = traitsOf(camera, trial, q, all);
      const worth = portable.exp(boreOdds(traits));
      return { ...q, hand: climbs === 1 ? 'right' : 'left', asideMm, traits, worth };
    })
    .sort((a, b) => b.worth - a.worth);
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
    mouth: Math.max(-mostMouthOdds, Math.min(mostMouthOdds, guess.odds)),
  };
}

/** The way it winds, and how far the axis is from the mouth's middle then. */
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

/** Light wanders over the ridges the deeper they lie: the period is the mean over some depths, by how well each tells
 *  it. */
const steadyDepths = [1, 0.8, 0.65];
/** Within so much of the period over the whole depth. */
const steadySpan = 0.03;

function steadyPeriod(photo: PosedPhoto, { bore, window }: Trial, periodMm: number): number {
  let sum = 0;
  let all = 0;
  for (const depth of steadyDepths) {
    const lengthMm = depth * (window.toMm - window.fromMm);
    const part = { ...window, toMm: window.fromMm + lengthMm };
    const q = surfacePeriodNear(unrolled(photo, bore, part, fine), periodMm, steadySpan);
    const weight = Math.max(0, q?.score ?? 0) * lengthMm * lengthMm;
    if (q) sum += weight * q.periodMm;
    all += weight;
  }
  return all > 0 ? sum / all : periodMm;
}

/** The same with its axis where the likeliest period's climb puts it. */
function refined(photo: PosedPhoto, start: Trial): SeatedBore | null {
  const { guess, window } = start;
  const { left } = boreFrame(photo.camera, start.bore);
  let trial = start;
  let periods = weighed(photo.camera, trial, periodsOf(photo, trial, fine));
  for (let again = 0; again < 2 && periods.length > 0; again++) {
    const [{ asideMm }] = periods;
    const most = mostAside * guess.radiusMm;
    const movedMm = Math.max(-most, Math.min(most, asideMm));
    const mouth = [0, 1, 2].map((i) => guess.mouth[i] + movedMm * left[i]) as unknown as Vec3;
    const bore = { ...start.bore, mouth };
    trial = { guess, bore, window, movedMm };
    periods = weighed(photo.camera, trial, periodsOf(photo, trial, fine));
  }
  if (periods.length === 0) return null;
  const [{ traits, periodMm, hand }] = periods;
  const steady = steadyPeriod(photo, trial, periodMm);
  const seen = wallPitch(photo, trial.bore, window, { pitchMm: steady, hand });
  const nearer = (seen?.value ?? steady) / periodMm;
  return {
    bore: trial.bore,
    window,
    periods: periods.map((q) => ({ ...q, periodMm: nearer * q.periodMm })),
    traits,
    odds: boreOdds(traits),
  };
}
