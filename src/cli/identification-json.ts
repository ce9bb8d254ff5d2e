import type { Identification, Measured } from '../journey/identification';
import type { Estimate } from '../quantity/estimate';
import type { Expected } from './expected-thread';
import { wearJson } from './wear-json';

/** Relative standard uncertainty, beyond the scale it shares with the pitch, from which a diameter
 *  counts as not resolved. */
const unresolvedMajor = 0.03;

/** One photo's line of `measure --json`. Outside tests rely on these names: add, never rename. */
export function identificationJson(
  photo: string,
  identification: Identification,
  expected: Expected | null = null,
): object {
  const { outcome, timingsMs } = identification;
  if (outcome === 'refused') return { photo, outcome, refusal: identification.refusal, timingsMs };
  const { reference, measurement, conclusion, notes } = identification;
  const { pitchMm, majorDiameterMm, correlation, taper, flankAngleDeg } = measurement;
  const resolved = resolvedMajor(identification.measurement);
  const major = resolved
    ? { majorDiameterMm, correlation }
    : { majorDiameterMm: null, correlation: null };
  const { threads, connections, decision, contradictions, end } = conclusion;
  const { turns, hand, starts, noseHalfAngleDeg, budget } = measurement;
  return {
    photo,
    outcome,
    reference,
    thread: { pitchMm, ...major, taper, flankAngleDeg, turns, hand, starts },
    end: { kind: end, noseHalfAngleDeg },
    threads,
    connections,
    decision,
    contradictions,
    ...(expected && { wear: wearJson(expected, identification, resolved) }),
    budget,
    notes,
    timingsMs,
  };
}

/** With an outline that has faded, the matching core still weighs what little is known of the
 *  diameter; as a number of its own it would be a guess. */
export function resolvedMajor({
  majorDiameterMm,
  correlation,
}: Measured['measurement']): Estimate | null {
  const own = majorDiameterMm.u * Math.sqrt(1 - correlation ** 2);
  return own < unresolvedMajor * majorDiameterMm.value ? majorDiameterMm : null;
}
