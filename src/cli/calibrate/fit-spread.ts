import {
  type SpreadWeights,
  spreadMm,
  type Traces,
} from '../../journey/5-measurement/learnt-spread';
import { rounded } from './rounded';
import { searchWeights } from './search-weights';

/** What a length is off, mm; `sharedMm`: uncertainty that camera, height and print account for. */
export interface Off {
  readonly errorMm: number;
  readonly sharedMm: number;
  readonly traces: Traces;
}

const names = ['base', 'fit', 'limb', 'score', 'dark'] as const;
/** Tails: Student's t of so few degrees of freedom keeps one shadow from setting every weight. */
const freedom = 5;
/** Weights stay small where photos say little: a ridge of so much per unit squared. */
const ridge = 1;
/** Of normal deviates within ±1.96. */
export const usualCover = 0.95;

/** Weights under which the errors are likeliest; then the base such that as many as should lie within 1.96 u. */
export function fitSpread(rows: readonly Off[]): SpreadWeights {
  const free = { least: 0, most: Number.POSITIVE_INFINITY };
  const cost = (w: Omit<SpreadWeights, 'least' | 'most'>) =>
    rows.reduce(
      (sum, { errorMm, sharedMm, traces }) => {
        const u = Math.hypot(sharedMm, spreadMm(traces, { ...w, ...free }), 1e-4);
        const z = errorMm / u;
        return sum + Math.log(u) + ((freedom + 1) / 2) * Math.log1p((z * z) / freedom);
      },
      ridge * (w.fit ** 2 + w.limb ** 2 + w.score ** 2 + w.dark ** 2),
    );
  // What leaves more to doubt never makes a length surer.
  const weights = searchWeights(
    names,
    { base: -3, fit: 0.5, limb: 0.5, score: 0, dark: 0 },
    cost,
    (name) => (name === 'fit' || name === 'limb' ? 0 : Number.NEGATIVE_INFINITY),
  );
  const k = widening(
    rows.map(({ errorMm, sharedMm, traces }) => ({
      errorMm,
      sharedMm,
      uMm: spreadMm(traces, { ...weights, ...free }),
    })),
  );
  const scaled = { ...weights, ...free, base: rounded(weights.base + Math.log(k)) };
  const shares = rows
    .map(({ traces }) => spreadMm(traces, scaled) / traces.pitchMm)
    .sort((a, b) => a - b);
  // No photo is surer than the surest twentieth of those seen, nor worse than the worst.
  const surest = shares[Math.floor(0.05 * shares.length)];
  return { ...scaled, least: rounded(surest), most: rounded(shares[shares.length - 1]) };
}

/** The factor on stated uncertainties at which as many errors as should lie within 1.96 u. */
export function widening(
  rows: readonly { readonly errorMm: number; readonly sharedMm: number; readonly uMm: number }[],
  cover = usualCover,
): number {
  const held = (k: number) =>
    rows.filter(
      ({ errorMm, sharedMm, uMm }) => Math.abs(errorMm) < 1.96 * Math.hypot(sharedMm, k * uMm),
    ).length / rows.length;
  let k = 0.3;
  while (held(k) < cover && k < 10) k *= 1.02;
  return k;
}
