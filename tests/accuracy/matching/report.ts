import { parseArgs } from 'node:util';
import { greedyAgainstExhaustive } from './greedy-against-exhaustive';
import { type MatchingFigures, matchingFigures } from './run-matching-accuracy';

interface Row {
  readonly what: string;
  readonly target: string;
  readonly value: number;
  readonly met: boolean;
  readonly shown: string;
}

const percent = (value: number, digits = 2) => `${(100 * value).toFixed(digits)} %`;

/** `npm run accuracy -- --matching [--cases N] [--seed S]`: the targets of the matching core and
 *  what the simulation reaches. Exit code 1 when a target is missed. */
export function runMatchingAccuracy(args: readonly string[]): number {
  const { values } = parseArgs({
    args: [...args],
    strict: false,
    options: { cases: { type: 'string' }, seed: { type: 'string' } },
  });
  const cases = Number(values.cases ?? 20_000);
  const seed = Number(values.seed ?? 1);
  const figures = matchingFigures({ cases, seed });
  const rows = targetRows(figures, greedyAgainstExhaustive(Math.ceil(cases / 100), seed));
  console.log(`Matching core, ${cases} simulated fittings, seed ${seed} (no photographs)`);
  for (const { what, target, shown, met } of rows) {
    console.log(`${met ? 'met   ' : 'MISSED'} ${what.padEnd(58)} ${shown.padStart(10)}  ${target}`);
  }
  console.log(
    `\nSettled wrongly though no reading was plain wrong, and the photo as good as it says: ${figures.wrongUnmisled} of ${cases}`,
  );
  const alone = figures.readingsAlone;
  console.log(
    `Readings alone, male and female ends, ${alone.cases} cases: settled rightly ${percent(
      alone.settled / alone.cases,
    )}, thread wrong ${alone.threadWrong}, connection wrong ${alone.connectionWrong}, mean readings ${alone.meanReadings.toFixed(2)} (the first two are crest diameter and pitch gauge)`,
  );
  console.log(
    `Unlisted threads: called unlisted from the photo ${percent(figures.unlistedCalled)}, not settled after readings ${percent(figures.unlistedNotSettledAfter)}`,
  );
  return rows.every((row) => row.met) ? 0 : 1;
}

export function targetRows(
  f: MatchingFigures,
  planning: { readonly greedy: number; readonly exhaustive: number },
): Row[] {
  const most = (what: string, value: number, limit: number, shown: string, target: string) => ({
    ...{ what, value, shown, target },
    met: value <= limit,
  });
  const least = (what: string, value: number, limit: number, shown: string, target: string) => ({
    ...{ what, value, shown, target },
    met: value >= limit,
  });
  const threadWrong = f.threadWrong / f.threadSettled;
  const connectionWrong = f.connectionWrong / f.connectionSettled;
  const worse = planning.greedy / planning.exhaustive - 1;
  const ece = (value: number) => value.toFixed(4);
  return [
    most('settled wrongly, thread', threadWrong, 0.001, percent(threadWrong, 3), '≤ 0.1 %'),
    most(
      'settled wrongly, connection',
      connectionWrong,
      0.005,
      percent(connectionWrong, 3),
      '≤ 0.5 %',
    ),
    least(
      'thread settled from photo alone, u(pitch), u(scale) 0.3 %',
      f.photoAlone,
      0.85,
      percent(f.photoAlone),
      '≥ 85 %',
    ),
    least(
      'thread and connection settled after readings',
      f.afterReadings,
      0.97,
      percent(f.afterReadings),
      '≥ 97 %',
    ),
    most('mean readings', f.meanReadings, 1.3, f.meanReadings.toFixed(3), '≤ 1.3'),
    least(
      'threads in no table, not settled',
      f.unlistedNotSettled,
      0.99,
      percent(f.unlistedNotSettled),
      '≥ 99 %',
    ),
    most(
      'calibration error, threads',
      f.calibrationThread.error(),
      0.02,
      ece(f.calibrationThread.error()),
      '≤ 0.02',
    ),
    most(
      'calibration error, connections',
      f.calibrationConnection.error(),
      0.02,
      ece(f.calibrationConnection.error()),
      '≤ 0.02',
    ),
    most('greedy against exhaustive two-step, readings', worse, 0.03, percent(worse), '≤ 3 %'),
    most(
      '10 000 conclusions, one core',
      f.secondsPer10k,
      20,
      `${f.secondsPer10k.toFixed(1)} s`,
      '≤ 20 s',
    ),
  ];
}
