import { z } from 'zod';
import type { ReadOnly } from './read-only';

export const estimateSchema = z.object({
  value: z.number(),
  /** One standard uncertainty, in the unit of the value. */
  u: z.number().nonnegative(),
});

/** A measured quantity: best value and one standard uncertainty, same unit (JCGM 100:2008, 3.1). */
export type Estimate = ReadOnly<z.infer<typeof estimateSchema>>;
