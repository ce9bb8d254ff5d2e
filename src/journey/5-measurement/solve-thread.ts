import { ok, type Result, refuse } from '../../quantity/result';
import type { Field } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import type { PosedCard } from '../2-card-pose/pose-from-markers';
import type { Extent } from '../4-thread-signal/axis-frame';
import { atHeight, mmPerPxAt, recentred } from '../4-thread-signal/axis-moves';
import {
  type OutlinePoint,
  type OutlineView,
  outlineEdges,
  type SearchBand,
  type Side,
} from '../4-thread-signal/outline-edges';
import { type RidgeFit, ridgeDepth, ridgePitch, ridgePresence } from '../4-thread-signal/ridges';
import { usualRim } from '../4-thread-signal/rim-edge';
import { hexRatio, type ThreadPlace } from '../4-thread-signal/thread-place';
import { unrollLight } from '../4-thread-signal/unrolled-light';
import { crestRim } from './crest-rim';
import { fitAsMade } from './fit-as-made';
import { fitThread, type ThreadFit } from './fit-thread';
import { bandAbout, bothSidesSpeak, continued } from './follow-fit';
import { closer, contrastOf, handOf } from './hand';
import { lampShadow } from './lamp-shadow';
import { ridgeEstimate } from './ridge-estimate';
import { type PeriodStart, startPeriod } from './start-period';
import { completeTurns, grownWhile, outlineAgrees } from './thread-extent';
import { anyForm } from './thread-form';
import type { ThreadSolution } from './thread-solution';
import { type Resting, widestHalfWidth } from './widest-part';

const rounds = 3;

type Refusal = 'no-thread' | 'too-few-turns';

export function solveThread(
  grey: GreyImage,
  card: PosedCard,
  place: ThreadPlace,
  field: Field,
): Result<ThreadSolution, Refusal> {
  const { camera } = card;
  let frame = place.frame;
  let zone: Extent = { fromS: place.zone.fromS, toS: place.zone.toS };
  const mmPerPx = mmPerPxAt(camera, frame, zone);
  const view: OutlineView = { grey, camera, response: card.response, mmPerPx, field };
  const middle = () => (zone.fromS + zone.toS) / 2;
  const edges = (where: Extent, band: (side: Side) => SearchBand) =>
    (['left', 'right'] as const).flatMap((side) =>
      outlineEdges(view, frame, { side, zone: where, band: band(side) }, rim),
    );
  const ridgesNear = (where: Extent, surface: Surface, pitchMm: number, span: number) =>
    ridgePitch(
      unrollLight({ grey, camera }, frame, where, deepened(surface, pitchMm), {
        mmPerPx,
        periodMm: pitchMm,
      }),
      pitchMm,
      span,
    );

  const reachMm = place.envelopeMm ?? Math.max(place.zone.reachLeftMm, place.zone.reachRightMm);
  const surface0 = { radiusMm: reachMm, halfTaper: 0, middleS: middle() };
  const lowest = place.envelopeMm ?? Math.min(place.zone.reachLeftMm, place.zone.reachRightMm);
  const wide = (pitchMm: number) => () => () => ({
    fromR: Math.max(1, lowest - (place.envelopeMm ? 0.85 : 1.2) * pitchMm),
    toR: reachMm + (place.envelopeMm ? 0.4 : 0.6),
  });
  let rim = usualRim[field];
  let points: readonly OutlinePoint[] = edges(zone, wide(place.zone.periodMm));
  // The spectrum magnifies: ridges lie nearer to the camera than the axis.
  const begun = chooseStart(
    [place.zone.periodMm * 0.97, place.zone.periodMm * 0.485]
      .filter((p) => p > 0.68)
      .map((p) => ridgesNear(zone, surface0, p, 0.07)),
    points,
    middle(),
  );
  if (!begun) return refuse('no-thread', noThread);

  let ridges: RidgeFit | null = begun.ridges;
  let form = anyForm;
  const solve = (from: PeriodStart, handed: 1 | -1, warm?: ThreadFit) =>
    fitThread(
      points,
      middle(),
      from,
      {
        blurMm: card.blurPx * mmPerPx,
        form,
        handed,
        ridges:
          ridges &&
          ridgeEstimate(
            ridges,
            view,
            { frame, zone },
            { radiusMm: reachMm, scatterMm: warm?.scatterMm ?? 0 },
          ),
        mmPerPx,
        // Perspective widens the band that is seen in the axis plane.
        rangeMm: frame.origin[2] - camera.centre[2],
        uOffsetMm: warm ? 0.25 : 0.6,
        uTurn: warm ? 0.01 : 0.02,
        radius: place.envelopeMm ? { value: place.envelopeMm, u: 0.25 } : null,
      },
      warm?.scatterMm,
    );
  let right: ThreadFit | null = solve(begun.start, 1);
  let left: ThreadFit | null = solve(begun.start, -1);
  let fit = closer(right, left);
  let resting: Resting = { on: 'unknown', heightMm: -frame.origin[2], uMm: 0.5 };
  let hexHalfWidthMm: number | null = null;
  for (let round = 0; round < rounds; round++) {
    // Beside black, metal fades inwards for other reasons too.
    if (round === rounds - 1 && field === 'light') rim = crestRim(view, frame, points, fit);
    // The two sides put the axis in their middle; the widest part puts it at its height.
    if (bothSidesSpeak(points, fit))
      frame = recentred(camera, frame, fit.middleS, fit.axisOffsetMm, fit.axisTurn);
    const hex = widestHalfWidth(view, frame, place);
    if (hex && hex.mm > 1.03 * fit.crestRadiusMm) {
      const heightMm = hexRatio * hex.mm;
      resting = { on: 'hex', heightMm, uMm: Math.hypot(hexRatio * hex.uMm, 0.004 * heightMm) };
      hexHalfWidthMm = hex.mm;
    }
    frame = atHeight(camera, frame, resting.heightMm, zone);
    const current: ThreadFit = fit;
    const near = bandAbout(current, points, 0.32 * current.pitchMm + 2 * mmPerPx);
    if (round === rounds - 1) points = edges(zone, near);
    else {
      const limits = limitsOf(place, current.pitchMm);
      const beyond = edges(limits, near);
      const surface = surfaceOf(current);
      const view = unrollLight(
        { grey, camera },
        frame,
        limits,
        deepened(surface, current.pitchMm),
        {
          mmPerPx,
          periodMm: current.pitchMm,
        },
      );
      const presence = ridgePresence(view, current.pitchMm, zone);
      const seated = { ...current, modelAt: centredModel(current) };
      zone = grownWhile(
        (a, b) =>
          outlineAgrees(beyond, seated, a, b) &&
          presence.some((q) => q.s >= a - 1e-9 && q.s < b && q.presence > 0.25),
        zone,
        limits,
        current.pitchMm,
      );
      points = beyond.filter((q) => q.s >= zone.fromS && q.s <= zone.toS);
    }
    if (round > 0) {
      zone = completeTurns(points, current, zone);
      points = points.filter((q) => q.s >= zone.fromS && q.s <= zone.toS);
    }
    if (points.length < 40) return refuse('no-thread', noThread);
    ridges = ridgesNear(inner(zone, current.pitchMm), surfaceOf(current), current.pitchMm, 0.015);
    const from = continued(current, middle());
    const climbs = ridges && handOf(ridges.helix);
    if (climbs && right && left) [right, left] = climbs === 'right' ? [right, null] : [null, left];
    // A hand that fits clearly worse need not be asked again either.
    const contrast = contrastOf(right, left);
    if (right && contrast < 1.25) right = solve(from, 1, right);
    if (left && contrast > 0.8) left = solve(from, -1, left);
    fit = closer(right, left);
  }
  const handed = fit === right ? 1 : -1;
  const finished = fitAsMade(points, fit, (kept, warm, as) => {
    points = kept;
    form = as;
    return solve(continued(warm, middle()), handed, warm);
  });
  if ((zone.toS - zone.fromS) / fit.pitchMm < 3)
    return refuse('too-few-turns', 'Show at least four turns of the thread, unobstructed.');
  const contrast = contrastOf(right, left);
  return ok({
    frame,
    resting,
    hexHalfWidthMm,
    ...finished,
    lampShadow: lampShadow(view, frame, finished.points, finished.fit),
    ridges,
    zone,
    middleS: middle(),
    mmPerPx,
    known: null,
    hand: contrast < 0.9 ? 'right' : contrast > 1.11 ? 'left' : null,
  });
}

