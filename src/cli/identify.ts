import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { z } from 'zod';
import type { ThreadMeasurement } from '../journey/5-measurement/thread-measurement';
import { regions, trades } from '../journey/6-candidates/priors';
import { type ConcludeOptions, conclude } from '../journey/7-next-reading/conclude';
import { allTools } from '../journey/7-next-reading/tools';
import { type Command, pathFrom, readingsFrom, runIfStarted, UsageError } from './arguments';
import { conclusionText } from './identification-text';

const usage =
  'npm run --silent identify -- [--json] (--batch CASES.jsonl | --reading KIND=VALUE …)\n       [--at-hand TOOL,TOOL…] [--region REGION] [--trade TRADE]';

async function run(args: string[], print: (text: string) => void): Promise<number> {
  const { values } = parseArgs({
    args,
    options: {
      json: { type: 'boolean', default: false },
      batch: { type: 'string' },
      reading: { type: 'string', multiple: true },
      'at-hand': { type: 'string' },
      region: { type: 'string' },
      trade: { type: 'string' },
    },
  });
  const extra = readingsFrom(values.reading ?? []);
  if (values.batch === undefined && extra.length === 0) {
    throw new UsageError('Give cases with --batch, or readings with --reading.');
  }
  const options = concludeOptions(values);
  const cases =
    values.batch === undefined ? [{ measurement: null, readings: [] }] : readCases(values.batch);
  for (const { measurement, readings } of cases) {
    const conclusion = conclude(measurement, [...readings, ...extra], options);
    print(values.json ? JSON.stringify(conclusion) : conclusionText(conclusion));
  }
  return 0;
}

/** What lies on the bench and what the part is off, as one of the known words each. */
function concludeOptions(values: {
  readonly 'at-hand'?: string | undefined;
  readonly region?: string | undefined;
  readonly trade?: string | undefined;
}): ConcludeOptions {
  const one = <T extends string>(known: readonly T[], word: string, option: string): T => {
    const found = known.find((name) => name === word.trim());
    if (found) return found;
    throw new UsageError(`Give --${option} as one of ${known.join(', ')}.`);
  };
  const { region, trade } = values;
  const tools = values['at-hand'];
  return {
    ...(tools !== undefined && {
      atHand: tools
        .split(',')
        .filter((name) => name.trim() !== '')
        .map((name) => one(allTools, name, 'at-hand')),
    }),
    ...(region !== undefined && { region: one(regions, region, 'region') }),
    ...(trade !== undefined && { trade: one(trades, trade, 'trade') }),
  };
}

function readCases(path: string) {
  return linesOf(path).map(({ line, number }) => {
    const parsed = caseSchema.safeParse(parseJson(line, number));
    if (!parsed.success) {
      throw new UsageError(`Line ${number} of ${path}: ${z.prettifyError(parsed.error)}`);
    }
    const { readings, ...measured } = parsed.data;
    return { measurement: measurementOf(measured), readings: readingsFrom(readings) };
  });
}

function linesOf(path: string): { line: string; number: number }[] {
  let text: string;
  try {
    text = readFileSync(pathFrom(path), 'utf8');
  } catch {
    throw new UsageError(`${path} cannot be read.`);
  }
  return text
    .split('\n')
    .map((line, i) => ({ line: line.trim(), number: i + 1 }))
    .filter(({ line }) => line !== '');
}

function parseJson(line: string, number: number): unknown {
  try {
    return JSON.parse(line);
  } catch {
    throw new UsageError(`Line ${number} is not JSON.`);
  }
}

/** Turns that a stud's thread shows at least, where a case does not say. */
const usualTurns = 6;

function measurementOf(measured: MeasuredCase): ThreadMeasurement | null {
  const { pitchMm, majorDiameterMm } = measured;
  if (pitchMm === null || majorDiameterMm === null) return null;
  return { ...measured, pitchMm, majorDiameterMm, hand: null, starts: null, budget: [] };
}

const estimate = z.object({ value: z.number(), u: z.number().positive() });
const absent = estimate.nullable().default(null);

/** Numbers of a measurement made elsewhere; whatever is not known may be left out. */
const caseSchema = z.object({
  pitchMm: absent,
  majorDiameterMm: absent,
  correlation: z.number().min(-1).max(1).default(0),
  taper: absent,
  flankAngleDeg: absent,
  noseHalfAngleDeg: absent,
  turns: z.number().positive().default(usualTurns),
  middleFromEndMm: z.number().nullable().default(null),
  readings: z.array(z.string()).default([]),
});
type MeasuredCase = Omit<z.infer<typeof caseSchema>, 'readings'>;

export const identify: Command = { usage, run };
// Last, when all constants above have their values.
await runIfStarted(import.meta.url, identify);
