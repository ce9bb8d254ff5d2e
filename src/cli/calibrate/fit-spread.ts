import {
  type SpreadWeights,
  spreadOf,
  type Traces,
} from '../../journey/5-measurement/learnt-spread';
import { partsOf } from '../../journey/5-measurement/local-spread';
import { ascending, quantile } from '../../quantity/order';
import { rounded } from './rounded';
import { searchWeights } from './search-weights';

/** What a length is off, mm; `sharedMm`: uncertainty that camera, height and print account for. */
export interface Off {
  readonly errorMm: number;
  readonly sharedMm: number;
  readonly traces: Traces;
}

const names = [
  'base',
  'fit',
  'doubt',
  'scatter',
  'score',
  'dark',
  'taper',
  'astray',
  'astrayScatter',
  'astrayLimbs',
  'astrayDark',
  'far',
  'lost',
  'lostAstray',
  'lostFar',
] as const;
type Sought = Readonly<Record<(typeof names)[number], number>>;
const start: Sought = {
  base: -4,
  fit: 0.5,
  doubt: 0.5,
  scatter: 0,
  score: 0,
  dark: 0,
  taper: 0,
  astray: -4,
  astrayScatter: 0.5,
  astrayLimbs: -1,
  astrayDark: 0,
  far: -1.5,
  lost: -4,
  lostAstray: 0,
  lostFar: 0,
};
/** What leaves more to doubt never makes a length surer. */
const neverNegative: readonly string[] = [
  'fit',
  'doubt',
  'scatter',
  'taper',
  'astrayScatter',
  'lostAstray',
];
/** What is shown better never goes astray more often, nor does a spread grow faster than what the fit states. */
const greatest: Readonly<Record<string, number>> = { astrayLimbs: 0, fit: 1 };
/** Weights stay small where photos say little: a ridge of so much per unit squared. */
const ridge = 0.3;
const ridged = names.filter((name) => !['base', 'astray', 'far', 'lost', 'lostFar'].includes(name));

/** Weights under which the errors are likeliest. */
export function fitSpread(rows: readonly Off[]): SpreadWeights {
  const free = { least: 0, most: Number.POSITIVE_INFINITY };
  const cost = (w: Sought) =>
    rows.reduce(
      (sum, { errorMm, sharedMm, traces }) => {
        const parts = partsOf(spreadOf(traces, { ...w, ...free }));
        const normal = (mm: number) => {
          const all = Math.hypot(sharedMm, mm, 1e-4);
          return Math.exp(-0.5 * (errorMm / all) ** 2) / all;
        };
        const density = parts.reduce((all, { share, u }) => all + share * normal(u), 0);
        return sum - Math.log(density + 1e-12);
      },
      ridge * ridged.reduce((sum, name) => sum + w[name] ** 2, 0),
    );
  const weights = searchWeights(
    names,
    start,
    cost,
    (name) => (neverNegative.includes(name) ? 0 : Number.NEGATIVE_INFINITY),
    (name) => greatest[name] ?? Number.POSITIVE_INFINITY,
  );
  const shares = ascending(
    rows.map(({ traces }) => spreadOf(traces, { ...weights, ...free }).u / traces.pitchMm),
  );
  // No photo is surer than the surest twentieth of those seen, nor worse than the worst.
  const surest = quantile(shares, 0.05);
  return { ...weights, least: rounded(surest), most: rounded(shares[shares.length - 1]) };
}

/** The factor on stated uncertainties at which as many errors as should lie within 1.96 u. */
export function widening(
  rows: readonly { readonly errorMm: number; readonly sharedMm: number; readonly uMm: number }[],
  cover: number,
): number {
  const held = (k: number) =>
    rows.filter(
      ({ errorMm, sharedMm, uMm }) => Math.abs(errorMm) < 1.96 * Math.hypot(sharedMm, k * uMm),
    ).length / rows.length;
  let k = 0.3;
  while (held(k) < cover && k < 10) k *= 1.02;
  return k;
}