/** Ridges near the ends lie on chamfer and run-out, deeper than the rest, and so seem elsewhere. */
function inner(zone: Extent, pitchMm: number): Extent {
  const spare = Math.max(0, (zone.toS - zone.fromS) / pitchMm - 4.5) / 2;
  const trim = Math.min(0.75, spare) * pitchMm;
  return { fromS: zone.fromS + trim, toS: zone.toS - trim };
}

const noThread =
  'Lay the fitting in the card’s window with its thread in full view, and shoot from above.';

interface Surface {
  readonly radiusMm: number;
  readonly halfTaper: number;
  readonly middleS: number;
}

const surfaceOf = (fit: ThreadFit): Surface => ({
  radiusMm: fit.crestRadiusMm,
  halfTaper: fit.halfTaper,
  middleS: fit.middleS,
});

const deepened = (surface: Surface, pitchMm: number): Surface => ({
  ...surface,
  radiusMm: surface.radiusMm - ridgeDepth.value * pitchMm,
});

/** The found period may be twice the pitch, when the ridges' first harmonic is all there is: the
 *  outline, whose teeth are plain, decides unless the ridges themselves do. */
function chooseStart(
  candidates: readonly (RidgeFit | null)[],
  points: readonly OutlinePoint[],
  middleS: number,
): { start: PeriodStart; ridges: RidgeFit } | null {
  const tried = candidates.flatMap((ridges) => {
    if (!ridges || points.length < 40) return [];
    const pitches = Array.from({ length: 21 }, (_, i) => ridges.pitchMm * (1 + 0.002 * (i - 10)));
    const start = startPeriod(points, middleS, pitches);
    return start ? [{ start, ridges }] : [];
  });
  // Twice the pitch holds every harmonic of the pitch and gains on it by noise alone; its own first
  // harmonic is empty.
  const finest = Math.min(...tried.map(({ ridges }) => ridges.pitchMm));
  const value = ({ start, ridges }: (typeof tried)[number]) => {
    const twice = ridges.pitchMm > 1.5 * finest;
    const handicap = twice ? (ridges.fundamental < 0.1 ? 0.5 : 0.1) : 0;
    return start.explained + 2 * ridges.explained - handicap;
  };
  return tried.sort((a, b) => value(b) - value(a))[0] ?? null;
}

/** Threads may run from the free end to the hex. */
function limitsOf(place: ThreadPlace, pitchMm: number): Extent {
  const hex = place.widest.fromS;
  const middle = (place.zone.fromS + place.zone.toS) / 2;
  return { fromS: -pitchMm, toS: hex > middle + pitchMm ? hex : place.lengthMm };
}

/** The model about its own centre line, for outlines already placed on it. */
const centredModel =
  (fit: ThreadFit) =>
  (side: Side, s: number, slope: number): number => {
    const offset = fit.axisOffsetMm + fit.axisTurn * (s - fit.middleS);
    return fit.modelAt(side, s, slope) - (side === 'left' ? offset : -offset);
  };
