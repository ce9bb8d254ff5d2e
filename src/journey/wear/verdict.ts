import type { Estimate } from '../../quantity/estimate';
import type { CrestRange } from '../../standards/thread';

/** Guard band over u: 95 % one-sided, the default of ISO 14253-1:2017, clause 5 and annex A. */
export const guardFactor = 1.65;
/** Of several measurements of one part the worst counts, which errs more often than one: they share the one in
 *  twenty (Bonferroni; one-sided quantiles of 0.05/n). */
const sharedGuard = [guardFactor, guardFactor, 1.96, 2.13] as const;
export const guardOf = (measurements: 1 | 2 | 3): number => sharedGuard[measurements];

/** Why a diameter over the crests decides nothing. */
export type Undecided =
  /** The interval of the measurement reaches over a limit. */
  | 'near-limit'
  /** The guard bands take up all of the tolerance: no value at all could pass. */
  | 'too-uncertain'
  /** The thread is judged by its gauge plane. */
  | 'tapered'
  /** No class of this thread is known here. */
  | 'no-class'
  /** The photo shows another pitch than the thread that was named. */
  | 'another-pitch'
  /** The photo does not resolve the diameter. */
  | 'unresolved'
  /** A caliper found what it was laid on within, but not all three places were measured. */
  | 'places-missing';

/** What can be said of a diameter against its limits. `within` is said of the crest alone: it does not
 *  pass the thread. */
export type Verdict =
  | { readonly state: 'within' }
  /** By how much beyond the limit, mm, positive. */
  | { readonly state: 'below' | 'above'; readonly by: Estimate }
  | { readonly state: 'not-decidable'; readonly why: Undecided };

/** ISO 14253-1: a limit counts as kept, or as broken, only where the value is beyond it by the guard band.
 *  At either limit one in twenty is accepted wrongly, and one in twenty rejected wrongly. */
export function verdictOn(
  { value, u }: Estimate,
  { minMm, maxMm }: CrestRange,
  factor = guardFactor,
): Verdict {
  const guard = factor * u;
  if (!(u >= 0) || !Number.isFinite(value)) return { state: 'not-decidable', why: 'unresolved' };
  if (value < minMm - guard) return { state: 'below', by: { value: minMm - value, u } };
  if (value > maxMm + guard) return { state: 'above', by: { value: value - maxMm, u } };
  if (value >= minMm + guard && value <= maxMm - guard) return { state: 'within' };
  return {
    state: 'not-decidable',
    why: canPass(u, { minMm, maxMm }) ? 'near-limit' : 'too-uncertain',
  };
}

/** Whether any value could be found within, at this uncertainty: to be said before a person relies on it. */
export function canPass(u: number, { minMm, maxMm }: CrestRange): boolean {
  return maxMm - minMm > 2 * guardFactor * u;
}
