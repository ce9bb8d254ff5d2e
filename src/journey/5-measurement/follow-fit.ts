import type { PosedCamera } from '../2-card-pose/camera';
import { type AxisFrame, grazing, photoAt } from '../4-thread-signal/axis-frame';
import type { OutlinePoint, SearchBand, Side } from '../4-thread-signal/outline-edges';
import type { ThreadFit } from './fit-thread';
import type { PeriodStart } from './start-period';

/** A side with a fraction of the other's outline says nothing of the middle: the axis would follow it
 *  a little further every round. */
export function bothSidesSpeak(points: readonly OutlinePoint[], fit: ThreadFit): boolean {
  const heard = { left: 0, right: 0 };
  points.forEach((q, i) => {
    heard[q.side] += fit.weights[i];
  });
  return Math.min(heard.left, heard.right) > 0.3 * Math.max(heard.left, heard.right);
}

/** Where to look for the outline's edges once more: within `reachMm` of a thread fitted in this frame, on either
 *  side. */
export function bandAbout(
  fit: ThreadFit,
  camera: PosedCamera,
  frame: AxisFrame,
  reachMm: number,
): (side: Side) => SearchBand {
  return (side) => (s) => {
    const offset = fit.axisOffsetMm + fit.axisTurn * (s - fit.middleS);
    const { slope } = grazing(camera, frame, photoAt(camera, frame, s, 0));
    const at = (x: number) => fit.modelAt(side, x, slope);
    const r = at(s) - (side === 'left' ? offset : -offset);
    const h = 0.01 * fit.pitchMm;
    return { fromR: r - reachMm, toR: r + reachMm, steepness: (at(s + h) - at(s - h)) / (2 * h) };
  };
}

/** A start for the next fit where one has ended. */
export const continued = (fit: ThreadFit, middleS: number): PeriodStart =>
  startAt(
    fit.pitchMm,
    fit.crestS,
    fit.crestRadiusMm + fit.halfTaper * (middleS - fit.middleS),
    fit.halfTaper,
  );

/** First harmonic of a thread's outline, pitches, and how far under the crests its mean lies, in it. */
const usualAmplitude = 0.27;
const meanBelowCrests = 0.9;

/** A start where crests are known to lie at `crestS` and, there, at `radiusMm`. */
export function startAt(
  pitchMm: number,
  crestS: number,
  radiusMm: number,
  halfTaper: number,
): PeriodStart {
  const amplitudeMm = usualAmplitude * pitchMm;
  const side = [radiusMm - meanBelowCrests * amplitudeMm, halfTaper] as const;
  return { pitchMm, crestS, left: side, right: side, amplitudeMm, explained: 1 };
}
