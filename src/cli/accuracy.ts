import { fork } from 'node:child_process';
import { readFile, writeFile } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { casesInFolder, type LazyCase, saveCases, syntheticCases } from './accuracy/cases';
import { endTable } from './accuracy/end-tables';
import { measureCases } from './accuracy/measure-cases';
import type { Score } from './accuracy/score';
import { strataNames } from './accuracy/summary';
import {
  budgetTable,
  comparisonTable,
  photoTable,
  strataTable,
  summaryTable,
} from './accuracy/tables';
import { wearText } from './accuracy/wear-score';
import { pathFrom, runIfStarted, UsageError } from './arguments';
import { measureOptions } from './measure-options';

const usage = `npm run accuracy -- [FOLDER] | --synthetic COUNT [--seed S] [--save FOLDER]
  [--workers N] [--bars MM150,MM100] [--along] [--budget] [--wear] [--by STRATUM] [--json OUT.json] [--compare OLD.json] [--only NAME,NAME]
       npm run accuracy -- --matching [--cases N] [--seed S]
FOLDER holds photos with NAME.truth.json beside them; fixtures/photos when none is named.
--save writes the synthetic photos with their truth and measures nothing.
--along shows each photo's axis as by hand: the true one, its ends put off by up to 1 mm.
--wear prints what is said of the crests when the thread is named, against the truth.
--by prints one stratum: tilt, cameraHeight, pxPerPitch, field, finish, light, noise, exif, form or print.
--matching tries the matching core on simulated fittings, without photos.`;

async function run(args: string[]): Promise<number> {
  if (args.includes('--matching')) {
    const { runMatchingAccuracy } = await import('../../tests/accuracy/matching/report');
    return runMatchingAccuracy(args);
  }
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      synthetic: { type: 'string' },
      seed: { type: 'string', default: '1' },
      save: { type: 'string' },
      workers: { type: 'string', default: '1' },
      bars: { type: 'string' },
      along: { type: 'boolean', default: false },
      budget: { type: 'boolean', default: false },
      by: { type: 'string' },
      wear: { type: 'boolean', default: false },
      json: { type: 'string' },
      compare: { type: 'string' },
      only: { type: 'string' },
      // How a worker is told its share: K/N.
      share: { type: 'string' },
    },
  });
  if (positionals.length > 1 || (positionals.length > 0 && values.synthetic !== undefined))
    throw new UsageError('Name one folder, or --synthetic.');
  const measuredAs = { bars: measureOptions({ bars: values.bars }).bars, along: values.along };
  const cases =
    values.synthetic === undefined
      ? await casesInFolder(positionals[0] ? pathFrom(positionals[0]) : 'fixtures/photos')
      : syntheticCases(whole(values.seed), whole(values.synthetic));
  const only = values.only?.split(',');
  const wanted = cases.filter(({ name }) => !only || only.includes(name));
  if (wanted.length === 0) throw new UsageError('No such photo with truth there.');
  if (values.save !== undefined) {
    await saveCases(wanted, pathFrom(values.save));
    return 0;
  }
  if (values.share !== undefined) {
    await measureCases(shareOf(wanted, values.share), measuredAs, (score) => process.send?.(score));
    process.disconnect?.();
    return 0;
  }
  const scores: Score[] = [];
  const note = (score: Score) => {
    scores.push(score);
    process.stderr.write(`\r${scores.length}/${wanted.length} `);
  };
  const workers = Math.min(whole(values.workers), wanted.length);
  if (workers > 1) await inWorkers(workers, note);
  else await measureCases(wanted, measuredAs, note);
  process.stderr.write('\n');
  scores.sort((a, b) => (a.name < b.name ? -1 : 1));

  const earlier = values.compare && (await readScores(pathFrom(values.compare)));
  if (values.by !== undefined && !strataNames(scores).includes(values.by))
    throw new UsageError(`No such stratum: ${strataNames(scores).join(', ')}.`);
  const tables = [
    photoTable(scores),
    summaryTable(scores),
    endTable(scores.flatMap(({ ends }) => ends)),
    (values.by !== undefined || scores.length >= 40) && strataTable(scores, values.by ?? null),
    values.budget && budgetTable(scores),
    values.wear && wearText(scores.flatMap(({ wear }) => wear ?? [])),
    earlier && comparisonTable(earlier, scores),
  ];
  console.log(tables.filter(Boolean).join('\n\n'));
  if (values.json) await writeFile(pathFrom(values.json), JSON.stringify(scores, null, 1));
  return 0;
}

/** The same command in N processes, each with every N-th case. */
async function inWorkers(count: number, onScore: (score: Score) => void): Promise<void> {
  const own = process.argv.slice(2);
  await Promise.all(
    Array.from({ length: count }, (_, k) => {
      const child = fork(process.argv[1]!, [...own, '--share', `${k}/${count}`]);
      child.on('message', (score) => onScore(score as Score));
      return new Promise<void>((resolve, reject) => {
        child.on('error', reject);
        child.on('exit', (code) =>
          code === 0 ? resolve() : reject(new Error(`worker ${k} ended with ${code}`)),
        );
      });
    }),
  );
}

function shareOf(cases: readonly LazyCase[], share: string): LazyCase[] {
  const [k, n] = share.split('/').map(Number);
  return cases.filter((_, i) => i % n! === k);
}

async function readScores(path: string): Promise<Score[]> {
  return JSON.parse(await readFile(path, 'utf8')) as Score[];
}

function whole(text: string): number {
  const value = Number(text);
  if (!Number.isInteger(value) || value < 1) throw new UsageError(`${text} is no whole number.`);
  return value;
}

await runIfStarted(import.meta.url, { usage, run });
