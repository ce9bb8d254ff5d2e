import { fork } from 'node:child_process';
import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { casesInFolder } from './accuracy/cases';
import { pathFrom, runIfStarted, UsageError } from './arguments';
import { fitBend } from './calibrate/fit-bend';
import { fitPeriod } from './calibrate/fit-period';
import { fitSeats } from './calibrate/fit-seats';
import { fitSpread, widening } from './calibrate/fit-spread';
import { fitSurface } from './calibrate/fit-surface';
import { heldOut } from './calibrate/folds';
import { type Residual, residualOf } from './calibrate/residual';
import { rounded } from './calibrate/rounded';
import { nodeDecoders } from './node-decoders';
import { loadNodeVision } from './node-vision';

const usage = `npm run calibrate -- FOLDER --set "SEED, DATE" [--part spreads|pitch|surface|bend|odds] [--workers N] [--keep ROWS.json] [--rows ROWS.json]
Sets the allowances of the measurement from photos with truth: what the traces of a measurement are worth as
uncertainty. FOLDER must not be a set that judges. --part sets only how lengths are spread, of these only the pitch, only how far the surface's pitch is trusted,
only the bend by which lenses are told, or only the odds of seats and periods. --keep writes the residuals, --rows
fits to such a file again.`;

const file = fileURLToPath(new URL('../journey/4-limbs/allowances.json', import.meta.url));

async function run(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      set: { type: 'string' },
      part: { type: 'string' },
      workers: { type: 'string', default: '1' },
      keep: { type: 'string' },
      rows: { type: 'string' },
      share: { type: 'string' },
    },
  });
  const folder = positionals[0];
  if (values.share !== undefined && folder) {
    const [k, n] = values.share.split('/').map(Number);
    await each(
      pathFrom(folder),
      (i) => i % n === k,
      values.part === undefined || values.part === 'odds',
      (row) => process.send?.(row),
    );
    process.disconnect?.();
    return 0;
  }
  if (!values.set) throw new UsageError('Say which set it is: --set "seed, date".');
  const rows: (Residual | null)[] = values.rows
    ? (JSON.parse(await readFile(pathFrom(values.rows), 'utf8')) as Residual[])
    : [];
  if (!values.rows) {
    if (!folder) throw new UsageError('Name a folder of photos with truth.');
    await inWorkers(Number(values.workers), (row) => {
      rows.push(row);
      process.stderr.write(`\r${rows.length} `);
    });
  }
  const kept = rows.filter((row) => row !== null).sort((a, b) => (a.name < b.name ? -1 : 1));
  if (kept.length < 30) throw new UsageError(`${kept.length} photos are too few to calibrate on.`);
  if (values.keep) await writeFile(pathFrom(values.keep), JSON.stringify(kept));
  const part = values.part ?? 'all';
  if (!['all', 'spreads', 'pitch', 'surface', 'bend', 'odds'].includes(part))
    throw new UsageError('--part takes spreads, pitch, surface, bend, odds.');
  const sets = (one: string) => part === 'all' || part === one;
  const from = `npm run calibrate: ${kept.length} rendered photos, seed and date ${values.set}`;
  const before = JSON.parse(await readFile(file, 'utf8'));
  const allowances = {
    ...before,
    ...(sets('spreads') && { spreads: { from, ...spreadsOf(kept) } }),
    ...(part === 'pitch' && {
      spreads: { ...before.spreads, pitchFrom: from, pitch: pitchOf(kept) },
    }),
    ...(sets('surface') && {
      surface: { from, ...fitSurface(kept.flatMap(({ surface }) => (surface ? [surface] : []))) },
    }),
    ...(sets('bend') && {
      bend: { from, ...fitBend(kept.flatMap(({ bend }) => (bend ? [bend] : []))) },
    }),
    ...(sets('odds') && { odds: { from, ...oddsOf(kept) } }),
  };
  await writeFile(file, `${JSON.stringify(allowances, null, 2)}\n`);
  console.log(JSON.stringify(allowances, null, 2));
  if (sets('spreads') || part === 'pitch') console.log(worthOf(kept));
  return 0;
}

const lengthsOf = (kept: readonly Residual[]) =>
  kept.flatMap((row) => (row.lengths ? [row.lengths] : []));

const pitchOf = (kept: readonly Residual[]) => fitSpread(lengthsOf(kept).map((row) => row.pitch));

function spreadsOf(kept: readonly Residual[]) {
  const lengths = lengthsOf(kept);
  const heights = lengths.map(({ height: { errorMm, uMm } }) => ({ errorMm, sharedMm: 0, uMm }));
  return {
    pitch: pitchOf(kept),
    radius: fitSpread(lengths.map((row) => row.radius)),
    growth: fitSpread(lengths.map((row) => row.growth)),
    // A hex that is not one is found out by nothing here; what it does to lengths is in their spreads.
    height: rounded(widening(heights, 0.9)),
  };
}

const oddsOf = (kept: readonly Residual[]) => ({
  period: fitPeriod(kept.map((row) => row.rivals)),
  seat: fitSeats(kept.map((row) => row.seats)),
});

/** What the spreads are worth on photos that did not set them. */
function worthOf(kept: readonly Residual[]): string {
  const lengths = lengthsOf(kept);
  const lines = (['pitch', 'radius', 'growth'] as const).map((name) => {
    const { held, medianU } = heldOut(lengths.map((row) => row[name]));
    const [share, u] = [(100 * held).toFixed(0), (100 * medianU).toFixed(2)];
    return `${name}: of five folds, each judged by the others, ${share} % within 95 % intervals, median u ${u} % of the pitch`;
  });
  return lines.join('\n');
}

async function each(
  folder: string,
  mine: (index: number) => boolean,
  withSeats: boolean,
  onRow: (row: Residual | null) => void,
): Promise<void> {
  const tools = { vision: await loadNodeVision(), decoders: nodeDecoders };
  const cases = (await casesInFolder(folder)).filter((_, i) => mine(i));
  for (const next of cases) onRow(await residualOf(await next.load(), tools, withSeats));
}

async function inWorkers(count: number, onRow: (row: Residual | null) => void): Promise<void> {
  const own = process.argv.slice(2);
  await Promise.all(
    Array.from({ length: count }, (_, k) => {
      const child = fork(process.argv[1], [...own, '--share', `${k}/${count}`]);
      child.on('message', (row) => onRow(row as Residual | null));
      return new Promise<void>((resolve, reject) => {
        child.on('error', reject);
        child.on('exit', (code) =>
          code === 0 ? resolve() : reject(new Error(`worker ${k} ended with ${code}`)),
        );
      });
    }),
  );
}

await runIfStarted(import.meta.url, { usage, run });
