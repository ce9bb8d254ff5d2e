import type { Identification } from '../journey/identification';

/** One photo's line of `measure --json`. Outside tests rely on these names: add, never rename. */
export function identificationJson(photo: string, identification: Identification): object {
  const { outcome, timingsMs } = identification;
  if (outcome === 'refused') return { photo, outcome, refusal: identification.refusal, timingsMs };
  const { reference, measurement, conclusion, notes } = identification;
  const { pitchMm, majorDiameterMm, correlation, taper, flankAngleDeg } = measurement;
  const { threads, connections, decision, contradictions, end } = conclusion;
  const { turns, hand, starts, noseHalfAngleDeg, budget } = measurement;
  return {
    photo,
    outcome,
    reference,
    thread: { pitchMm, majorDiameterMm, correlation, taper, flankAngleDeg, turns, hand, starts },
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
