import type { Measured } from '../../journey/identification';
import { assessWear } from '../../journey/wear/assess';
import type { Verdict } from '../../journey/wear/verdict';
import { noWearReadings } from '../../journey/wear/wear-readings';
import { middleValue } from '../../quantity/order';
import { threads } from '../../standards/threads';
import type { Truth } from './truth';

/** What is said of the crests of a thread that is named, in the usual class of its standard, and what is true. */
export interface WearScore {
  readonly said: Verdict['state'];
  readonly truly: 'within' | 'below' | 'above';
  /** How far the true diameter lies under the class, mm; negative above its lower limit. */
  readonly belowMm: number;
  /** Of the diameter, one standard uncertainty, mm. */
  readonly uMm: number;
  readonly pxPerMm: number;
  /** Of every crest's height against half the true diameter, mm; null where crests were damaged one by one. */
  readonly heightErrorsMm: readonly number[] | null;
}

/** Null on tapers, which are judged by their gauge plane, and on threads of no table. */
export function wearScore(truth: Truth, answer: Measured, trueMajorMm: number): WearScore | null {
  if (truth.taper > 0) return null;
  const thread = threads.find(
    (row) =>
      row.system === truth.system &&
      Math.abs(row.pitchMm - truth.pitch_mm) < 1e-3 &&
      Math.abs(row.basicMajorMm - truth.basic_major_mm) < 0.05,
  );
  if (!thread) return null;
  const { measurement, crests, reference } = answer;
  const { limits, photo } = assessWear({
    ...{ thread, className: null, measurement, readings: noWearReadings },
    shots: [{ measurement, crests }],
  });
  if (!limits || !photo) return null;
  const { minMm, maxMm } = limits.major;
  return {
    said: photo.verdict.state,
    truly: trueMajorMm < minMm ? 'below' : trueMajorMm > maxMm ? 'above' : 'within',
    belowMm: minMm - trueMajorMm,
    uMm: measurement.majorDiameterMm.u,
    pxPerMm: reference.pxPerMm,
    heightErrorsMm: truth.damage ? null : crests.map((c) => c.heightMm - trueMajorMm / 2),
  };
}

/** At 95 %, as issue and standard speak of it. */
const expanded = 1.96;
const worn = { byMm: 0.15, uMm: 0.08 };
const resolvedPxPerMm = 12;

/** Verdicts against truth, in one line a statement. */
export function wearText(scores: readonly WearScore[]): string {
  const count = (of: (s: WearScore) => boolean) => scores.filter(of).length;
  const median = (values: readonly number[]) =>
    values.length > 0 ? `${middleValue(values.map(Math.abs)).toFixed(3)} mm` : '–';
  const telling = scores.filter((s) => s.belowMm > worn.byMm && s.uMm <= worn.uMm);
  const heights = scores.filter((s) => s.heightErrorsMm !== null);
  const resolved = heights.filter((s) => s.pxPerMm >= resolvedPxPerMm);
  return [
    `crests of ${scores.length} straight threads: within ${count((s) => s.said === 'within')}, below ${count((s) => s.said === 'below')}, above ${count((s) => s.said === 'above')}, not decidable ${count((s) => s.said === 'not-decidable')}`,
    `said within and below by more than U: ${count((s) => s.said === 'within' && s.belowMm > expanded * s.uMm)} (target 0); said below and within: ${count((s) => s.said === 'below' && s.truly === 'within')} (target 0)`,
    `worn by more than ${worn.byMm} mm at u ≤ ${worn.uMm} mm: ${telling.filter((s) => s.said === 'below').length} of ${telling.length} found below (target 80 %)`,
    `heights of single crests: median error ${median(heights.flatMap((s) => s.heightErrorsMm!))}, at ${resolvedPxPerMm} px per mm and more ${median(resolved.flatMap((s) => s.heightErrorsMm!))} (target 0.03 mm)`,
  ].join('\n');
}
