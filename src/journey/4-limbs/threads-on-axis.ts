import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';
import type { PosedCamera } from '../2-card-pose/camera';
import type { Line } from '../3-find/lines';
import { type AxisFrame, type Extent, middleOf, onAxisPlane } from '../4-thread-signal/axis-frame';
import { mmPerPxAt, recentred } from '../4-thread-signal/axis-moves';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { grown } from '../4-thread-signal/presence';
import { straighten } from '../4-thread-signal/straightened';
import { type SurfacePeriod, scoreOver, surfacePeriods } from '../4-thread-signal/surface-period';
import { type PeriodicZone, repeatingZones } from '../4-thread-signal/thread-zone';
import { type Unrolled, unroll } from '../4-thread-signal/unrolled-surface';
import { periodRange, usualPitch } from './usual-size';

/** A stretch of an axis about which the surface repeats. */
export interface ThreadGuess {
  readonly frame: AxisFrame;
  readonly zone: Extent;
  /** Half the distance between the outermost lines that repeat, mm. */
  readonly radiusMm: number;
  /** Likeliest first. */
  readonly periods: readonly SurfacePeriod[];
  /** What speaks for a thread here, for comparison between guesses. */
  readonly worth: number;
  /** Whether the frame runs from the free end, where a person has said so. */
  readonly freeEndFirst?: boolean;
}

const zonesPerLine = 2;
const placesPerZone = 2;
const leastRadiusMm = 1;
/** Of the width of a thread and its shadow, the thread's share where both repeat. */
const withinShadow = 0.68;
const straightStepMm = 0.12;
/** Of the radius, as first told by where what repeats ends. */
const uLnRadius = 0.4;

/** Where along and beside an axis to look, and how far it may be off. */
export type Stretch = Omit<Line, 'x' | 'y' | 'angleRad'>;

/** Where something repeats: what a first look says of it, and what comes of closer ones. */
export interface LikelyPlace {
  readonly worth: number;
  readonly settled: () => ThreadGuess | null;
}

/** Places along one axis or beside it where something repeats. */
export function placesOnAxis(
  grey: GreyImage,
  camera: PosedCamera,
  frame: AxisFrame,
  line: Stretch,
): LikelyPlace[] {
  const straight = straighten(
    grey,
    camera,
    frame,
    {
      fromS: line.fromMm - 2,
      toS: line.toMm + 2,
      fromR: -line.halfWidthMm,
      toR: line.halfWidthMm,
    },
    straightStepMm,
  );
  return repeatingZones(straight, [line.fromMm, line.toMm], zonesPerLine).flatMap((zone) =>
    placesIn(zone)
      .map((place) => ({
        place,
        worth: worthAt({ grey, camera }, { start: frame, line }, zone, place),
      }))
      .sort((p, q) => q.worth - p.worth)
      .slice(0, placesPerZone)
      .map(({ place, worth }) => {
        const seated = { ...frame, origin: onAxisPlane(frame, 0, place.offMm) };
        const begun = { start: frame, line };
        return {
          worth,
          settled: () => settled({ grey, camera }, begun, seated, zone, place.radiusMm),
        };
      }),
  );
}

/** Places as they come to lie, worthiest first. */
export const guessesAt = (places: readonly LikelyPlace[]): ThreadGuess[] =>
  places.flatMap((place) => place.settled() ?? []).sort((a, b) => b.worth - a.worth);

/** Where in a stretch that repeats the thread may lie. */
interface Place {
  /** Of the axis from its line, to the left. */
  readonly offMm: number;
  readonly radiusMm: number;
}

/** What repeats may be the thread from limb to limb, or with a shadow on one side or on both, or what is
 *  seen of it on one side of the line. */
function placesIn({ reachLeftMm, reachRightMm, periodMm }: PeriodicZone): Place[] {
  const brim = 0.25 * periodMm;
  const left = reachLeftMm + brim;
  const right = reachRightMm + brim;
  const whole = { offMm: (left - right) / 2, radiusMm: (left + right) / 2 };
  const within = withinShadow * whole.radiusMm;
  const all = [
    whole,
    { offMm: 0, radiusMm: Math.max(left, right) },
    { offMm: 0, radiusMm: Math.min(left, right) },
    { offMm: left - within, radiusMm: within },
    { offMm: within - right, radiusMm: within },
    { offMm: whole.offMm, radiusMm: within },
  ];
  return all.filter(
    ({ offMm, radiusMm }, i) =>
      radiusMm > leastRadiusMm &&
      !all
        .slice(0, i)
        .some((o) => Math.abs(o.offMm - offMm) + Math.abs(o.radiusMm - radiusMm) < 0.08 * radiusMm),
  );
}

