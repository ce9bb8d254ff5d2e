import { appendFile, readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { casesInFolder } from './accuracy/cases';
import { pathFrom, runIfStarted, UsageError } from './arguments';
import { type BoreSeen, boresSeen } from './calibrate/bore-residual';
import { fitBores, heldByOthers, spreadOfBores } from './calibrate/fit-bores';
import { nodeDecoders } from './node-decoders';
import { loadNodeVision } from './node-vision';

const usage = `npm run calibrate-bores -- FOLDER… --rows ROWS.jsonl [--share K/N] | --rows ROWS.jsonl --set "SEED, DATE" --part spreads|odds
Sets the odds and allowances of female ends from photos with truth, male ones among them, that no judging set holds:
first FOLDERs are measured and what is found is added to ROWS, then the allowances are fitted to it.`;

/** Of each pose: with fewer, one photo more or less would change the spread by a good part. */
const fewest = 10;

const file = fileURLToPath(new URL('../journey/4-bore/allowances.json', import.meta.url));

async function run(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      set: { type: 'string' },
      rows: { type: 'string' },
      part: { type: 'string' },
      share: { type: 'string', default: '0/1' },
    },
  });
  if (!values.rows) throw new UsageError('Say where the rows are kept: --rows FILE.');
  const rowsFile = pathFrom(values.rows);
  if (positionals.length > 0) {
    await measureAll(positionals.map(pathFrom), values.share, rowsFile);
    return 0;
  }
  if (!values.set) throw new UsageError('Say which set it is: --set "seed, date".');
  // Spreads hold for the bores that the odds choose: other odds need other rows first.
  if (values.part !== 'spreads' && values.part !== 'odds')
    throw new UsageError('--part takes spreads, odds.');
  const rows = (await readFile(rowsFile, 'utf8'))
    .split('\n')
    .filter(Boolean)
    .map((line) => JSON.parse(line) as BoreSeen);
  const offOf = (pose: BoreSeen['pose']) =>
    rows.filter((row) => row.pose === pose).flatMap((row) => row.off ?? []);
  const [standing, lying] = [offOf('standing'), offOf('lying')];
  if (Math.min(standing.length, lying.length) < fewest)
    throw new UsageError(
      `${standing.length} bores that stand and ${lying.length} that lie are too few to calibrate on.`,
    );
  // One row of each photo: names come again in other sets.
  const from = `calibrate-bores: ${rows.length} rendered photos, seed and date ${values.set}`;
  const spreads = { standing: spreadOfBores(standing), lying: spreadOfBores(lying) };
  const set =
    values.part === 'odds'
      ? { odds: { from, ...fitBores(rows) } }
      : { spreads: { from, ...spreads } };
  const allowances = { ...JSON.parse(await readFile(file, 'utf8')), ...set };
  await writeFile(file, `${JSON.stringify(allowances, null, 2)}\n`);
  console.log(JSON.stringify(allowances, null, 2));
  for (const [pose, off] of Object.entries({ standing, lying })) {
    const held = heldByOthers(off);
    const share = (of: 'pitch' | 'diameter') =>
      `${of} ${((100 * held.filter((one) => one[of]).length) / held.length).toFixed(0)} %`;
    console.log(
      `${pose}: of five folds, each judged by the others, within 95 % intervals ${share('pitch')}, ${share('diameter')}`,
    );
  }
  return 0;
}

async function measureAll(folders: readonly string[], share: string, rowsFile: string) {
  const [k, n] = share.split('/').map(Number);
  const tools = { vision: await loadNodeVision(), decoders: nodeDecoders };
  const cases = (await Promise.all(folders.map(casesInFolder))).flat();
  for (const next of cases.filter((_, i) => i % n === k)) {
    const rows = await boresSeen(await next.load(), tools);
    await appendFile(rowsFile, rows.map((row) => `${JSON.stringify(row)}\n`).join(''));
    process.stderr.write('.');
  }
}

await runIfStarted(import.meta.url, { usage, run });
