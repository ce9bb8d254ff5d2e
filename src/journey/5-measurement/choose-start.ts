import type { OutlinePoint } from '../4-thread-signal/outline-edges';
import type { RidgeFit } from '../4-thread-signal/ridges';
import { type PeriodStart, startPeriod } from './start-period';

/** Of an outline with fewer edges nothing is said. */
export const fewestEdges = 40;

/** The found period may be twice the pitch, when the ridges' first harmonic is all there is: the
 *  outline, whose teeth are plain, decides unless the ridges themselves do. */
export function chooseStart(
  candidates: readonly (RidgeFit | null)[],
  points: readonly OutlinePoint[],
  middleS: number,
): { start: PeriodStart; ridges: RidgeFit } | null {
  const tried = candidates.flatMap((ridges) => {
    if (!ridges || points.length < fewestEdges) return [];
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
