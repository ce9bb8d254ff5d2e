import type { Seat } from '../../journey/6-candidates/reading-choices';

/** What the drawing needs from the tables, mm. Null where a table has no such row. */
export interface SectionDimensions {
  readonly majorMm: number;
  readonly pitchMm: number;
  /** Flank angle 55 or 60. */
  readonly flankAngleDeg: number;
  /** On diameter, mm per mm. */
  readonly taper: number;
  readonly end: 'male' | 'female';
  /** Across the crests of the internal thread. */
  readonly minorInternalMm: number;
  /** Of a female end: its seat points towards the mouth. */
  readonly coneOutwards: boolean;
  readonly seat: Seat;
  readonly sealsOnThread: boolean;
  /** From crest to root of the external thread. */
  readonly depthMm: number;
  readonly tubeOdMm: number | null;
  readonly oRing: { readonly insideMm: number; readonly sectionMm: number } | null;
}

export type SectionPoint = readonly [x: number, r: number];

/** Frame: x along the axis from the free end, r outwards, mm. */
export interface SectionShape {
  readonly lengthMm: number;
  readonly outerMm: number;
  /** Outline of the cut material, upper half. */
  readonly cut: readonly SectionPoint[];
  /** A sleeve inside the nut, hatched the other way. Empty where there is none. */
  readonly insert: readonly SectionPoint[];
  /** Outside view, from the free end along the outside to the far end. */
  readonly outside: readonly SectionPoint[];
  /** The line it seals on. */
  readonly seal: readonly SectionPoint[];
  /** Cross-sections of O-rings in place. */
  readonly rings: readonly { readonly x: number; readonly r: number; readonly radius: number }[];
  readonly threadFromMm: number;
  readonly threadToMm: number;
  readonly minorMm: number;
  readonly boreMm: number;
  /** Opening of the bore at the free end. */
  readonly mouthMm: number;
}

export interface Nose {
  readonly lengthMm: number;
  readonly outside: readonly SectionPoint[];
  /** From the hex end of the bore back to the nose. */
  readonly inside: readonly SectionPoint[];
  readonly seal: readonly SectionPoint[];
  readonly rings: SectionShape['rings'];
  /** Where the nose asks for a bore of its own, its radius. */
  readonly boreMm?: number;
  /** A flared tube inside, from its inner edge round the flare to its outer one; its inner radius. */
  readonly tube?: { readonly front: readonly SectionPoint[]; readonly inside: number };
}
