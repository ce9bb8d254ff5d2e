import { parseReading } from '../../src/journey/6-candidates/parse-reading';
import type { Reading } from '../../src/journey/6-candidates/reading';
import type { AskableKind } from '../../src/journey/6-candidates/reading-choices';
import { conclude } from '../../src/journey/7-next-reading/conclude';
import type { Conclusion } from '../../src/journey/7-next-reading/decision';
import type { Tool } from '../../src/journey/7-next-reading/tools';
import type { Connection } from '../../src/standards/connections/connection';
import { connections } from '../../src/standards/connections/connections';
import { findThread } from '../../src/standards/threads';

/** What most counters have on the bench. */
export const usualTools: readonly Tool[] = ['caliper', 'rule', 'pitch-gauge'];

export interface Walk {
  readonly row: Connection;
  readonly readings: readonly string[];
  readonly last: Conclusion;
  /** `told`: open between look-alikes of which it is one, and the missing tool is named. */
  readonly verdict: 'right' | 'told' | 'wrong' | 'dead-end';
}

/** A part made to the middle of its limits, on the bench of someone who makes no mistake: starts
 *  with the diameter, then answers what is asked. */
export function walk(row: Connection, atHand: readonly Tool[] = usualTools): Walk {
  const readings: string[] = [first(row)];
  // Nothing but its mark tells a dryseal thread.
  if (row.family === 'SAE J476') readings.push('marking=nptf');
  let last = conclusionOf(readings, atHand);
  while (last.decision.ask && readings.length < 9) {
    readings.push(answer(last.decision.ask.reading, row));
    last = conclusionOf(readings, atHand);
  }
  return { row, readings, last, verdict: verdictOf(row, last) };
}

const concluded = new Map<string, Conclusion>();

/** Rows with one thread begin alike: what the same readings conclude is concluded once. */
function conclusionOf(readings: readonly string[], atHand: readonly Tool[]): Conclusion {
  const key = [...readings, ...atHand].join('|');
  const known = concluded.get(key);
  if (known) return known;
  const conclusion = conclude(null, readings.map(parsed), { atHand });
  concluded.set(key, conclusion);
  return conclusion;
}

export const walkAll = (atHand?: readonly Tool[]) => connections.map((row) => walk(row, atHand));

function parsed(text: string): Reading {
  const reading = parseReading(text);
  if (!reading.ok) throw new Error(text);
  return reading.value;
}

function diameterOf(row: Connection): number {
  if (row.flangeHead) return row.flangeHead.diameterMm;
  const thread = findThread(row.thread!)!;
  const { minMm, maxMm } = row.end === 'male' ? thread.crests : thread.bore;
  return (minMm + maxMm) / 2;
}

function first(row: Connection): string {
  return `${row.end === 'male' ? 'caliper-od' : 'caliper-id'}=${diameterOf(row).toFixed(2)}mm`;
}

function answer(kind: AskableKind, row: Connection): string {
  const thread = row.thread === null ? null : findThread(row.thread)!;
  const cannot = `cannot-tell=${kind}`;
  switch (kind) {
    case 'pitch-gauge':
      if (!thread) return cannot;
      return thread.tpi ? `pitch-gauge=${thread.tpi}tpi` : `pitch-gauge=${thread.pitchMm}mm`;
    case 'turns-over':
      return thread ? `turns-over=8 in ${(8 * thread.pitchMm).toFixed(1)}mm` : cannot;
    case 'caliper-od':
      return row.end === 'male' ? `caliper-od=${diameterOf(row).toFixed(1)}mm` : cannot;
    case 'caliper-id':
      return row.end === 'female' ? `caliper-id=${diameterOf(row).toFixed(1)}mm` : cannot;
    case 'rule-od':
      return row.end === 'male' ? `rule-od=${diameterOf(row).toFixed(0)}mm` : cannot;
    case 'seat':
      return `seat=${row.seat}`;
    case 'seat-gauge':
      return `seat-gauge=${/^cone-\d/.test(row.seat) ? row.seat.slice(5) : 'none'}`;
    case 'cone-size': {
      if (row.end === 'female' || row.seatHalfAngleDeg === null || !thread) return cannot;
      // From below the thread's roots to the tube's bore, as flared ends are made.
      const wide = thread.crests.minMm - 1.3 * thread.pitchMm;
      const narrow = 0.6 * wide;
      const over = (wide - narrow) / 2 / Math.tan((row.seatHalfAngleDeg * Math.PI) / 180);
      return `cone-size=${wide.toFixed(1)}-${narrow.toFixed(1)} over ${over.toFixed(1)}mm`;
    }
    case 'end-type':
      return `end-type=${row.endTypes[0]}`;
    case 'taper':
      return thread ? `taper=${thread.taper ? 'tapered' : 'straight'}` : cannot;
    case 'flank':
      return thread ? `flank=${thread.flankAngleDeg}` : cannot;
    case 'crest-form':
      return thread ? `crest-form=${thread.flankAngleDeg === 55 ? 'rounded' : 'flat'}` : cannot;
    case 'tube-od': {
      const tube = row.metricTubesMm[0] ?? row.tubeOdMm;
      return tube ? `tube-od=${tube.toFixed(2)}mm` : 'tube-od=none';
    }
    case 'nose-od':
      return row.seat === 'cone-24' && row.coneOutwards && row.tubeOdMm
        ? `nose-od=${(row.tubeOdMm - 0.3).toFixed(1)}mm`
        : cannot;
    case 'flange-thickness':
      return row.flangeHead ? `${kind}=${row.flangeHead.thicknessMm.toFixed(1)}mm` : cannot;
    case 'bolt-spacing':
      return row.flangeHead ? `${kind}=${row.flangeHead.boltsMm[0].toFixed(1)}mm` : cannot;
    case 'marking':
      return row.family === 'SAE J476' ? 'marking=nptf' : 'marking=none';
    case 'hand':
      return 'hand=right';
    case 'hex':
      return cannot;
  }
}

function verdictOf(row: Connection, last: Conclusion): Walk['verdict'] {
  const { connection, missing } = last.decision;
  const is = (c: { family: string; size: string } | undefined | null) =>
    c?.family === row.family && c.size === row.size;
  if (connection) {
    const ends = connection.end === row.end || connection.end === null;
    const forms = connection.form === row.form || connection.form === null;
    return is(connection) && ends && forms ? 'right' : 'wrong';
  }
  const named = row.family === 'SAE J476' ? 'ASME B1.20.1' : row.family;
  const among = last.connections.find((c) => c.family === named && c.size === row.size);
  return missing && (among?.probability ?? 0) > 0.05 ? 'told' : 'dead-end';
}
