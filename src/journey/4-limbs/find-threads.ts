import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';
import { atHeight, type PosedCamera, project } from '../2-card-pose/camera';
import type { Reference } from '../2-reference/reference';
import type { FoundFitting } from '../3-find/find-fitting';
import { type Line, mirrorLines, rippleLines } from '../3-find/lines';
import { rippleGroups } from '../3-find/ripple-groups';
import { ripplesOf } from '../3-find/ripples';
import { windowView } from '../3-find/window-view';
import { type AxisFrame, type Extent, flatAxis, onAxisPlane } from '../4-thread-signal/axis-frame';
import { mmPerPxAt } from '../4-thread-signal/axis-moves';
import { grown } from '../4-thread-signal/presence';
import { straighten } from '../4-thread-signal/straightened';
import { type SurfacePeriod, scoreOver, surfacePeriods } from '../4-thread-signal/surface-period';
import { type PeriodicZone, repeatingZones } from '../4-thread-signal/thread-zone';
import { type Unrolled, unroll } from '../4-thread-signal/unrolled-surface';
import type { PhotoPoint } from '../overlay';
import type { SeatedThread } from './seat-thread';
import { periodRange, usualSize } from './usual-size';

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
}

/** Fittings' axes lie 5 to 35 mm high; a first height only scales what is found. */
const usualHeightMm = 10;
const zonesPerLine = 2;
const placesPerZone = 2;
const leastRadiusMm = 1;
/** Of the width of a thread and its shadow, the thread's share where both repeat. */
const withinShadow = 0.68;
const mostGroups = 3;
/** As fine as ridges are told in. */
const ripplesPxPerMm = 7;
/** What is worth less is seldom a thread; it is tried after what ripples. */
const promising = 0.1;
/** A hand on a screen places an end of an axis about this well. */
const drawnWithinMm = 1;
const shortestDrawnMm = 3;
/** Half the width that is looked at beside a thread, in its radii: ends of adaptors differ by up to twice. */
const besideRadii = 2.2;
const groupReachMm = 9;
const straightStepMm = 0.12;
/** Of the radius, as first told by where what repeats ends. */
const uLnRatio = 0.45;

/** Whatever repeats along some axis, likeliest first: mirror lines of the part where something on them looks like
 *  a thread, and only when one asks for more, the rest of them and lines by what ripples. */
export function* findThreads(
  grey: GreyImage,
  reference: Reference,
  { view, blob, axes }: FoundFitting,
): Generator<ThreadGuess> {
  const { camera } = reference;
  const mirrors = mirrorLines(view, blob, axes);
  const guesses = (lines: readonly Line[]) =>
    lines
      .flatMap((line) => alongAxis(grey, camera, overLine(camera, line), line))
      .sort((a, b) => b.worth - a.worth);
  const onMirrors = guesses(mirrors);
  const first = onMirrors.filter(({ worth }) => worth > promising);
  yield* first;
  const seenFine = windowView(grey, reference, ripplesPxPerMm);
  const groups = rippleGroups(
    ripplesOf(seenFine),
    groupReachMm * seenFine.pxPerMm,
    mostGroups,
  ).filter(({ x, y }) => !seenFine.outside?.[Math.round(y) * seenFine.width + Math.round(x)]);
  const rest = [
    ...onMirrors.slice(first.length),
    ...guesses(rippleLines(seenFine, groups, mirrors)),
  ];
  yield* rest.sort((a, b) => b.worth - a.worth);
}

/** The same along an axis that a person has drawn over the thread, ends in the photo. */
export function threadsAlong(
  grey: GreyImage,
  camera: PosedCamera,
  [from, to]: readonly [PhotoPoint, PhotoPoint],
): ThreadGuess[] {
  const [x, y] = atHeight(camera, from, 0);
  const [x1, y1] = atHeight(camera, to, 0);
  const lengthMm = Math.hypot(x1 - x, y1 - y);
  if (!(lengthMm > shortestDrawnMm)) return [];
  const along = { x, y, angleRad: portable.atan2(y1 - y, x1 - x) };
  return alongAxis(grey, camera, overLine(camera, along), {
    fromMm: 0,
    toMm: lengthMm,
    halfWidthMm: Math.max(8, Math.min(35, 1.5 * lengthMm)),
    uAngleRad: drawnWithinMm / lengthMm,
    uOffsetMm: drawnWithinMm,
  }).sort((a, b) => b.worth - a.worth);
}

/** The same along the axis of a thread that has been seated, on either side of it: an adaptor's other end. `reach`:
 *  where along the axis the part begins and ends. */
export function threadsBeside(
  grey: GreyImage,
  camera: PosedCamera,
  { frame, zone, crests }: Pick<SeatedThread, 'frame' | 'zone' | 'crests'>,
  reach: Extent,
): ThreadGuess[] {
  return [
    { fromMm: reach.fromS, toMm: zone.fromS },
    { fromMm: zone.toS, toMm: reach.toS },
  ]
    .filter(({ fromMm, toMm }) => toMm - fromMm > shortestDrawnMm)
    .flatMap((part) =>
      alongAxis(grey, camera, frame, {
        ...part,
        halfWidthMm: Math.max(8, besideRadii * crests.radiusMm),
        uAngleRad: 0.01,
        uOffsetMm: 0.05 * crests.radiusMm,
      }),
    )
    .sort((a, b) => b.worth - a.worth);
}

