import { card, markers } from '../scale-card/geometry';
import type { Photo } from './1-photo/photo';
import { project } from './2-card-pose/camera';
import type { Reference } from './2-reference/reference';
import { photoAt } from './4-thread-signal/axis-frame';
import type { ThreadSolution } from './5-measurement/thread-solution';
import type { CrestMark, CrestProfile, Overlay, PhotoPoint } from './overlay';

const round = (v: number) => Math.round(100 * v) / 100;
export const rounded = ([x, y]: PhotoPoint): PhotoPoint => [round(x), round(y)];

/** What is known before any thread: the markers, or the outline, as the fitted camera sees them. */
export function referenceOverlay({ grey }: Photo, found: Reference): Overlay {
  const half = card.markerSideMm / 2;
  return {
    widthPx: grey.width,
    heightPx: grey.height,
    markers: found.detected.map(({ id }) => {
      const { xMm, yMm } = markers[id];
      const corner = (x: number, y: number) =>
        rounded(project(found.camera, [xMm + x * half, yMm + y * half, 0]));
      return { id, corners: [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)] };
    }),
    reference: found.kind === 'card' ? [] : found.outline.map(rounded),
    outline: [],
    axis: null,
    contactLines: [],
    crests: [],
  };
}

export function threadOverlay(photo: Photo, found: Reference, solution: ThreadSolution): Overlay {
  const { frame, zone, fit, points, middleS } = solution;
  const { camera } = found;
  const rangeMm = frame.origin[2] - camera.centre[2];
  const at = (s: number, side: 1 | -1): PhotoPoint => {
    const r = fit.crestRadiusMm + fit.halfTaper * (s - middleS);
    return photoAt(camera, frame, s, side * r * Math.hypot(1, r / rangeMm) + offset(solution, s));
  };
  const outline = (['left', 'right'] as const).map((side) =>
    points
      .map((q, i) => ({ q, weight: fit.weights[i] }))
      .filter(({ q, weight }) => q.side === side && weight > 0.2)
      .sort((a, b) => a.q.s - b.q.s)
      .map(({ q }) => rounded(q.photo)),
  );
  return {
    ...referenceOverlay(photo, found),
    outline,
    axis: axisOverlay(found, solution),
    contactLines: ([1, -1] as const).map((side) => [
      rounded(at(zone.fromS, side)),
      rounded(at(zone.toS, side)),
    ]),
    crests: (['left', 'right'] as const).flatMap((side) =>
      crestPositions(solution, side).map(
        (s): CrestMark => ({
          at: rounded(at(s, side === 'left' ? 1 : -1)),
          side,
          axialMm: round(s - zone.fromS),
        }),
      ),
    ),
  };
}

/** The axis over the measured zone, in the photo. */
export function axisOverlay(
  { camera }: Reference,
  solution: ThreadSolution,
): readonly [PhotoPoint, PhotoPoint] {
  const { frame, zone } = solution;
  const at = (s: number) => rounded(photoAt(camera, frame, s, offset(solution, s)));
  return [at(zone.fromS), at(zone.toS)];
}

const offset = ({ fit }: ThreadSolution, s: number) =>
  fit.axisOffsetMm + fit.axisTurn * (s - fit.middleS);

function crestPositions({ fit, zone }: ThreadSolution, side: 'left' | 'right'): number[] {
  const first = fit.crestS + (side === 'left' ? 0 : 0.5) * fit.pitchMm;
  const out: number[] = [];
  const from = Math.ceil((zone.fromS - first) / fit.pitchMm);
  for (let k = from; first + k * fit.pitchMm <= zone.toS; k++) out.push(first + k * fit.pitchMm);
  return out;
}

export function crestProfile({ points, fit, zone }: ThreadSolution): CrestProfile {
  const steps = 240;
  const hop = (zone.toS - zone.fromS) / (steps - 1);
  const axial = Array.from({ length: steps }, (_, i) => zone.fromS + i * hop);
  const bySide = (side: 'left' | 'right') =>
    points.filter((q) => q.side === side).sort((a, b) => a.s - b.s);
  const seen = (side: 'left' | 'right') => {
    const list = bySide(side);
    let j = 0;
    return axial.map((s) => {
      while (j < list.length && list[j].s < s - hop / 2) j++;
      const near = list.slice(j, j + 6).filter((q) => q.s < s + hop / 2);
      return near.length ? round3(near.reduce((t, q) => t + q.r, 0) / near.length) : null;
    });
  };
  const fitted = (side: 'left' | 'right') => {
    const list = bySide(side);
    let j = 0;
    return axial.map((s) => {
      while (j < list.length - 1 && list[j].s < s) j++;
      return round3(fit.modelAt(side, s, list[j]?.slope ?? 0));
    });
  };
  return {
    axialMm: axial.map((s) => round3(s - zone.fromS)),
    leftMm: seen('left'),
    rightMm: seen('right'),
    leftFitMm: fitted('left'),
    rightFitMm: fitted('right'),
  };
}

const round3 = (v: number) => Math.round(1000 * v) / 1000;
