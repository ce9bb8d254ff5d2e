import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';
import { atHeight, type PosedCamera, project } from '../2-card-pose/camera';
import type { Blob } from '../3-find/fitting-blob';
import { type Line, mirrorLines, rippleLines } from '../3-find/lines';
import { rippleGroups } from '../3-find/ripple-groups';
import { ripplesOf } from '../3-find/ripples';
import type { RoughAxis } from '../3-find/rough-axis';
import type { WindowView } from '../3-find/window-view';
import { type AxisFrame, type Extent, flatAxis, onAxisPlane } from '../4-thread-signal/axis-frame';
import { mmPerPxAt } from '../4-thread-signal/axis-moves';
import { grown } from '../4-thread-signal/presence';
import { straighten } from '../4-thread-signal/straightened';
import { type SurfacePeriod, scoreOver, surfacePeriods } from '../4-thread-signal/surface-period';
import { repeatingZones } from '../4-thread-signal/thread-zone';
import { type Unrolled, unroll } from '../4-thread-signal/unrolled-surface';
import type { PhotoPoint } from '../overlay';

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
  /** The line it began on, as an axis at a usual height. */
  readonly start: AxisFrame;
}

/** Fittings' axes lie 5 to 35 mm high; a first height only scales what is found. */
const usualHeightMm = 10;
const zonesPerLine = 2;
const mostGroups = 3;
const mostOfAKind = 4;
/** A hand on a screen places an end of an axis about this well. */
const drawnWithinMm = 1;
const shortestDrawnMm = 3;
const groupReachMm = 9;
const straightStepMm = 0.12;
/** Pitches of listed threads over their radius: 0.06 (M52x1.5) to 0.45 (4-40 UNC). */
const finest = 0.05;
const coarsest = 0.5;
/** Pitch over radius of listed threads: median and spread of its logarithm over the tables. */
const usualRatio = 0.16;
const uLnRatio = 0.45;

/** Whatever repeats along some axis, likeliest first: mirror lines of the part first, and only when one
 *  asks for more, lines by what ripples. `fine` is the same view finer, in which ridges can be told. */
export function* findThreads(
  grey: GreyImage,
  camera: PosedCamera,
  view: WindowView,
  fine: () => WindowView,
  blob: Blob,
  axes: readonly RoughAxis[],
): Generator<ThreadGuess> {
  const seen: Line[] = [];
  const guesses = (lines: readonly Line[]) => {
    seen.push(...lines);
    return lines
      .flatMap((line) => alongLine(grey, camera, line))
      .sort((a, b) => b.worth - a.worth)
      .slice(0, mostOfAKind);
  };
  yield* guesses(mirrorLines(view, blob, axes));
  const seenFine = fine();
  const groups = rippleGroups(
    ripplesOf(seenFine),
    groupReachMm * seenFine.pxPerMm,
    mostGroups,
  ).filter(({ x, y }) => !seenFine.outside?.[Math.round(y) * seenFine.width + Math.round(x)]);
  yield* guesses(rippleLines(seenFine, groups, seen));
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
  return alongLine(grey, camera, {
    x,
    y,
    angleRad: portable.atan2(y1 - y, x1 - x),
    fromMm: 0,
    toMm: lengthMm,
    halfWidthMm: Math.max(8, Math.min(35, 1.5 * lengthMm)),
    uAngleRad: drawnWithinMm / lengthMm,
    uOffsetMm: drawnWithinMm,
  }).sort((a, b) => b.worth - a.worth);
}

function alongLine(grey: GreyImage, camera: PosedCamera, line: Line): ThreadGuess[] {
  const origin = atHeight(camera, project(camera, [line.x, line.y, 0]), usualHeightMm);
  const frame = flatAxis(origin, portable.cos(line.angleRad), portable.sin(line.angleRad));
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
  return repeatingZones(straight, [line.fromMm, line.toMm], zonesPerLine).flatMap((zone) => {
    const off = (zone.reachLeftMm - zone.reachRightMm) / 2;
    const radiusMm = (zone.reachLeftMm + zone.reachRightMm) / 2 + 0.25 * zone.periodMm;
    if (radiusMm < 1) return [];
    const seated = { ...frame, origin: onAxisPlane(frame, 0, off) };
    const guess = settled(grey, camera, frame, seated, zone, zone.periodMm, radiusMm, line);
    return guess ? [guess] : [];
  });
}

function settled(
  grey: GreyImage,
  camera: PosedCamera,
  start: AxisFrame,
  seated: AxisFrame,
  seed: Extent,
  waveMm0: number,
  radius0: number,
  line: Line,
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
    const periods = surfacePeriods(part, {
      fromMm: finest * radiusMm,
      toMm: coarsest * radiusMm,
    });
    if (periods.length === 0) return guess;
    // A right-hand thread of one start climbs by one a turn about its true axis.
    const turnFor = (q: SurfacePeriod) => ((q.climb + 1) * q.periodMm) / (2 * Math.PI * radiusMm);
    const off = offLine(frame, start, middleS);
    const worth = (q: SurfacePeriod) => {
      const z = [
        (turnFor(q) - off.turn) / line.uAngleRad,
        off.mm / line.uOffsetMm,
        portable.log(q.periodMm / radiusMm / usualRatio) / uLnRatio,
      ];
      // Lines are mostly near and sometimes far off: Cauchy's distribution.
      return (q.score * portable.exp(-0.5 * z[2] * z[2])) / (1 + z[0] * z[0]) / (1 + z[1] * z[1]);
    };
    const ranked = [...periods].sort((x, y) => worth(y) - worth(x));
    if (!(worth(ranked[0]) > 0)) return guess;
    const pitch = ranked
      .filter((q) => worth(q) >= 0.9 * worth(ranked[0]))
      .sort((x, y) => x.periodMm - y.periodMm)[0];
    guess = { frame, zone, radiusMm, periods: ranked, worth: worth(ranked[0]), start };
    waveMm = pitch.periodMm;
    zone = trimmed(part, waveMm, zone);
    frame = turned(frame, (zone.fromS + zone.toS) / 2, -turnFor(pitch));
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
