import { parseReading } from '../../../src/journey/6-candidates/parse-reading';
import type { Reading } from '../../../src/journey/6-candidates/reading';
import { conclude } from '../../../src/journey/7-next-reading/conclude';
import type { Conclusion } from '../../../src/journey/7-next-reading/decision';
import { allTools } from '../../../src/journey/7-next-reading/tools';
import type { Random } from '../../../src/quantity/random';
import { type Taken, takeReading } from './bench';
import type { Part } from './part';
import type { SimulatedPhoto } from './photo';

export interface CaseRun {
  readonly part: Part;
  readonly first: Conclusion;
  readonly last: Conclusion;
  readonly readings: readonly Reading[];
  /** Some reading had nothing to do with the part, or the photo was off by far more than it says. */
  readonly misled: boolean;
}

export const mostReadings = 5;
/** A bench that lacks no tool. */
const everything = { atHand: allTools };

/** Concludes, takes the asked reading, and again, until settled or nothing more is asked. */
export function runCase(
  part: Part,
  photo: SimulatedPhoto | null,
  random: Random,
  given: readonly Taken[] = [],
): CaseRun {
  const readings = given.map(({ text }) => read(text));
  let misled = photo?.slipped || given.some(({ wrong }) => wrong);
  const first = conclude(photo, readings, everything);
  let last = first;
  while (last.decision.ask && readings.length - given.length < mostReadings) {
    const { reading: kind } = last.decision.ask;
    const taken = takeReading(kind, part, random);
    if (taken === null) break;
    misled ||= taken.wrong;
    readings.push(read(taken.text));
    last = conclude(photo, readings, everything);
  }
  return { part, first, last, readings: readings.slice(given.length), misled };
}

function read(text: string): Reading {
  const parsed = parseReading(text);
  if (!parsed.ok) throw new Error(`The simulated bench wrote '${text}'`);
  return parsed.value;
}

export type Verdict = 'right' | 'wrong' | 'open';

export function threadVerdict({ decision }: Conclusion, part: Part): Verdict {
  if (decision.thread === null) return 'open';
  return decision.thread === part.designation ? 'right' : 'wrong';
}

export function connectionVerdict({ decision }: Conclusion, part: Part): Verdict {
  const found = decision.connection;
  if (found === null) return 'open';
  const truth = part.connection;
  return found.family === truth?.family && found.size === truth.size ? 'right' : 'wrong';
}
