import type { Estimate } from '../../quantity/estimate';
import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';
import type { PosedCamera } from '../2-card-pose/camera';
import {
  type AxisFrame,
  type Extent,
  grazing,
  middleOf,
  photoAt,
} from '../4-thread-signal/axis-frame';
import { atHeight, recentred } from '../4-thread-signal/axis-moves';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { type SurfacePeriod, surfacePeriods } from '../4-thread-signal/surface-period';
import { ridgesUnrolled } from '../4-thread-signal/unrolled-surface';
import { closeLines, shownBlind } from './close-lines';
import { type CrestLines, crestLines, type ThreadBody } from './crest-lines';
import { type HexSeen, hexHeight } from './hex-height';
import { logOdds, type PeriodTraits } from './period-odds';
import { type SeatTraits, seatOdds, seatTraits } from './seat-odds';
import type { ThreadGuess } from './threads-on-axis';
import { periodRange, usualPitch } from './usual-size';

/** A thread where it lies: axis at its height, surface and limbs agreeing. */
export interface SeatedThread {
  readonly frame: AxisFrame;
  readonly zone: Extent;
  readonly hex: HexSeen;
  readonly crests: CrestLines;
  /** How well the limb that shows less shows its crests (close-lines.ts); as blind as can be without a close look. */
  readonly limbsShown: number;
  /** Likeliest first. */
  readonly periods: readonly RatedPeriod[];
  readonly pitchMm: number;
  readonly traits: SeatTraits;
  /** Logarithm of the odds that a thread lies here, and that its limbs are the ones that were seen. */
  readonly odds: number;
}

/** A period with the hand and the turn of the axis that it asks for, and its likelihood. */
export interface RatedPeriod extends SurfacePeriod {
  readonly hand: 'right' | 'left';
  readonly turn: number;
  readonly traits: PeriodTraits;
  readonly worth: number;
}

/** Share of left-hand threads on fittings (common practice: rare). */
const leftHanded = 0.015;
/** Of a climb, as a turn of the axis. */
const uClimbTurn = 0.006;
/** Beyond this an axis lies elsewhere, whichever way its thread winds: z², between three and four of u. */
const mostTurnZ2 = 12;
/** Of a radius told by the limbs. */
const uLnRadius = 0.08;
/** A multiple of a period holds all its harmonics: one that explains no more than this over it is not
 *  the pitch. */
const noMore = 0.97;
/** Of the limbs' middle from an axis that they have told, a share of the radius. */
const usuallyAside = 0.08;
const noCrests = -4;
const rounds = 3;
/** Windows along the thread: one is enough for a first look. */
const mostWindows = 3;
/** A look that moves nothing by more than this needs none after it: shares of the radius, rad, of the period. */
const settledWithin = { radius: 0.02, offset: 0.02, turn: 0.005, period: 0.02 };

/** Seats a guess: limbs give radius and middle, the hex its height, the surface its period; three rounds.
 *  The frame runs from the free end towards the hex, unless a person has said which end is free. */
