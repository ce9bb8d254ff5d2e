import type { ConnectionCandidate, ThreadCandidate } from '../6-candidates/candidate';
import type { ReadingKind } from '../6-candidates/reading';

/** Which candidates an outcome of the asked reading would speak for: the reason in a form that a
 *  page can put into any language. */
export interface Fit {
  /** As the reading would be written: '16tpi', 'cone-37', '26.5…26.9mm', 'tapered'. */
  readonly value: string;
  /** Thread designations, or 'family size' where the reading separates connections. */
  readonly candidates: readonly string[];
}

export interface Ask {
  readonly reading: ReadingKind;
  readonly why: string;
  readonly gainBits: number;
  readonly fits: readonly Fit[];
}

export interface Decision {
  readonly state: 'settled' | 'needs-reading' | 'unlisted';
  /** Designation, or null while open. */
  readonly thread: string | null;
  /** `end`, `endType`, `form` and `seat` are null while open. */
  readonly connection: Omit<ConnectionCandidate, 'probability'> | null;
  /** Left-hand threads carry LH behind their designation; null where nothing says. */
  readonly hand: 'left' | 'right' | null;
  readonly ask: Ask | null;
}

/** A source that the rest of the evidence speaks against: 'photo' or the index of a reading.
 *  Both sides are kept; nothing is settled until a third source agrees with one of them. */
export type Contradiction =
  | { readonly source: 'photo' }
  | { readonly source: 'reading'; readonly index: number; readonly text: string };

/** Stages 6 and 7 together: what a measurement and the readings amount to. */
export interface Conclusion {
  /** Sorted by probability, highest first. */
  readonly threads: readonly ThreadCandidate[];
  readonly connections: readonly ConnectionCandidate[];
  readonly decision: Decision;
  readonly contradictions: readonly Contradiction[];
  /** Which end this is, where the evidence says so. */
  readonly end: 'male' | 'female' | null;
}
