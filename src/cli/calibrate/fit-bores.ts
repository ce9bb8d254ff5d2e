import { type BoreWeights, boreOdds } from '../../journey/4-bore/bore-odds';
import type { BoreSpread } from '../../journey/5-measurement/bore-measurement';
import { coveringU, type Spread } from '../../journey/5-measurement/local-spread';
import { ascending, median, nearestRank } from '../../quantity/order';
import type { BoreOff, BoreSeen } from './bore-residual';
import { rounded } from './rounded';
import { searchWeights } from './search-weights';

const names = ['base', 'score', 'turn', 'size', 'multiple', 'mouth'] as const;
/** Weights stay small where bores say little: a ridge of so much per unit squared. */
const ridge = 0.01;

/** Weights under which the odds of a bore say how often it is right (logistic regression), and those among its periods
 *  which is the true one (conditional logit), together. */
export function fitBores(bores: readonly BoreSeen[]): BoreWeights {
  const cost = (w: BoreWeights) => {
    let sum = 0;
    for (const { right, periods } of bores) {
      const odds = periods.map(({ traits }) => boreOdds(traits, w));
      sum += Math.log1p(Math.exp(right ? -odds[0] : odds[0]));
      if (!periods.some((q) => q.right)) continue;
      const most = Math.max(...odds);
      const total = (of: readonly number[]) => of.reduce((t, v) => t + Math.exp(v - most), 1e-9);
      sum -= Math.log(total(odds.filter((_, i) => periods[i].right)) / total(odds));
    }
    return sum + ridge * names.reduce((t, name) => t + w[name] ** 2, 0);
  };
  const start = { base: 4, score: 1, turn: 1, size: 1, multiple: 1, mouth: 1 };
  // What speaks for a bore never speaks against it.
  return searchWeights(names, start, cost, (name) =>
    name === 'base' ? Number.NEGATIVE_INFINITY : 0,
  );
}

/** How errors of bores are spread; what the diameter is told too large or small by in the middle is taken off. */
export function spreadOfBores(off: readonly BoreOff[]): BoreSpread {
  const over = rounded(1 + median(off.map(({ diameter }) => diameter)));
  return {
    diameter: { over, ...spreadOf(off.map((one) => diameterError(one, over))) },
    pitch: spreadOf(off.map(({ pitch }) => pitch)),
    height: {
      known: 1,
      ofHeight: covering(
        off.map(({ heightMm: { error, u, value } }) =>
          Math.sqrt(Math.max(0, (error / value) ** 2 - (u / value) ** 2)),
        ),
      ),
    },
  };
}

const diameterError = ({ diameter }: Pick<BoreOff, 'diameter'>, over: number): number =>
  (1 + diameter) / over - 1;

/** Where few bores speak: one in nine astray and four times as far, as male threads are, within a factor of so much
 *  (logarithms). */
const usual = { astray: -2.1, uAstray: 1, far: Math.log(4), uFar: 0.5 };

/** Parts under which the errors are likeliest. */
function spreadOf(errors: readonly number[]): Spread {
  const spread = (w: Readonly<Record<'u' | 'astray' | 'far', number>>): Spread => {
    const u = Math.exp(w.u);
    return { u, astray: 1 / (1 + Math.exp(-w.astray)), far: u * Math.exp(w.far) };
  };
  const cost = (w: Parameters<typeof spread>[0]) => {
    const { u, astray, far } = spread(w);
    const normal = (e: number, by: number) => Math.exp(-0.5 * (e / by) ** 2) / by;
    return errors.reduce(
      (sum, e) => sum - Math.log((1 - astray) * normal(e, u) + astray * normal(e, far) + 1e-12),
      0.5 * ((w.astray - usual.astray) / usual.uAstray) ** 2 +
        0.5 * ((w.far - usual.far) / usual.uFar) ** 2,
    );
  };
  const start = { u: -4, astray: usual.astray, far: usual.far };
  const found = spread(
    searchWeights(['u', 'astray', 'far'], start, cost, () => Number.NEGATIVE_INFINITY),
  );
  return { u: rounded(found.u), astray: rounded(found.astray), far: rounded(found.far) };
}

/** Of every bore, whether the 95 % interval by the other four fifths holds its pitch and its diameter. */
export function heldByOthers(off: readonly BoreOff[], folds = 5) {
  const spreads = Array.from({ length: folds }, (_, fold) =>
    spreadOfBores(off.filter((_, i) => i % folds !== fold)),
  );
  return off.map((one, i) => {
    const spread = spreads[i % folds]!;
    return {
      pitch: Math.abs(one.pitch) < 1.96 * coveringU(spread.pitch),
      diameter:
        Math.abs(diameterError(one, spread.diameter.over)) < 1.96 * coveringU(spread.diameter),
    };
  });
}

/** The u whose 95 % interval holds 95 of 100 of these errors. */
function covering(errors: readonly number[]): number {
  return rounded(nearestRank(ascending(errors.map(Math.abs)), 0.95) / 1.96);
}