export function seatThread(
  grey: GreyImage,
  camera: PosedCamera,
  guess: Pick<ThreadGuess, 'frame' | 'zone' | 'radiusMm' | 'periods' | 'freeEndFirst'>,
): SeatedThread | null {
  let { frame, radiusMm } = guess;
  let zone: Extent = guess.zone;
  let foldMm = foldPeriod(guess.periods);
  let halfTaper = 0;
  let hex = null as HexSeen | null;
  let seated: SeatedThread | null = null;
  const photo = { grey, camera };
  for (let round = 0; round < rounds; round++) {
    const body = { frame, zone, radiusMm, halfTaper };
    const crests = crestLines(
      photo,
      body,
      foldMm,
      round === 0 ? 1 : mostWindows,
      hex ? middleBy(hex, radiusMm) : undefined,
    );
    // No crests on either side: the second look has never found any.
    if (!crests || (round === 0 && crests.evidence < noCrests)) return seated;
    const ends = [photoAt(camera, frame, zone.fromS, 0), photoAt(camera, frame, zone.toS, 0)];
    frame = recentred(camera, frame, middleOf(zone), crests.offsetMm, crests.turn);
    const rangeMm = -camera.centre[2] + frame.origin[2];
    const before = hex;
    hex =
      before && round === rounds - 1
        ? { ...before, offsetMm: before.offsetMm - crests.offsetMm }
        : hexHeight(grey, camera, frame, seenFrom(camera, frame, ends), crests.radiusMm);
    frame = atHeight(camera, frame, hex.heightMm, seenFrom(camera, frame, ends));
    const scale = (-camera.centre[2] + frame.origin[2]) / rangeMm;
    zone = seenFrom(camera, frame, ends);
    radiusMm = crests.radiusMm * scale;
    halfTaper = crests.halfTaper;
    const periods = rated(photo, { frame, zone, radiusMm, halfTaper }, foldMm, crests.uTurn);
    if (periods.length === 0) return seated;
    const best = periods[0];
    const folded = foldMm;
    if (round < rounds - 1) {
      // Where the limbs leave the turn open, the climb settles it.
      const trust = crests.uTurn ** 2 / (crests.uTurn ** 2 + uClimbTurn ** 2);
      frame = recentred(camera, frame, middleOf(zone), 0, -best.turn * trust);
      zone = seenFrom(camera, frame, ends);
      foldMm = round === 0 ? foldPeriod(periods) : best.periodMm;
    }
    const traits = seatTraits(best.traits, crests, hex.share);
    seated = {
      frame,
      zone,
      hex,
      crests: { ...crests, radiusMm, uRadiusMm: crests.uRadiusMm * scale },
      periods,
      limbsShown: shownBlind,
      pitchMm: best.periodMm,
      traits,
      odds: seatOdds(traits),
    };
    if (round > 0 && agrees(crests, body.radiusMm, folded, foldMm)) break;
  }
  if (!seated) return null;
  return seenClosely(
    photo,
    (guess.freeEndFirst ?? seated.hex.ahead > 0.5) ? seated : reversed(seated),
  );
}

/** A seat with its axis, radius and taper as a close look shows them; as it was where that shows nothing. */
function seenClosely(photo: PosedPhoto, seat: SeatedThread): SeatedThread {
  const { zone, crests } = seat;
  // What is more likely wrong than right needs none.
  if (seat.odds < 0) return seat;
  const lines = closeLines(photo, seat, middleBy(seat.hex, crests.radiusMm));
  if (!lines) return seat;
  const { camera } = photo;
  const ends = [zone.fromS, zone.toS].map((s) => photoAt(camera, seat.frame, s, 0));
  const middle = middleOf(zone);
  const frame = recentred(camera, seat.frame, middle, lines.offsetMm, lines.turn);
  const { radiusMm, uRadiusMm, halfTaper, uHalfTaper, uTurn } = lines;
  // An axis that is told by the limbs tells by the climb about it which way the helix winds.
  const wound = (q: RatedPeriod): RatedPeriod => {
    const { turn, hand } = likelierHand(q, radiusMm, lines);
    return { ...q, turn: turn + lines.turn, hand };
  };
  return {
    ...seat,
    frame,
    zone: seenFrom(camera, frame, ends),
    crests: { ...crests, radiusMm, uRadiusMm, halfTaper, uHalfTaper, uTurn },
    limbsShown: lines.shown,
    odds: bothOdds(seat.odds, lines.odds),
    periods: seat.periods.map(wound),
  };
}

/** Logarithm of the odds that two things hold which go wrong each for its own reasons. */
const bothOdds = (a: number, b: number): number =>
  -portable.log(portable.exp(-a) + portable.exp(-b) + portable.exp(-a - b));

/** Where the limbs' middle is expected by a hex that was sought about the same axis, as far as one is seen. */
const middleBy = ({ offsetMm, uOffsetMm, share }: HexSeen, radiusMm: number): Estimate =>
  share > 0.5 ? { value: offsetMm, u: uOffsetMm } : { value: 0, u: usuallyAside * radiusMm };

