import type { AskableKind } from '../../../src/journey/6-candidates/reading-choices';
import { type Evidence, weigh } from '../../../src/journey/6-candidates/weigh';
import { mostUseful, rate, scenariosOf } from '../../../src/journey/7-next-reading/next-reading';
import { type OutcomeTable, outcomeTable } from '../../../src/journey/7-next-reading/outcomes';
import type { Scenario } from '../../../src/journey/7-next-reading/scenario';
import { readingEffort } from '../../../src/journey/7-next-reading/tools';
import { seededRandom } from '../../../src/quantity/random';
import { drawHydraulic } from './part';
import { photograph, qualities } from './photo';

/** Expected number of readings within the core's own account of outcomes, for the core's greedy
 *  rule and for the best pair of readings found by trying all. A case still open after two costs
 *  one more in both. */
export function greedyAgainstExhaustive(cases: number, seed: number) {
  const random = seededRandom(seed);
  let greedy = 0;
  let exhaustive = 0;
  let counted = 0;
  for (let i = 0; counted < cases; i++) {
    const part = drawHydraulic(random, 'male');
    const photo = photograph(part, qualities[i % qualities.length]!, random);
    const evidence: Evidence = { photo, readings: [] };
    const scenarios = scenariosOf(weigh(evidence, {}));
    const tables = tablesFor(evidence, scenarios);
    const start = Float64Array.from(scenarios, (s) => s.probability);
    if (isSettled(start, scenarios)) continue;
    counted++;
    greedy += withGreedy(start, scenarios, tables, 2);
    exhaustive += withBest(start, scenarios, tables, 2);
  }
  return { cases: counted, greedy: greedy / counted, exhaustive: exhaustive / counted };
}

/** The core asks for these only beside or after another: coarser instruments where the finer are not
 *  at hand, and a cone's angle once a look has seen a cone. */
const askedLater: ReadonlySet<AskableKind> = new Set([
  'rule-od',
  'turns-over',
  'crest-form',
  'seat-gauge',
  'cone-size',
  'nose-od',
]);

function tablesFor(evidence: Evidence, scenarios: readonly Scenario[]): OutcomeTable[] {
  return (Object.keys(readingEffort) as AskableKind[])
    .filter((kind) => !askedLater.has(kind))
    .map((kind) => outcomeTable(kind, evidence, scenarios))
    .filter((table) => table !== null);
}

function withGreedy(
  weights: Float64Array,
  scenarios: readonly Scenario[],
  tables: readonly OutcomeTable[],
  left: number,
): number {
  if (isSettled(weights, scenarios)) return 0;
  if (left === 0 || tables.length === 0) return 1;
  const now = scenarios.map((s, i) => ({ ...s, probability: weights[i]! }));
  const chosen = mostUseful(tables.map((table) => rate(table, now)))!;
  return after(chosen.table, weights, (next) => withGreedy(next, scenarios, tables, left - 1));
}

function withBest(
  weights: Float64Array,
  scenarios: readonly Scenario[],
  tables: readonly OutcomeTable[],
  left: number,
): number {
  if (isSettled(weights, scenarios)) return 0;
  if (left === 0 || tables.length === 0) return 1;
  return Math.min(
    ...tables.map((table) =>
      after(table, weights, (next) => withBest(next, scenarios, tables, left - 1)),
    ),
  );
}

/** One reading, then `rest` in the mean over its outcomes. */
function after(
  table: OutcomeTable,
  weights: Float64Array,
  rest: (next: Float64Array) => number,
): number {
  let readings = 1;
  for (let o = 0; o < table.outcomes.length; o++) {
    const next = weights.map((w, s) => w * table.chances[s]![o]!);
    const total = next.reduce((a, b) => a + b, 0);
    if (total < 1e-4) continue;
    readings += total * rest(next.map((w) => w / total));
  }
  return readings;
}

function isSettled(weights: Float64Array, scenarios: readonly Scenario[]): boolean {
  const byLabel = new Map<number, number>();
  scenarios.forEach((s, i) => {
    byLabel.set(s.label, (byLabel.get(s.label) ?? 0) + weights[i]!);
  });
  return Math.max(...byLabel.values()) >= 0.995;
}
