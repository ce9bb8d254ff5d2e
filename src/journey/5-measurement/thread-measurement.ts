import type { Estimate } from '../../quantity/estimate';

/** Where uncertainty comes from. Shares are one standard uncertainty each, in mm. */
export interface BudgetRow {
  readonly source:
    | 'edge-noise'
    | 'edge-bias'
    | 'focal-length'
    | 'height'
    | 'tilt'
    | 'print-scale'
    | 'card-bow'
    | 'thread-form';
  readonly pitchMm: number;
  readonly majorDiameterMm: number;
}

/** What the photo says of the thread. Plain data: stages 6–8, the sheet and the
 *  command line use it as it is. A quantity the photo does not resolve is null. */
export interface ThreadMeasurement {
  /** Absent: male. */
  readonly end?: 'male' | 'female' | undefined;
  readonly pitchMm: Estimate;
  /** Over the crests as they are; on a tapered thread at the middle of the measured zone. Of a female end over the
   *  crests inside, which is its minor diameter. */
  readonly majorDiameterMm: Estimate;
  /** The diameter's error as it is spread, in parts about the same value, shares adding to 1; `u` covers as much as all
   *  of them. Absent: one part, with the stated u. */
  readonly diameterParts?: readonly DiameterPart[] | undefined;
  /** Between pitch and major diameter, −1…1. */
  readonly correlation: number;
  /** On diameter, mm per mm, positive when growing away from the free end. */
  readonly taper: Estimate | null;
  /** Included angle between the flanks. */
  readonly flankAngleDeg: Estimate | null;
  readonly noseHalfAngleDeg: Estimate | null;
  /** Of the hex beside the thread; absent from sheets that are older than it. */
  readonly hexAcrossFlatsMm?: Estimate | null | undefined;
  readonly turns: number;
  readonly hand: 'right' | 'left' | null;
  readonly starts: number | null;
  /** Axial distance from the free end's first crest to the middle of the measured zone. */
  readonly middleFromEndMm: number | null;
  readonly budget: readonly BudgetRow[];
  /** Other periods that the photo leaves possible as the pitch, over the stated one, with their
   *  probability; the stated one has the rest. */
  readonly otherPeriods?: readonly OtherPeriod[] | undefined;
}

export interface OtherPeriod {
  readonly ratio: number;
  readonly share: number;
}

export interface DiameterPart {
  readonly share: number;
  /** Standard uncertainty, mm. */
  readonly uMm: number;
}
