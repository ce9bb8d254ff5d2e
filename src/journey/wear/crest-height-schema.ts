import { z } from 'zod';
import { mm } from '../schema-bounds';

export const crestHeightSchema = z.object({
  side: z.enum(['left', 'right']),
  /** Counted from the free end, 1 for the first crest of this side in the measured zone. */
  turn: z.number().int().positive().max(1000),
  /** Along the axis from the zone's free end. */
  atMm: mm,
  /** Radius from the thread's axis. */
  heightMm: mm,
  /** One standard uncertainty of the height. */
  u: z.number().nonnegative(),
  /** The part of it that the crest does not share with the others: what comparing two of them asks for. */
  uOwnMm: z.number().nonnegative(),
  /** How far it falls short of the middle one of its side; null while that may be chance. */
  shortMm: mm.nullable(),
});
