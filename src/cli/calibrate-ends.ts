import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { type Trust, trusted } from '../journey/5-end/end-look';
import {
  baseKinds,
  noseKinds,
  type Part,
  profileKinds,
  taperKinds,
} from '../journey/5-end/end-network';
import type { EndScore } from './accuracy/end-score';
import type { Score } from './accuracy/score';
import { pathFrom, runIfStarted, UsageError } from './arguments';
import { rounded } from './calibrate/rounded';

const usage = `npm run calibrate-ends -- SCORES.json… --set "SEED, DATE"
Sets how far the looks at an end and its thread are trusted, from what "npm run accuracy -- FOLDER --json SCORES.json" found on photos
with truth that no judging set holds; says what that is worth on held-out folds.`;

const file = fileURLToPath(new URL('../journey/5-end/allowances.json', import.meta.url));
/** Fewer ends would not tell one mistake in thirty. */
const fewest = 60;

/** Of 21 ends without a ring that another renderer drew, with threads that run up to the hex, three looked as if they had
 *  one to the network before that of today, which sees none on any of them, or on 322 plain ends of our own: but no set of
 *  few renderers shows how often what they never drew looks ringed, so by judgement at least this share. Then a ring that
 *  is seen settles nothing by itself. */
const leastMistaken = { nose: 0, base: 0.03, profile: 0, taper: 0 } as const;

const kindsOf = { nose: noseKinds, base: baseKinds, profile: profileKinds, taper: taperKinds };
const parts = Object.keys(kindsOf) as Part[];

/** What a network said, and which kind was right. */
interface Look {
  readonly logits: readonly number[];
  readonly kind: number;
}

async function run(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: { set: { type: 'string' } },
  });
  if (!values.set) throw new UsageError('Say which set it is: --set "seed, date".');
  const files = await Promise.all(positionals.map((path) => readFile(pathFrom(path), 'utf8')));
  const ends = files
    .flatMap((text) => JSON.parse(text) as Score[])
    .flatMap((score) => score.ends)
    .filter((end) => end.said !== null);
  if (ends.length < fewest) throw new UsageError(`${ends.length} ends are too few.`);
  const looks = parts.map((part) => ({
    part,
    seen: ends.flatMap((end) => lookAt(end, part) ?? []),
  }));
  const from = `npm run calibrate-ends: ${ends.length} ends of rendered photos, seed and date ${values.set}`;
  const set = {
    from,
    ...Object.fromEntries(looks.map(({ part, seen }) => [part, trustOf(seen, part)])),
  };
  await writeFile(file, `${JSON.stringify(set, null, 2)}\n`);
  console.log(JSON.stringify(set, null, 2));
  for (const { part, seen } of looks) console.log(`${part}: ${worthOf(seen, part)}`);
  return 0;
}

/** Null where no network looked. */
function lookAt({ said, coneDeg, base, profile, taper }: EndScore, part: Part): Look | null {
  const nose = coneDeg === null ? 'none' : `cone-${coneDeg}`;
  const right: string = { nose, base, profile, taper }[part];
  const logits = said?.[part];
  return logits ? { logits, kind: (kindsOf[part] as readonly string[]).indexOf(right) } : null;
}

/** Mean of −ln of what the right kind was given, every kind weighing the same. */
function cost(looks: readonly Look[], trust: Trust): number {
  const count = new Map<number, number>();
  for (const { kind } of looks) count.set(kind, (count.get(kind) ?? 0) + 1);
  const sum = looks.reduce(
    (total, { logits, kind }) => total - Math.log(trusted(logits, trust)[kind]!) / count.get(kind)!,
    0,
  );
  return sum / count.size;
}

function trustOf(looks: readonly Look[], part: Part): Trust {
  let best: Trust = { temperature: 1, mistaken: 0.03 };
  let least = cost(looks, best);
  for (let temperature = 0.5; temperature <= 6; temperature *= 1.05)
    for (let mistaken = 0.002; mistaken <= 0.3; mistaken *= 1.1) {
      const trust = { temperature, mistaken };
      const value = cost(looks, trust);
      if (value < least) [best, least] = [trust, value];
    }
  // What so many looks without a mistake do not rule out (rule of three, 95 %).
  const unproven = 3 / looks.length;
  return {
    temperature: rounded(best.temperature),
    mistaken: rounded(Math.max(best.mistaken, unproven, leastMistaken[part])),
  };
}

/** Cost and right answers on five folds, each by what the others set; ln of the number of kinds is what knowing nothing
 *  would cost. */
function worthOf(looks: readonly Look[], part: Part): string {
  const folds = 5;
  const held = Array.from({ length: folds }, (_, fold) => {
    const own = looks.filter((_, i) => i % folds === fold);
    return cost(
      own,
      trustOf(
        looks.filter((_, i) => i % folds !== fold),
        part,
      ),
    );
  });
  const right = looks.filter(
    ({ logits, kind }) => logits.indexOf(Math.max(...logits)) === kind,
  ).length;
  const mean = held.reduce((a, b) => a + b, 0) / folds;
  return `held out ${mean.toFixed(3)} nats (knowing nothing: ${Math.log(looks[0]!.logits.length).toFixed(3)}), likeliest kind right on ${right} of ${looks.length}`;
}

await runIfStarted(import.meta.url, { usage, run });
