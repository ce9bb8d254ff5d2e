import type { z } from 'zod';
import type { ReadOnly } from '../../quantity/read-only';
import type { wearReadingsSchema } from './wear-schema';

export type WearReadings = ReadOnly<z.infer<typeof wearReadingsSchema>>;

export const noWearReadings: WearReadings = {
  seal: null,
  firstTurns: null,
  byHand: null,
  goRing: null,
  notGoRing: null,
  caliper: { end: null, middle: null, last: null },
  ringTurns: null,
};
