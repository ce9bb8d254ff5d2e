import { threads } from '../../standards/threads';
import type { Evidence } from '../6-candidates/weigh';
import type { Nearest } from './decision';

/** A blade that fits is off by less than this share of the pitch. */
const samePitch = 0.015;
/** Instrument, handling and a burr may take a crest this far out of its limits, mm. */
const slackMm = 0.12;

/** The listed thread of the measured pitch whose diameter comes closest, where none has it. */
export function nearestThread({ photo, readings }: Evidence): Nearest | null {
  const measured = measuredThread(readings, photo);
  if (!measured) return null;
  const { pitchMm, pitchU, mm, end } = measured;
  let found: Nearest | null = null;
  for (const t of threads) {
    if (!t.separable || t.taper > 0) continue;
    if (Math.abs(t.pitchMm - pitchMm) > Math.max(samePitch * pitchMm, 2 * pitchU)) continue;
    const { minMm, maxMm } = end === 'male' ? t.crests : t.bore;
    const offMm = mm > maxMm ? mm - maxMm : Math.min(0, mm - minMm);
    if (found && Math.abs(offMm) >= Math.abs(found.offMm)) continue;
    found = { thread: t.designation, end, offMm };
  }
  return found && Math.abs(found.offMm) > slackMm ? found : null;
}

function measuredThread(readings: Evidence['readings'], photo: Evidence['photo']) {
  let pitchMm = photo?.pitchMm.value ?? null;
  let pitchU = photo?.pitchMm.u ?? 0;
  let diameter: { mm: number; end: 'male' | 'female' } | null = photo
    ? { mm: photo.majorDiameterMm.value, end: 'male' }
    : null;
  for (const reading of readings) {
    if (reading.kind === 'pitch-gauge') [pitchMm, pitchU] = [reading.pitchMm, 0];
    if (reading.kind === 'turns-over' && pitchMm === null) {
      [pitchMm, pitchU] = [reading.overMm / reading.turns, 0.3 / reading.turns];
    }
    if (reading.kind === 'caliper-od') diameter = { mm: reading.mm, end: 'male' };
    if (reading.kind === 'caliper-id') diameter = { mm: reading.mm, end: 'female' };
  }
  return pitchMm !== null && diameter ? { pitchMm, pitchU, ...diameter } : null;
}
