import type { Identification } from '../journey/identification';

/** Relative standard uncertainty, beyond the scale it shares with the pitch, from which a diameter
 *  counts as not resolved. */
const unresolvedMajor = 0.03;

/** One photo's line of `measure --json`. Outside tests rely on these names: add, never rename. */
export function identificationJson(photo: string, identification: Identification): object {
  const { outcome, timingsMs } = identification;
  if (outcome === 'refused') return { photo, outcome, refusal: identification.refusal, timingsMs };
  const { reference, measurement, conclusion, notes } = identification;
  const { pitchMm, majorDiameterMm, correlation, taper, flankAngleDeg } = measurement;
  // With an outline that has faded, the matching core still weighs what little is known of the
  // diameter; as a number of its own it would be a guess.
  const own = majorDiameterMm.u * Math.sqrt(1 - correlation ** 2);
  const resolved = own < unresolvedMajor * majorDiameterMm.value;
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
    budget,
    notes,
    timingsMs,
  };
}
