import type { Identification } from '../journey/identification';
import { resolvedMajor } from '../journey/wear/resolved-major';
import type { Expected } from './expected-thread';
import { wearJson } from './wear-json';

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
  const { threads, connections, decision, contradictions, end, nearest } = conclusion;
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
    /** Which way the thread winds, readings included; `thread.hand` is the photo's alone. */
    hand: conclusion.hand,
    nearest,
    contradictions,
    ...(expected && { wear: wearJson(expected, identification) }),
    budget,
    notes,
    timingsMs,
  };
}
