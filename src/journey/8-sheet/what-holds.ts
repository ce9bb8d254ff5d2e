import type { Sheet } from './sheet-schema';

type Judged = Pick<Sheet, 'counter' | 'conclusion'>;
type Decision = Sheet['conclusion']['decision'];

export interface Holding extends Pick<Decision, 'thread' | 'connection'> {
  readonly by: 'evidence' | 'counter';
}

/** What the sheet says the part is: the counter's own words, else what the evidence decides. */
export function whatHolds({ counter, conclusion }: Judged): Holding {
  const { thread, connection } = conclusion.decision;
  const own = counter?.verdict === 'confirmed' ? counter.identified : null;
  return own ? { ...own, by: 'counter' } : { thread, connection, by: 'evidence' };
}

const stamps = ['open', 'settled', 'confirmed', 'rejected'] as const;
export type Stamp = (typeof stamps)[number];

/** The one word that whoever sees a sheet must not miss: the counter's verdict, before it whether
 *  the evidence settles the matter. */
export function stampOf({ counter, conclusion }: Judged): Stamp {
  if (counter && counter.verdict !== 'open') return counter.verdict;
  return conclusion.decision.state === 'settled' && conclusion.contradictions.length === 0
    ? 'settled'
    : 'open';
}
