import type { BudgetRow, ThreadMeasurement } from '../journey/5-measurement/thread-measurement';
import { coneAngle, seatsSeen } from '../journey/6-candidates/end-seen';
import { conclude } from '../journey/7-next-reading/conclude';
import type { Conclusion } from '../journey/7-next-reading/decision';
import type { Identification } from '../journey/identification';
import type { PhotoPoint } from '../journey/overlay';
import { resolvedDiameter } from '../journey/wear/resolved-major';
import type { Expected } from './expected-thread';
import { wearJson } from './wear-json';

/** What was said with the photo. */
export interface Said {
  readonly expected?: Expected | null;
  /** The axis that a person has shown. */
  readonly along?: readonly [PhotoPoint, PhotoPoint] | null;
}

/** One photo's line of `measure --json`. Outside tests rely on these names: add, never rename. */
export function identificationJson(
  photo: string,
  identification: Identification,
  { expected = null, along = null }: Said = {},
): object {
  const { outcome, timingsMs } = identification;
  if (outcome === 'refused')
    return { photo, outcome, refusal: identification.refusal, along, timingsMs };
  const { reference, measurement, conclusion, overlay, otherEnds, notes } = identification;
  const { contradictions, nearest } = conclusion;
  return {
    photo,
    outcome,
    reference,
    along,
    ...endJson(measurement, conclusion),
    ends: [
      { measurement, conclusion, axis: overlay.axis },
      ...otherEnds.map((one) => ({ ...one, conclusion: conclude(one.measurement, []) })),
    ].map((one) => ({
      ...endJson(one.measurement, one.conclusion),
      where: one.axis && middleOf(one.axis),
    })),
    /** Which way the thread winds, readings included; `thread.hand` is the photo's alone. */
    hand: conclusion.hand,
    nearest,
    contradictions,
    ...(expected && { wear: wearJson(expected, identification) }),
    budget: measurement.budget.map((row) => budgetJson(measurement, row)),
    notes,
    timingsMs,
  };
}

function endJson(measurement: ThreadMeasurement, conclusion: Conclusion) {
  const { pitchMm, correlation, taper, flankAngleDeg } = measurement;
  const { turns, hand, starts, hexAcrossFlatsMm = null, threadShows = null } = measurement;
  const resolved = resolvedDiameter(measurement);
  const { threads, connections, decision, end } = conclusion;
  return {
    thread: {
      pitchMm,
      ...diameters(measurement, resolved),
      correlation: resolved && correlation,
      taper,
      flankAngleDeg,
      turns,
      hand,
      starts,
      /** How likely each profile, and a taper, is by what the thread looks like, were all as common. */
      seen: threadShows,
    },
    end: {
      kind: end,
      gender: measurement.end ?? 'male',
      noseHalfAngleDeg: coneAngle(measurement),
      hexAcrossFlatsMm,
      seen: seatsSeen(measurement),
    },
    threads,
    connections,
    decision,
  };
}

const budgetJson = (measurement: ThreadMeasurement, row: BudgetRow) => ({
  source: row.source,
  pitchMm: row.pitchMm,
  ...diameters(measurement, row.majorDiameterMm),
});

/** What is held as the diameter over the crests, by its name at this end. */
const diameters = <T>({ end }: ThreadMeasurement, overCrests: T) =>
  end === 'female'
    ? { majorDiameterMm: null, minorDiameterMm: overCrests }
    : { majorDiameterMm: overCrests };

const middleOf = ([a, b]: readonly [PhotoPoint, PhotoPoint]) => [
  Math.round(50 * (a[0] + b[0])) / 100,
  Math.round(50 * (a[1] + b[1])) / 100,
];
