import type { Refused } from '../../journey/identification';
import { t } from '../language/language';
import type { NoChange } from '../work/remeasure';

/** Two marks on a rule were the scale, and gave none. */
export const badMarks = (refusal: Refused['refusal'], byRule: boolean): boolean =>
  byRule && refusal.reason === 'no-card';

/** What happened and what to do. The codes are ours, so every language has its words for them;
 *  a code without words (a newer worker) is shown as the journey says it. */
export function refusalWords(
  refusal: Refused['refusal'],
  byRule: boolean,
): { what: string; todo: string } {
  if (badMarks(refusal, byRule)) return t().refused.ruleMarks;
  const known: Readonly<Record<string, { what: string; todo: string }>> = t().refused.reasons;
  if (Object.hasOwn(known, refusal.reason)) return known[refusal.reason];
  return { what: t().refused.other.what, todo: refusal.advice || t().refused.other.todo };
}

/** Why measuring again changed nothing, in one line. */
export function noChangeWords(why: NoChange, byRule = false): string {
  if (why === 'photos-disagree') return t().sheet.disagree;
  const { what, todo } = refusalWords(why.refusal, byRule);
  return `${what} ${todo}`;
}
