import { ascending, betweenRanks } from '../../quantity/order';
import type { Numbers, Score } from './score';

export interface Spread {
  readonly n: number;
  readonly median: number;
  readonly p95: number;
}

export interface Summary {
  readonly photos: number;
  readonly measured: number;
  readonly refusals: Readonly<Record<string, number>>;
  readonly verdicts: Readonly<Record<Score['verdict'], number>>;
  /** Photos on which the right thread is the likeliest one. */
  readonly led: number;
  readonly connectionsRight: number;
  readonly connectionsWrong: number;
  /** Photos whose scale can be known; absolute relative errors. */
  readonly pitch: Spread;
  readonly major: Spread;
  readonly ratio: Spread;
  readonly pitchU: Spread;
  readonly majorU: Spread;
  /** Absolute, mm per mm, all measured photos. */
  readonly taper: Spread;
  /** Straight read as tapered or the reverse, by the halfway mark of 1:32. */
  readonly taperConfused: number;
  /** Share of value ± 1.96 u that holds the truth, all measured photos. */
  readonly coverage: Coverage;
  /** Of all photos: pitch within 0.6 %, diameter within 1 %; pitches off by more than 20 %. */
  readonly pitchWithin: number;
  readonly majorWithin: number;
  readonly byFactor: number;
  /** |z| > 4 in pitch, diameter or ratio. */
  readonly beyondFourU: readonly string[];
}

export interface Coverage {
  readonly n: number;
  readonly pitch: number;
  readonly major: number;
  readonly ratio: number;
}

export function summarise(scores: readonly Score[]): Summary {
  const measured = scores.filter(hasNumbers);
  const known = measured.filter((s) => s.scaleKnown);
  const column = (from: readonly MeasuredScore[], get: (n: Numbers) => number | null) =>
    spread(from.map((s) => get(s.numbers)).filter((v) => v !== null));
  const verdicts = { right: 0, wrong: 0, asked: 0, unlisted: 0, refused: 0 };
  const refusals: Record<string, number> = {};
  for (const s of scores) {
    verdicts[s.verdict]++;
    if (s.refusal) refusals[s.refusal] = (refusals[s.refusal] ?? 0) + 1;
  }
  return {
    photos: scores.length,
    measured: measured.length,
    refusals,
    verdicts,
    led: scores.filter((s) => s.leader?.right).length,
    connectionsRight: scores.filter((s) => s.connectionRight === true).length,
    connectionsWrong: scores.filter((s) => s.connectionRight === false).length,
    pitch: column(known, (n) => Math.abs(n.pitchError)),
    major: column(known, (n) => Math.abs(n.majorError)),
    ratio: column(known, (n) => Math.abs(n.ratioError)),
    pitchU: column(known, (n) => n.pitchU),
    majorU: column(known, (n) => n.majorU),
    taper: column(measured, (n) => n.taperError && Math.abs(n.taperError)),
    taperConfused: measured.filter(({ numbers, taperTrue }) => {
      const { taperError } = numbers;
      return taperError !== null && taperError + taperTrue > 1 / 32 !== taperTrue > 1 / 32;
    }).length,
    coverage: coverageOf(measured),
    pitchWithin: measured.filter((s) => Math.abs(s.numbers.pitchError) <= 0.006).length,
    majorWithin: measured.filter((s) => Math.abs(s.numbers.majorError) <= 0.01).length,
    byFactor: measured.filter((s) => Math.abs(s.numbers.pitchError) > 0.2).length,
    beyondFourU: measured
      .filter(({ numbers: n }) => [n.pitchZ, n.majorZ, n.ratioZ].some((z) => !(Math.abs(z) <= 4)))
      .map((s) => s.name),
  };
}

export interface StratumRow {
  readonly stratum: string;
  readonly photos: number;
  readonly measured: number;
  readonly pitchMedian: number;
  readonly majorMedian: number;
  readonly coverage: Coverage;
  /** Root mean square of errors over their u; a few outliers make most of it. */
  readonly rmsZ: { readonly pitch: number; readonly major: number };
  readonly wrong: number;
}

export const strataNames = (scores: readonly Score[]): string[] => [
  ...new Set(scores.flatMap((s) => Object.keys(s.strata))),
];

/** Every stratum, or those of one kind: `only` is among `strataNames`. */
export function byStratum(scores: readonly Score[], only: string | null = null): StratumRow[] {
  const names = strataNames(scores).filter((name) => only === null || name === only);
  return names.flatMap((name) =>
    [...new Set(scores.map((s) => s.strata[name]!))].sort().map((value) => {
      const own = scores.filter((s) => s.strata[name] === value);
      const summary = summarise(own);
      return {
        stratum: `${name} ${value}`,
        photos: own.length,
        measured: summary.measured,
        pitchMedian: summary.pitch.median,
        majorMedian: summary.major.median,
        coverage: summary.coverage,
        rmsZ: {
          pitch: rootMeanSquare(own.filter(hasNumbers).map((s) => s.numbers.pitchZ)),
          major: rootMeanSquare(own.filter(hasNumbers).map((s) => s.numbers.majorZ)),
        },
        wrong: summary.verdicts.wrong,
      };
    }),
  );
}

const rootMeanSquare = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);

type MeasuredScore = Score & { readonly numbers: Numbers };
const hasNumbers = (s: Score): s is MeasuredScore => s.numbers !== null;

function coverageOf(measured: readonly MeasuredScore[]): Coverage {
  const share = (get: (n: Numbers) => number) =>
    measured.filter((s) => Math.abs(get(s.numbers)) <= 1.96).length / measured.length;
  return {
    n: measured.length,
    pitch: share((n) => n.pitchZ),
    major: share((n) => n.majorZ),
    ratio: share((n) => n.ratioZ),
  };
}

export function spread(values: readonly number[]): Spread {
  const sorted = ascending(values);
  return { n: sorted.length, median: betweenRanks(sorted, 0.5), p95: betweenRanks(sorted, 0.95) };
}
