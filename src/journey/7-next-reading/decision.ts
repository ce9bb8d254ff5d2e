import type { ConnectionCandidate, ThreadCandidate } from '../6-candidates/candidate';
import type { ReadingKind } from '../6-candidates/reading';

export interface Ask {
  readonly reading: ReadingKind;
  readonly why: string;
  readonly gainBits: number;
}

export interface Decision {
  readonly state: 'settled' | 'needs-reading' | 'unlisted';
  /** Designation, or null while open. */
  readonly thread: string | null;
  readonly connection: { readonly family: string; readonly size: string } | null;
  readonly ask: Ask | null;
}

/** Stages 6 and 7 together: what a measurement and the readings amount to. */
export interface Conclusion {
  /** Sorted by probability, highest first. */
  readonly threads: readonly ThreadCandidate[];
  readonly connections: readonly ConnectionCandidate[];
  readonly decision: Decision;
}
