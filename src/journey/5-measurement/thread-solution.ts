import type { Estimate } from '../../quantity/estimate';
import type { RatedPeriod } from '../4-limbs/seat-thread';
import type { AxisFrame, Extent } from '../4-thread-signal/axis-frame';
import type { FitAsMade } from './fit-as-made';
import type { OtherPeriod } from './thread-measurement';

/** A period that was weighed, with what the outline said for it: a logarithm. */
export interface Rival {
  readonly period: RatedPeriod;
  readonly spoken: number;
}

export interface Resting {
  readonly on: 'hex' | 'unknown';
  /** Of the axis over the card. */
  readonly heightMm: number;
  readonly uMm: number;
}

/** Everything stage 5 knows of one thread; uncertainty.ts turns it into a measurement. */
export interface ThreadSolution extends FitAsMade {
  readonly frame: AxisFrame;
  readonly resting: Resting;
  readonly hexHalfWidthMm: number | null;
  readonly zone: Extent;
  readonly middleS: number;
  readonly mmPerPx: number;
  /** What limbs and surface knew before the outline was fitted. */
  readonly known: Known;
  /** Which way the helix climbs, when one way explains the outline clearly better. */
  readonly hand: 'right' | 'left' | null;
}

/** What limbs and surface know of a thread. */
export interface Known {
  /** The pitch by the surface alone. */
  readonly surfaceMm: number;
  readonly radius: Estimate;
  /** What else may be the pitch. */
  readonly others: readonly OtherPeriod[];
  readonly rivals: readonly Rival[];
  /** Standard uncertainty of the radius by the limbs' own account, mm. */
  readonly uLimbMm: number;
  /** What the crests' phases leave to doubt of the pitch: their u, and how far they lie from the surface, mm. */
  readonly uPhasesMm: number;
  /** How well the limb that shows less shows its crests (close-lines.ts). */
  readonly limbsShown: number;
  /** How clear the surface's pattern is at this pitch: logarithm of its score. */
  readonly score: number;
  /** Whether the part lies on black. */
  readonly dark: boolean;
}
