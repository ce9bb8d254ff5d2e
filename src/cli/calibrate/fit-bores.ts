import { type BoreWeights, boreOdds } from '../../journey/4-bore/bore-odds';
import type { BoreSpread } from '../../journey/5-measurement/bore-measurement';
import { ascending, middleValue, nearestRank } from '../../quantity/order';
import type { BoreOff, BoreSeen } from './bore-residual';
import { rounded } from './rounded';
import { searchWeights } from './search-weights';

const names = ['base', 'score', 'turn', 'size', 'multiple', 'share'] as const;
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
  const start = { base: 4, score: 1, turn: 1, size: 1, multiple: 1, share: 1 };
  // What speaks for a bore never speaks against it.
  return searchWeights(names, start, cost, (name) =>
    name === 'base' ? Number.NEGATIVE_INFINITY : 0,
  );
}

/** What is left of right bores, each so that 95 % lie within 1.96 u. */
export function spreadOfBores(off: readonly BoreOff[]): BoreSpread {
  const overCrests = 1 + middleValue(off.map(({ wall }) => wall));
  const ofHeight = covering(
    off.map(({ heightMm: { error, u, value } }) =>
      Math.sqrt(Math.max(0, (error / value) ** 2 - (u / value) ** 2)),
    ),
  );
  return {
    pattern: {
      overCrests: rounded(overCrests),
      u: covering(off.map(({ wall }) => (1 + wall) / overCrests - 1)),
    },
    rim: { u: covering(off.map(({ rim }) => rim)) },
    pitch: { u: covering(off.map(({ pitch }) => pitch)) },
    height: { known: 1, ofHeight },
  };
}

/** The u whose 95 % interval holds 95 of 100 of these errors. */
function covering(errors: readonly number[]): number {
  return rounded(nearestRank(ascending(errors.map(Math.abs)), 0.95) / 1.96);
}