/** Whether a look has only confirmed the one before. */
const agrees = (crests: CrestLines, radiusMm: number, foldedMm: number, foldMm: number): boolean =>
  Math.abs(crests.radiusMm / radiusMm - 1) < settledWithin.radius &&
  Math.abs(crests.offsetMm) < settledWithin.offset * radiusMm &&
  Math.abs(crests.turn) < settledWithin.turn &&
  Math.abs(foldMm / foldedMm - 1) < settledWithin.period;

/** The same thread seen along its axis the other way. */
function reversed(seat: SeatedThread): SeatedThread {
  const { frame, zone, hex, crests } = seat;
  const back = ([x, y, z]: AxisFrame['along']) => [-x, -y, -z] as const;
  return {
    ...seat,
    frame: { origin: frame.origin, along: back(frame.along), left: back(frame.left) },
    zone: { fromS: -zone.toS, toS: -zone.fromS },
    hex: { ...hex, ahead: 1 - hex.ahead, offsetMm: -hex.offsetMm },
    crests: { ...crests, halfTaper: -crests.halfTaper, offsetMm: -crests.offsetMm },
  };
}

/** The same stretch of the photo along another axis. */
function seenFrom(
  camera: PosedCamera,
  frame: AxisFrame,
  ends: readonly (readonly [number, number])[],
): Extent {
  const [a, b] = ends.map((p) => grazing(camera, frame, p).s);
  return { fromS: Math.min(a, b), toS: Math.max(a, b) };
}

/** Two teeth side by side look like two teeth; half a tooth folded on the other looks like neither. */
function foldPeriod(periods: readonly SurfacePeriod[]): number {
  const [best] = periods;
  const finer = periods.filter((q) => {
    const ratio = best.periodMm / q.periodMm;
    const whole = Math.round(ratio);
    return (
      (whole === 2 || whole === 3) &&
      Math.abs(ratio / whole - 1) < 0.03 &&
      q.score > noMore * best.score
    );
  });
  return Math.min(best.periodMm, ...finer.map((q) => q.periodMm));
}

/** Periods with what speaks for each: its pattern, and the turn that the axis would need for it. */
function rated(
  photo: PosedPhoto,
  { frame, zone, radiusMm, halfTaper }: ThreadBody,
  foldMm: number,
  uTurn: number,
): RatedPeriod[] {
  const cone = { radiusMm, halfTaper, middleS: middleOf(zone) };
  const view = ridgesUnrolled(photo, frame, zone, cone, foldMm);
  return surfacePeriods(view, periodRange(radiusMm))
    .map((q): RatedPeriod => {
      const { turn, hand, log } = likelierHand(q, radiusMm, { turn: 0, uTurn });
      const traits: PeriodTraits = {
        score: portable.log(Math.max(0.01, q.score)),
        turn: log,
        size: usualPitch(q.periodMm, radiusMm, uLnRadius),
        // A multiple holds all harmonics of its fraction, and a few more by chance.
        multiple: portable.log(foldMm / q.periodMm),
      };
      return { ...q, turn, hand, traits, worth: portable.exp(logOdds(traits)) };
    })
    .sort((a, b) => b.worth - a.worth);
}

/** The hand for which a period's climb asks the axis to turn as its limbs do: `turn` is how far that is from the frame
 *  that the period was seen in. */
function likelierHand(
  { climb, periodMm }: SurfacePeriod,
  radiusMm: number,
  limbs: { readonly turn: number; readonly uTurn: number },
): { readonly hand: 'right' | 'left'; readonly turn: number; readonly log: number } {
  const [right, left] = ([1, -1] as const).map((climbs) => {
    const turn = ((climb + climbs) * periodMm) / (2 * Math.PI * radiusMm);
    const z = (turn + limbs.turn) / Math.hypot(limbs.uTurn, uClimbTurn);
    const prior = climbs === 1 ? 1 - leftHanded : leftHanded;
    return { turn, log: portable.log(prior) - 0.5 * Math.min(z * z, mostTurnZ2) };
  });
  return right.log >= left.log ? { hand: 'right', ...right } : { hand: 'left', ...left };
}
