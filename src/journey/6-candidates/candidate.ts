import type { EndType } from '../../standards/connections/connection';
import type { Seat } from './reading';

export type ThreadSystem = 'UN' | 'M' | 'G' | 'R' | 'NPT';

export type ThreadCandidate =
  | {
      readonly system: ThreadSystem;
      readonly designation: string;
      readonly basicMajorMm: number;
      readonly pitchMm: number;
      readonly probability: number;
    }
  /** None of the listed threads. */
  | { readonly system: null; readonly probability: number };

export interface ConnectionCandidate {
  /** The standard's number where it has one, e.g. 'ISO 8434-3'. */
  readonly family: string;
  readonly size: string;
  /** Null while both ends, several kinds of end or several forms are open. */
  readonly end: 'male' | 'female' | null;
  readonly endType: EndType | null;
  readonly form: string | null;
  readonly seat: Seat | null;
  readonly probability: number;
}
