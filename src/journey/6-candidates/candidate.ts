import type { EndType } from '../../standards/connections/connection';

export type ThreadSystem = 'UN' | 'M' | 'G' | 'R' | 'NPT';

export type ThreadCandidate =
  | {
      readonly system: ThreadSystem;
      /** A left-hand thread ends in ' LH'. */
      readonly designation: string;
      readonly basicMajorMm: number;
      readonly pitchMm: number;
      readonly probability: number;
    }
  /** None of the listed threads. */
  | { readonly system: null; readonly probability: number };

/** One connection as far as it is known: null, or several end types, where that is open. */
export interface ConnectionEnd {
  /** The standard's number where it has one, e.g. 'ISO 8434-3'. */
  readonly family: string;
  readonly size: string;
  readonly end: 'male' | 'female' | null;
  readonly form: string | null;
  readonly endTypes: readonly EndType[];
}

export interface ConnectionCandidate extends ConnectionEnd {
  readonly probability: number;
}
