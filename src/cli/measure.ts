import { readFile } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import type { Identification, MeasureOptions } from '../journey/identification';
import { identifyPhoto } from '../journey/identify';
import { resolvedMajor } from '../journey/wear/resolved-major';
import { type Command, pathFrom, runIfStarted, UsageError } from './arguments';
import { type Expected, expectedThread } from './expected-thread';
import { identificationJson } from './identification-json';
import { identificationText } from './identification-text';
import { measureOptions } from './measure-options';
import { nodeDecoders } from './node-decoders';
import { loadNodeVision } from './node-vision';
import { wearText } from './wear-text';

const usage =
  'npm run --silent measure -- [--json] [--reading KIND=VALUE]… [--reference auto|card|id1|a4|letter|rule] [--ruler x1,y1,x2,y2,MM] [--bars MM150,MM100] [--along x1,y1,x2,y2] [--gender auto|male|female] [--expect THREAD [--class CLASS]] PHOTO…';

async function run(args: string[], print: (text: string) => void): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      json: { type: 'boolean', default: false },
      reading: { type: 'string', multiple: true },
      reference: { type: 'string' },
      ruler: { type: 'string' },
      bars: { type: 'string' },
      along: { type: 'string' },
      gender: { type: 'string' },
      expect: { type: 'string' },
      class: { type: 'string' },
    },
  });
  if (positionals.length === 0) throw new UsageError('Name at least one photo.');
  const options = measureOptions(values);
  const expected = expectedThread(values);
  let faults = 0;
  for (const photo of positionals) {
    const answer = await identifyFile(photo, options);
    if (answer === null) faults++;
    print((values.json ? asJson : asText)(photo, answer, options, expected));
  }
  return faults > 0 ? 1 : 0;
}

/** Null when the program itself failed on this photo; what it said is on stderr then. */
async function identifyFile(
  photo: string,
  options: MeasureOptions,
): Promise<Identification | null> {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await readFile(pathFrom(photo)));
  } catch {
    return refusal('unreadable', 'There is no file of this name that can be read: check the path.');
  }
  try {
    const tools = { vision: await vision(), decoders: nodeDecoders };
    return await identifyPhoto(new AbortController().signal, bytes, options, tools, () => {});
  } catch (error) {
    console.error(`${photo}:`, error);
    loadedVision = undefined;
    return null;
  }
}

const fault = {
  reason: 'internal-error',
  advice: 'Crestwise itself failed on this photo: try another, and report this one.',
};

function asJson(
  photo: string,
  answer: Identification | null,
  { corrections }: MeasureOptions,
  expected: Expected | null,
): string {
  return JSON.stringify(
    answer
      ? identificationJson(photo, answer, { expected, along: corrections?.axis ?? null })
      : { photo, outcome: 'refused', refusal: fault },
  );
}

function asText(
  photo: string,
  answer: Identification | null,
  { corrections }: MeasureOptions,
  expected: Expected | null,
): string {
  if (!answer) return `${photo}\n  not measured (${fault.reason}): ${fault.advice}\n`;
  const byHand = corrections?.axis ? '  axis            as shown by --along\n' : '';
  const wear =
    answer.outcome === 'measured' && expected
      ? wearText(expected, answer, resolvedMajor(answer.measurement))
      : '';
  return `${identificationText(photo, answer)}${byHand}${wear}`;
}

let loadedVision: ReturnType<typeof loadNodeVision> | undefined;

/** Loaded for the first photo; anew after a fault, when its heap may be in any state. */
function vision(): ReturnType<typeof loadNodeVision> {
  loadedVision ??= loadNodeVision();
  return loadedVision;
}

function refusal(reason: 'unreadable', advice: string): Identification {
  return {
    outcome: 'refused',
    refusal: { reason, advice },
    field: null,
    overlay: null,
    timingsMs: { total: 0 },
  };
}

export const measure: Command = { usage, run };
// Last, when all constants above have their values.
await runIfStarted(import.meta.url, measure);
