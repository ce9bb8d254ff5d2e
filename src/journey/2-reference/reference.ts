import type { FoundCard } from '../2-card-pose/find-card';
import type { ReferenceKind } from '../identification';
import type { PhotoPoint } from '../overlay';

/** What a photo is measured against, as far as later stages ask: a camera over the plane z = 0 on which the
 *  fitting lies, in the frame of the scale card (its middle is the reference's). */
export interface Reference extends FoundCard {
  readonly kind: ReferenceKind;
  /** Height of the face over that plane, mm. */
  readonly faceMm: number;
  /** The face's four corners in the photo, clockwise. */
  readonly outline: readonly PhotoPoint[];
  /** Whether the face is brighter than what lies around it. */
  readonly brightInside: boolean;
  readonly search: SearchRegion;
}

export type PlanePoint = readonly [xMm: number, yMm: number];

/** Where on the plane z = 0 the fitting may lie. */
export interface SearchRegion {
  readonly polygon: readonly PlanePoint[];
  /** What lies in it and is no fitting: the card itself, with its shadow. */
  readonly holes: readonly (readonly PlanePoint[])[];
  /** What the fitting lies on, against white: as the scale card's two fields. Null where what is looked at
   *  tells: the card's window, the ground beside a rule. */
  readonly field: 'light' | 'dark' | null;
}