/** An axis over a line of the reference's plane, at a usual height. */
function overLine(camera: PosedCamera, line: Pick<Line, 'x' | 'y' | 'angleRad'>): AxisFrame {
  const origin = atHeight(camera, project(camera, [line.x, line.y, 0]), usualHeightMm);
  return flatAxis(origin, portable.cos(line.angleRad), portable.sin(line.angleRad));
}

/** Where along and beside an axis to look, and how far it may be off. */
type Stretch = Omit<Line, 'x' | 'y' | 'angleRad'>;

function alongAxis(
  grey: GreyImage,
  camera: PosedCamera,
  frame: AxisFrame,
  line: Stretch,
): ThreadGuess[] {
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
      .map((place) => ({ place, worth: worthAt(grey, camera, frame, zone, place, line) }))
      .sort((p, q) => q.worth - p.worth)
      .slice(0, placesPerZone)
      .flatMap(({ place }) => {
        const seated = { ...frame, origin: onAxisPlane(frame, 0, place.offMm) };
        const guess = settled(
          grey,
          camera,
          frame,
          seated,
          zone,
          zone.periodMm,
          place.radiusMm,
          line,
        );
        return guess ? [guess] : [];
      }),
  );
}

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
  grey: GreyImage,
  camera: PosedCamera,
  frame: AxisFrame,
  zone: Extent,
  { offMm, radiusMm }: Place,
  line: Stretch,
): number {
  const seated = { ...frame, origin: onAxisPlane(frame, 0, offMm) };
  const middleS = (zone.fromS + zone.toS) / 2;
  const step = 1.5 * mmPerPxAt(camera, seated, zone);
  const view = unroll(grey, camera, seated, zone, { radiusMm, halfTaper: 0, middleS }, step, 14);
  const periods = surfacePeriods(view, periodRange(radiusMm));
  return Math.max(0, ...periods.map((q) => worthOf(q, seated, frame, middleS, radiusMm, line)));
}

/** Of a right-hand thread of one start, whose pattern climbs by one a turn about its true axis: how far the axis
 *  would turn for a period. */
const turnFor = ({ climb, periodMm }: SurfacePeriod, radiusMm: number): number =>
  ((climb + 1) * periodMm) / (2 * Math.PI * radiusMm);

/** What speaks for a period about an axis: its pattern, how far the axis is off the line it began on, and its
 *  size. Lines are mostly near and sometimes far off: Cauchy's distribution. */
function worthOf(
  q: SurfacePeriod,
  frame: AxisFrame,
  start: AxisFrame,
  middleS: number,
  radiusMm: number,
  line: Stretch,
): number {
  const off = offLine(frame, start, middleS);
  const turn = (turnFor(q, radiusMm) - off.turn) / line.uAngleRad;
  const aside = off.mm / line.uOffsetMm;
  const size = portable.exp(usualSize(q.periodMm, radiusMm, uLnRatio));
  return (q.score * size) / (1 + turn * turn) / (1 + aside * aside);
}

function settled(
  grey: GreyImage,
  camera: PosedCamera,
  start: AxisFrame,
  seated: AxisFrame,
  seed: Extent,
  waveMm0: number,
  radius0: number,
  line: Stretch,
): ThreadGuess | null {
  let frame = seated;
  let zone = seed;
  const radiusMm = radius0;
  let waveMm = waveMm0;
  const mmPerPx = mmPerPxAt(camera, frame, seed);
  let guess: ThreadGuess | null = null;
  for (let round = 0; round < 2; round++) {
    const middleS = (zone.fromS + zone.toS) / 2;
    const cone = { radiusMm, halfTaper: 0, middleS };
    if (round === 0) {
      const all = { fromS: line.fromMm - 2, toS: line.toMm + 2 };
      zone = grown(unroll(grey, camera, frame, all, cone, 1.5 * mmPerPx, 12), waveMm, zone);
    }
    const part = unroll(grey, camera, frame, zone, cone, mmPerPx, 20);
    const periods = surfacePeriods(part, periodRange(radiusMm));
    if (periods.length === 0) return guess;
    const worth = (q: SurfacePeriod) => worthOf(q, frame, start, middleS, radiusMm, line);
    const ranked = [...periods].sort((x, y) => worth(y) - worth(x));
    if (!(worth(ranked[0]) > 0)) return guess;
    const pitch = ranked
      .filter((q) => worth(q) >= 0.9 * worth(ranked[0]))
      .sort((x, y) => x.periodMm - y.periodMm)[0];
    guess = { frame, zone, radiusMm, periods: ranked, worth: worth(ranked[0]) };
    waveMm = pitch.periodMm;
    zone = trimmed(part, waveMm, zone);
    frame = turned(frame, (zone.fromS + zone.toS) / 2, -turnFor(pitch, radiusMm));
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

/** Turned about its point at s in the plane over the card: positive turns `along` towards `left`. */
export function turned(frame: AxisFrame, s: number, angle: number): AxisFrame {
  const { along: d, left: l } = frame;
  const n = Math.hypot(1, angle);
  const along = [0, 1, 2].map((k) => (d[k] + angle * l[k]) / n) as unknown as AxisFrame['along'];
  const left = [0, 1, 2].map((k) => (l[k] - angle * d[k]) / n) as unknown as AxisFrame['left'];
  const at = onAxisPlane(frame, s, 0);
  return {
    origin: [at[0] - s * along[0], at[1] - s * along[1], at[2] - s * along[2]],
    along,
    left,
  };
}
