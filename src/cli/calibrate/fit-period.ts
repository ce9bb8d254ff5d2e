import { logOdds, type PeriodWeights } from '../../journey/4-limbs/period-odds';
import type { Candidate } from './residual';
import { searchWeights } from './search-weights';

const names = ['score', 'turn', 'multiple', 'outline'] as const;
/** What is usual comes from the tables, as a density: photos, drawn with few of their threads, may not sharpen it. */
const known = { size: 1 };
/** Weights stay small where photos say little: a ridge of so much per unit squared. */
const ridge = 0.02;

/** Weights under which the true periods are likeliest among those weighed on each photo (conditional logit),
 *  by a search along each weight in turn. Photos on which the true one was not among them say
 *  nothing. */
export function fitPeriod(photos: readonly (readonly Candidate[])[]): PeriodWeights {
  type Sought = Record<(typeof names)[number], number>;
  const told = photos.filter((list) => list.length > 1 && list.some(({ right }) => right));
  const cost = (w: Sought) =>
    told.reduce(
      (sum, list) => sum - logShare(list, { ...w, ...known }),
      ridge * names.reduce((t, name) => t + w[name] ** 2, 0),
    );
  return {
    ...searchWeights(names, { score: 1, turn: 1, multiple: 1, outline: 1 }, cost),
    ...known,
  };
}

/** Share of photos that mislead, whose limbs lie elsewhere: one of them must not undo what all others say. */
const misleading = 0.02;

/** Logarithm of the probability that a photo's candidates leave to the true one. */
function logShare(list: readonly Candidate[], w: PeriodWeights): number {
  const odds = list.map(({ traits, spoken }) => logOdds(traits, w) + w.outline * spoken);
  const most = Math.max(...odds);
  const sum = (of: readonly number[]) => of.reduce((t, v) => t + Math.exp(v - most), 1e-9);
  const share = sum(odds.filter((_, i) => list[i].right)) / sum(odds);
  return Math.log((1 - misleading) * share + misleading / list.length);
}
