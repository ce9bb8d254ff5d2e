import type {
  ConnectionCandidate,
  ConnectionEnd,
  ThreadCandidate,
} from '../6-candidates/candidate';
import type { AskableKind } from '../6-candidates/reading';
import type { Tool } from './tools';

/** Which candidates an outcome of the asked reading would speak for: the reason in a form that a
 *  page can put into any language. */
export interface Fit {
  /** As the reading would be written: '16tpi', 'cone-37', '26.5…26.9mm', 'tapered'. */
  readonly value: string;
  /** Thread designations, or 'family size' where the reading separates connections. */
  readonly candidates: readonly string[];
}

export interface Ask {
  readonly reading: AskableKind;
  readonly why: string;
  readonly gainBits: number;
  readonly fits: readonly Fit[];
}

export interface Decision {
  readonly state: 'settled' | 'needs-reading' | 'unlisted';
  /** Designation (a left-hand thread ends in ' LH'), or null while open. */
  readonly thread: string | null;
  readonly connection: ConnectionEnd | null;
  readonly ask: Ask | null;
  /** Where nothing at hand would settle it: what would. */
  readonly missing: { readonly reading: AskableKind; readonly tools: readonly Tool[] } | null;
}

/** A source that the rest of the evidence speaks against: 'photo' or the index of a reading.
 *  Both sides are kept; nothing is settled until a third source agrees with one of them. */
export type Contradiction =
  | { readonly source: 'photo' }
  | { readonly source: 'reading'; readonly index: number; readonly text: string };

/** Measured well, and no listed thread has this diameter: the one that comes closest. */
export interface Nearest {
  readonly thread: string;
  readonly end: 'male' | 'female';
  /** From the nearest crest that a made part may have; positive: too large. */
  readonly offMm: number;
}

/** Stages 6 and 7 together: what a measurement and the readings amount to. */
export interface Conclusion {
  /** Sorted by probability, highest first. */
  readonly threads: readonly ThreadCandidate[];
  readonly connections: readonly ConnectionCandidate[];
  readonly decision: Decision;
  readonly contradictions: readonly Contradiction[];
  /** Which end this is, where the evidence says so. */
  readonly end: 'male' | 'female' | null;
  /** Which way the thread winds, where anything says so. */
  readonly hand: 'right' | 'left' | null;
  readonly nearest: Nearest | null;
}
