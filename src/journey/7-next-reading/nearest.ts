import { connections } from '../../standards/connections/connections';
import { runOutMm, type Thread } from '../../standards/thread';
import { threads } from '../../standards/threads';
import type { Evidence } from '../6-candidates/weigh';
import type { Nearest } from './decision';

/** A blade that fits is off by less than this share of the pitch. */
const samePitch = 0.015;
/** Instrument, handling and a burr may take a crest this far out of its limits towards more metal;
 *  wear takes it farther towards less, mm. */
const slackMm = 0.12;
const wearMm = 0.35;

/** Of the threads that connections use, the one of the measured pitch whose diameter comes closest,
 *  where no listed thread has it. */
export function nearestThread({ photo, readings }: Evidence): Nearest | null {
  const measured = measuredThread(readings, photo);
  if (!measured) return null;
  const { pitchMm, pitchU, mm, uMm, end } = measured;
  const isStraight = readings.some((r) => r.kind === 'taper' && r.taper === 'straight');
  let found: Nearest | null = null;
  for (const t of threads) {
    // The metric taper is one of male ends only.
    if (!t.separable || (t.series === 'taper' && end === 'female')) continue;
    if (Math.abs(t.pitchMm - pitchMm) > Math.max(samePitch * pitchMm, 2 * pitchU)) continue;
    if (t.taper > 0) {
      if (!isStraight && isOnTaper(t, mm, end, uMm)) return null;
      continue;
    }
    const { minMm, maxMm } = end === 'male' ? t.crests : t.bore;
    const offMm = mm > maxMm ? mm - maxMm : Math.min(0, mm - minMm);
    const isCarried = carried().has(t.designation);
    // A thread that no connection uses is not stretched to.
    const worn = isCarried && (end === 'male' ? offMm < 0 : offMm > 0);
    if (Math.abs(offMm) <= (worn ? wearMm : slackMm) + 3 * uMm) return null;
    const isNearer = !found || Math.abs(offMm) < Math.abs(found.offMm);
    if (isCarried && isNearer) found = { thread: t.designation, end, offMm };
  }
  return found;
}

/** Where along a taper the jaws sat is not known: anywhere up to its run-out. */
function isOnTaper(t: Thread, mm: number, end: 'male' | 'female', uMm: number): boolean {
  const { gaugeLengthMm, usefulLengthMm } = t.taperPlanes!;
  const run = usefulLengthMm + runOutMm(t);
  const [low, high] =
    end === 'male'
      ? [t.crests.minMm - t.taper * gaugeLengthMm, t.crests.maxMm + t.taper * (run - gaugeLengthMm)]
      : [t.bore.minMm - t.taper * run, t.bore.maxMm];
  const [below, above] = end === 'male' ? [wearMm, 0] : [0, wearMm];
  return mm > low - below - 3 * uMm && mm < high + above + 3 * uMm;
}

let cache: ReadonlySet<string | null> | undefined;

function carried(): ReadonlySet<string | null> {
  cache ??= new Set(connections.map((c) => c.thread));
  return cache;
}

function measuredThread(readings: Evidence['readings'], photo: Evidence['photo']) {
  let pitchMm = photo?.pitchMm.value ?? null;
  let pitchU = photo?.pitchMm.u ?? 0;
  let diameter: { mm: number; uMm: number; end: 'male' | 'female' } | null = photo
    ? {
        mm: photo.majorDiameterMm.value,
        uMm: photo.majorDiameterMm.u,
        end: photo.end ?? 'male',
      }
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
