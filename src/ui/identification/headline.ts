import type { Conclusion } from '../../journey/7-next-reading/decision';
import { t } from '../language/language';

/** From here on the likeliest thread is called probable (the bounds of likelihood-words). */
const probable = 0.6;

/** How far the identification has come, in one sentence. A percentage alone reads like certainty. */
export function headline(conclusion: Conclusion): string {
  const say = t().loop.headline;
  const { decision, threads, contradictions, nearest } = conclusion;
  if (decision.state === 'unlisted' || nearest) return say.nothing;
  if (contradictions.length > 0) return say.contradiction;
  if (decision.state === 'settled') return say.settled;
  if (decision.thread) return say.threadSettled;
  const [first, second] = threads;
  if (!first) return say.nothingYet;
  if (first.system === null) return say.nothing;
  if (first.probability >= probable) return say.probably(first.designation);
  return second?.system ? say.between(first.designation, second.designation) : say.nothingYet;
}
