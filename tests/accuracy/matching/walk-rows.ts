import { parseReading } from '../../../src/journey/6-candidates/parse-reading';
import type { Reading } from '../../../src/journey/6-candidates/reading';
import { conclude } from '../../../src/journey/7-next-reading/conclude';
import type { Connection } from '../../../src/standards/connections/connection';
import { connections } from '../../../src/standards/connections/connections';
import { tubesOf } from '../../../src/standards/connections/tubes';
import { findThread } from '../../../src/standards/threads';

/** Every threaded row of the tables at a bench with caliper, rule and pitch gauge: the reading
 *  asked for is given as a made part of that row would show it (middle of its limits; cones by
 *  eye), until nothing is asked. `npx tsx tests/accuracy/matching/walk-rows.ts`. */
const tools = ['caliper', 'rule', 'pitch-gauge'] as const;
const mostQuestions = 8;

type End = 'right' | 'wrong' | 'open' | 'dead-end';

function walk(row: Connection): { end: End; asked: string[] } {
  const thread = findThread(row.thread!)!;
  const pitch = thread.tpi ? `${thread.tpi}tpi` : `${thread.pitchMm}mm`;
  const { taper, taperPlanes } = thread;
  const crests = (thread.crests.minMm + thread.crests.maxMm) / 2;
  const bore = (thread.bore.minMm + thread.bore.maxMm) / 2;
  // A taper is gauged in the middle of its useful length.
  const male = taperPlanes
    ? taperPlanes.majorAtSmallEndMm + (taper * taperPlanes.usefulLengthMm) / 2
    : crests;
  const diameter =
    row.end === 'male' ? `caliper-od=${male.toFixed(2)}mm` : `caliper-id=${bore.toFixed(2)}mm`;
  const tube = tubesOf(row)[0];
  const answers: Record<string, string> = {
    'caliper-od': diameter,
    'caliper-id': diameter,
    'rule-od': `rule-od=${male.toFixed(0)}mm`,
    'pitch-gauge': `pitch-gauge=${pitch}`,
    seat: `seat=${row.seat}${row.seat.startsWith('cone-') ? ' by-eye' : ''}`,
    taper: `taper=${taper > 0 ? 'tapered' : 'straight'}`,
    'tube-od': `tube-od=${tube === undefined ? 'none' : `${tube.toFixed(2)}mm`}`,
  };
  const readings: Reading[] = [read(diameter)];
  const asked: string[] = [];
  for (;;) {
    const { decision } = conclude(null, readings, { atHand: tools });
    const { connection, state, ask } = decision;
    if (connection) {
      const same = connection.family === row.family && connection.size === row.size;
      return { end: same ? 'right' : 'wrong', asked };
    }
    if (state !== 'needs-reading') return { end: 'wrong', asked };
    if (!ask) return { end: 'dead-end', asked };
    if (asked.length >= mostQuestions) return { end: 'open', asked };
    asked.push(ask.reading);
    readings.push(read(answers[ask.reading]!));
  }
}

function read(text: string): Reading {
  const reading = parseReading(text);
  if (!reading.ok) throw new Error(text);
  return reading.value;
}

const count: Record<End, number> = { right: 0, wrong: 0, open: 0, 'dead-end': 0 };
const rows = connections.filter((c) => c.thread !== null);
let questions = 0;
for (const row of rows) {
  const { end, asked } = walk(row);
  count[end]++;
  questions += asked.length;
  if (end !== 'right') {
    console.log(
      `${end.padEnd(9)}${row.family} ${row.size} ${row.end} ${row.form ?? ''}: ${asked.join(', ')}`,
    );
  }
}
console.log(
  `${rows.length} rows:`,
  count,
  `${(questions / rows.length).toFixed(2)} questions each`,
);
