import type { Refused } from '../../journey/identification';
import { t } from '../language/language';
import type { NoChange } from '../work/remeasure';
import type { Shown } from './next-steps';

/** What a person showed by hand and what then still failed for want of just that. */
export function badMarks(
  { reason }: Refused['refusal'],
  shown: Shown,
): 'ruleMarks' | 'cornerMarks' | 'axisMarks' | null {
  const noScale = ['no-card', 'other-rectangle', 'which-reference', 'business-card', 'banknote'];
  if (shown.ruler && reason === 'no-card') return 'ruleMarks';
  if (shown.corners && noScale.includes(reason)) return 'cornerMarks';
  if (shown.axis && (reason === 'no-thread' || reason === 'too-few-turns')) return 'axisMarks';
  return null;
}

/** What happened and what to do. The codes are ours, so every language has its words for them;
 *  a code without words (a newer worker) is shown as the journey says it. */
export function refusalWords(
  { refusal, field }: Pick<Refused, 'refusal' | 'field'>,
  shown: Shown,
): { what: string; todo: string } {
  const { refused, end } = t();
  const marks = badMarks(refusal, shown);
  if (marks) return refused[marks];
  const ofFemale: Readonly<Record<string, { what: string; todo: string }>> = end.refused;
  if (shown.female && Object.hasOwn(ofFemale, refusal.reason)) return ofFemale[refusal.reason];
  const known: Readonly<Record<string, { what: string; todo: string }>> = refused.reasons;
  if (!Object.hasOwn(known, refusal.reason))
    return { what: refused.other.what, todo: refusal.advice || refused.other.todo };
  const words = known[refusal.reason];
  return refusal.reason === 'no-thread' && field === 'light'
    ? { ...words, todo: `${words.todo} ${refused.brightOnLight}` }
    : words;
}

const nothingShown: Shown = { ruler: false, axis: false, corners: false, female: false };

/** Why measuring again changed nothing, in one line. */
export function noChangeWords(why: NoChange, shown = nothingShown): string {
  if (why === 'photos-disagree') return t().sheet.disagree;
  const { what, todo } = refusalWords(why, shown);
  return `${what} ${todo}`;
}
