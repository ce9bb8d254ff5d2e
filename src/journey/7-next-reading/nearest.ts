import { connections } from '../../standards/connections/connections';
import type { Thread } from '../../standards/thread';
import { findThread } from '../../standards/threads';
import type { Evidence } from '../6-candidates/weigh';
import type { Nearest } from './decision';

/** A blade that fits is off by less than this share of the pitch. */
const samePitch = 0.015;
/** Instrument, handling and a burr may take a crest this far out of its limits towards more metal;
 *  wear takes it farther towards less, mm. */
const slackMm = 0.12;
const wearMm = 0.35;

/** Of the threads that connections use, the one of the measured pitch whose diameter comes closest,
 *  where none has it. */
export function nearestThread({ photo, readings }: Evidence): Nearest | null {
  const measured = measuredThread(readings, photo);
  if (!measured) return null;
  const { pitchMm, pitchU, mm, uMm, end } = measured;
  let found: Nearest | null = null;
  for (const t of carried()) {
    if (Math.abs(t.pitchMm - pitchMm) > Math.max(samePitch * pitchMm, 2 * pitchU)) continue;
    // Where along a taper the jaws sat is not known.
    if (t.taper > 0) {
      if (Math.abs(mm - t.basicMajorMm) < 2 * t.pitchMm) return null;
      continue;
    }
    const { minMm, maxMm } = end === 'male' ? t.crests : t.bore;
    const offMm = mm > maxMm ? mm - maxMm : Math.min(0, mm - minMm);
    const worn = end === 'male' ? offMm < 0 : offMm > 0;
    if (Math.abs(offMm) <= (worn ? wearMm : slackMm) + 3 * uMm) return null;
    if (!found || Math.abs(offMm) < Math.abs(found.offMm)) {
      found = { thread: t.designation, end, offMm };
    }
  }
  return found;
}

let cache: readonly Thread[] | undefined;

function carried(): readonly Thread[] {
  cache ??= [...new Set(connections.map((c) => c.thread))].flatMap((name) => {
    const thread = name === null ? null : findThread(name);
    return thread?.separable ? [thread] : [];
  });
  return cache;
}

function measuredThread(readings: Evidence['readings'], photo: Evidence['photo']) {
  let pitchMm = photo?.pitchMm.value ?? null;
  let pitchU = photo?.pitchMm.u ?? 0;
  let diameter: { mm: number; uMm: number; end: 'male' | 'female' } | null = photo
    ? { mm: photo.majorDiameterMm.value, uMm: photo.majorDiameterMm.u, end: 'male' }
    : null;
  for (const reading of readings) {
    if (reading.kind === 'pitch-gauge') [pitchMm, pitchU] = [reading.pitchMm, 0];
    if (reading.kind === 'turns-over' && pitchMm === null) {
      [pitchMm, pitchU] = [reading.overMm / reading.turns, 0.3 / reading.turns];
    }
    if (reading.kind === 'caliper-od') diameter = { mm: reading.mm, uMm: 0, end: 'male' };
    if (reading.kind === 'caliper-id') diameter = { mm: reading.mm, uMm: 0, end: 'female' };
  }
  return pitchMm !== null && diameter ? { pitchMm, pitchU, ...diameter } : null;
}
