import type { CrestRange, Thread } from '../thread';

/** Tolerance classes of external threads that fittings are made to; the usual one of each standard
 *  stands first (common practice). */
export const classesBySystem = {
  UN: ['2A', '3A'],
  M: ['6g', '6h'],
  G: ['A', 'B'],
  R: [],
  NPT: [],
} as const;

export type ThreadClass = (typeof classesBySystem)[Thread['system']][number];

/** Limits of size of an external thread, diameters in mm. */
export interface ClassLimits {
  readonly thread: string;
  readonly class: ThreadClass;
  /** Over the crests. */
  readonly major: CrestRange;
  /** What GO and NOT GO rings judge. */
  readonly pitchDiameter: CrestRange;
  readonly source: string;
}