/** What a first look at the surface says of a place. */
function worthAt(
  photo: PosedPhoto,
  { start: frame, line }: { readonly start: AxisFrame; readonly line: Stretch },
  zone: Extent,
  { offMm, radiusMm }: Place,
): number {
  const seated = { ...frame, origin: onAxisPlane(frame, 0, offMm) };
  const middleS = middleOf(zone);
  const stepMm = 1.5 * mmPerPxAt(photo.camera, seated, zone);
  const cone = { radiusMm, halfTaper: 0, middleS };
  const view = unroll(photo, seated, zone, cone, { stepMm, rowCount: 14 });
  const periods = surfacePeriods(view, periodRange(radiusMm));
  const off = offLine(seated, frame, middleS);
  return Math.max(0, ...periods.map((q) => worthOf(q, radiusMm, off, line)));
}

/** Of a right-hand thread of one start, whose pattern climbs by one a turn about its true axis: how far the axis
 *  would turn for a period. */
const turnFor = ({ climb, periodMm }: SurfacePeriod, radiusMm: number): number =>
  ((climb + 1) * periodMm) / (2 * Math.PI * radiusMm);

/** What speaks for a period about an axis: its pattern, how far the axis is off the line it began on, and its
 *  size. Lines are mostly near and sometimes far off: Cauchy's distribution. */
function worthOf(
  q: SurfacePeriod,
  radiusMm: number,
  off: { readonly mm: number; readonly turn: number },
  line: Stretch,
): number {
  const turn = (turnFor(q, radiusMm) - off.turn) / line.uAngleRad;
  const aside = off.mm / line.uOffsetMm;
  const size = portable.exp(usualPitch(q.periodMm, radiusMm, uLnRadius));
  return (q.score * size) / (1 + turn * turn) / (1 + aside * aside);
}

const looks = 2;

/** A place looked at twice: its zone grown and trimmed, its axis turned as the climb of its pattern asks. */
function settled(
  photo: PosedPhoto,
  { start, line }: { readonly start: AxisFrame; readonly line: Stretch },
  seated: AxisFrame,
  seed: PeriodicZone,
  radiusMm: number,
): ThreadGuess | null {
  let frame = seated;
  let zone: Extent = seed;
  let waveMm = seed.periodMm;
  const mmPerPx = mmPerPxAt(photo.camera, frame, seed);
  let guess: ThreadGuess | null = null;
  for (let round = 0; round < looks; round++) {
    const middleS = middleOf(zone);
    const cone = { radiusMm, halfTaper: 0, middleS };
    if (round === 0) {
      const all = { fromS: line.fromMm - 2, toS: line.toMm + 2 };
      const coarse = { stepMm: 1.5 * mmPerPx, rowCount: 12 };
      zone = grown(unroll(photo, frame, all, cone, coarse), waveMm, zone);
    }
    const part = unroll(photo, frame, zone, cone, { stepMm: mmPerPx, rowCount: 20 });
    const periods = surfacePeriods(part, periodRange(radiusMm));
    if (periods.length === 0) return guess;
    const off = offLine(frame, start, middleS);
    const worth = (q: SurfacePeriod) => worthOf(q, radiusMm, off, line);
    const ranked = [...periods].sort((x, y) => worth(y) - worth(x));
    if (!(worth(ranked[0]) > 0)) return guess;
    guess = { frame, zone, radiusMm, periods: ranked, worth: worth(ranked[0]) };
    // What comes after serves the next look only.
    if (round === looks - 1) break;
    const pitch = ranked
      .filter((q) => worth(q) >= 0.9 * worth(ranked[0]))
      .sort((x, y) => x.periodMm - y.periodMm)[0];
    waveMm = pitch.periodMm;
    zone = trimmed(part, waveMm, zone);
    frame = recentred(photo.camera, frame, middleOf(zone), 0, -turnFor(pitch, radiusMm));
  }
  return guess;
}

const trims = 6;

/** The stretch over which a pattern holds best: edges of hex and chamfer repeat by chance, and thin out
 *  what repeats in between. What holds over more turns counts for more. */
function trimmed(view: Unrolled, waveMm: number, zone: Extent): Extent {
  const length = zone.toS - zone.fromS;
  let best = zone;
  let most = 0;
  for (let a = 0; a < trims; a++)
    for (let b = 0; a + b < trims; b++) {
      const tried = {
        fromS: zone.fromS + (a * length) / (trims + 2),
        toS: zone.toS - (b * length) / (trims + 2),
      };
      const turns = (tried.toS - tried.fromS) / waveMm;
      if (turns < 3.5) continue;
      const worth = scoreOver(view, waveMm, tried) * Math.sqrt(turns);
      if (worth > most) {
        most = worth;
        best = tried;
      }
    }
  return best;
}

/** How far a frame has left the line that it began on. */
function offLine(frame: AxisFrame, line: AxisFrame, s: number) {
  const at = onAxisPlane(frame, s, 0);
  const mm = (at[0] - line.origin[0]) * line.left[0] + (at[1] - line.origin[1]) * line.left[1];
  const turn = frame.along[0] * line.left[0] + frame.along[1] * line.left[1];
  return { mm, turn };
}
