import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';
import { atHeight, type PosedCamera, project } from '../2-card-pose/camera';
import type { Reference } from '../2-reference/reference';
import type { Part } from '../3-find/find-fitting';
import { type Line, mirrorLines, rippleLines } from '../3-find/lines';
import { rippleGroups } from '../3-find/ripple-groups';
import { ripplesOf } from '../3-find/ripples';
import { windowView } from '../3-find/window-view';
import { type AxisFrame, type Extent, flatAxis, photoAt } from '../4-thread-signal/axis-frame';
import { recentred } from '../4-thread-signal/axis-moves';
import type { PhotoPoint } from '../overlay';
import type { SeatedThread } from './seat-thread';
import { guessesAt, placesOnAxis, type ThreadGuess } from './threads-on-axis';

/** Fittings' axes lie 5 to 35 mm high; a first height only scales what is found. */
const usualHeightMm = 10;
const mostGroups = 3;
/** As fine as ridges are told in. */
const ripplesPxPerMm = 7;
/** What is worth less is seldom a thread; it is tried after what ripples. */
const promising = 0.1;
/** What is worth less at a first look is seldom promising after closer ones, which are left for later: of 39 seen renders
 *  that waits with half of all places, and with the best one of a single photo. */
const hopeful = 0.02;
/** A hand on a screen places an end of an axis about this well. */
const drawnWithinMm = 1;
const shortestDrawnMm = 3;
/** Half the width that is looked at beside a thread, in its radii: ends of adaptors differ by up to twice. */
const besideRadii = 2.2;
const groupReachMm = 9;

/** Whatever repeats along some axis, likeliest first: mirror lines of what may be the part where something on them looks
 *  like a thread, and only when one asks for more, the rest of them and lines by what ripples. */
export function* findThreads(
  grey: GreyImage,
  reference: Reference,
  parts: readonly Part[],
): Generator<ThreadGuess> {
  const { camera } = reference;
  const mirrors = parts.flatMap(({ view, blob, axes }) => mirrorLines(view, blob, axes));
  const placesOn = (lines: readonly Line[]) =>
    lines.flatMap((line) => placesOnAxis(grey, camera, overLine(camera, line), line));
  const places = placesOn(mirrors);
  const onMirrors = guessesAt(places.filter(({ worth }) => worth >= hopeful));
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
    ...guessesAt(places.filter(({ worth }) => worth < hopeful)),
    ...guessesAt(placesOn(rippleLines(seenFine, groups, mirrors))),
  ];
  yield* rest.sort((a, b) => b.worth - a.worth);
}

/** Half the width that is looked at beside a drawn axis, in its length: threads are from a third to three times as
 *  long as wide, and what repeats beside one is left out where that is looked at by itself. */
const drawnHalfWidths = [0.5, 0.85, 1.5];
/** How far both ends of a drawn axis are tried to either side, mm: a hand's error. */
const turnedBy = [0, -0.5 * drawnWithinMm, 0.5 * drawnWithinMm];

/** What repeats along an axis that a person has drawn over the thread, ends in the photo. */
function threadsAlong(
  grey: GreyImage,
  camera: PosedCamera,
  [from, to]: readonly [PhotoPoint, PhotoPoint],
): ThreadGuess[] {
  const [x, y] = atHeight(camera, from, 0);
  const [x1, y1] = atHeight(camera, to, 0);
  const lengthMm = Math.hypot(x1 - x, y1 - y);
  if (!(lengthMm > shortestDrawnMm)) return [];
  const along = { x, y, angleRad: portable.atan2(y1 - y, x1 - x) };
  const start = overLine(camera, along);
  const places = turnedBy.flatMap((asideMm) =>
    drawnHalfWidths.flatMap((width) =>
      placesOnAxis(
        grey,
        camera,
        recentred(camera, start, lengthMm / 2, 0, (2 * asideMm) / lengthMm),
        {
          fromMm: 0,
          toMm: lengthMm,
          halfWidthMm: Math.max(4, Math.min(35, width * lengthMm)),
          uAngleRad: drawnWithinMm / lengthMm,
          uOffsetMm: drawnWithinMm,
        },
      ),
    ),
  );
  return guessesAt(places);
}

/** Of a drawn axis, shares of its length: how far the ends of a thread that is found may lie beside it, and its middle
 *  beyond its ends; a hand is that steady (judgement). */
const beside = 0.15;
const beyond = 0.1;

/** What repeats along the drawn axis, then what is found there without it; the free end is where the person has begun. */
export function* alongDrawn(
  grey: GreyImage,
  camera: PosedCamera,
  found: Iterable<ThreadGuess>,
  drawn: readonly [PhotoPoint, PhotoPoint],
): Iterable<ThreadGuess> {
  for (const guess of threadsAlong(grey, camera, drawn)) yield { ...guess, freeEndFirst: true };
  const [from, to] = drawn;
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length2 = dx * dx + dy * dy;
  for (const guess of found) {
    const ends = [guess.zone.fromS, guess.zone.toS].map((s) => {
      const at = photoAt(camera, guess.frame, s, 0);
      const [x, y] = [at[0] - from[0], at[1] - from[1]];
      return { along: (x * dx + y * dy) / length2, aside: Math.abs(x * dy - y * dx) / length2 };
    });
    const middle = (ends[0].along + ends[1].along) / 2;
    if (ends.every(({ aside }) => aside < beside) && middle > -beyond && middle < 1 + beyond)
      yield { ...guess, freeEndFirst: ends[1].along > ends[0].along };
  }
}

/** The same along the axis of a thread that has been seated, on either side of it: an adaptor's other end. `reach`:
 *  where along the axis the part begins and ends. */
export function threadsBeside(
  grey: GreyImage,
  camera: PosedCamera,
  { frame, zone, crests }: Pick<SeatedThread, 'frame' | 'zone' | 'crests'>,
  reach: Extent,
): ThreadGuess[] {
  const places = [
    { fromMm: reach.fromS, toMm: zone.fromS },
    { fromMm: zone.toS, toMm: reach.toS },
  ]
    .filter(({ fromMm, toMm }) => toMm - fromMm > shortestDrawnMm)
    .flatMap((part) =>
      placesOnAxis(grey, camera, frame, {
        ...part,
        halfWidthMm: Math.max(8, besideRadii * crests.radiusMm),
        uAngleRad: 0.01,
        uOffsetMm: 0.05 * crests.radiusMm,
      }),
    );
  return guessesAt(places);
}

/** An axis over a line of the reference's plane, at a usual height. */
function overLine(camera: PosedCamera, line: Pick<Line, 'x' | 'y' | 'angleRad'>): AxisFrame {
  const origin = atHeight(camera, project(camera, [line.x, line.y, 0]), usualHeightMm);
  return flatAxis(origin, portable.cos(line.angleRad), portable.sin(line.angleRad));
}
