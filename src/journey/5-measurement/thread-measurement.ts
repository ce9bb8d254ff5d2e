import { z } from 'zod';
import { estimateSchema } from '../../quantity/estimate';
import type { ReadOnly } from '../../quantity/read-only';
import { mm, share } from '../schema-bounds';

// Stages import the types alone: the schemas are loaded where sheets are read.

const budgetRowSchema = z.object({
  source: z.enum([
    'edge-noise',
    'edge-bias',
    'focal-length',
    'height',
    'tilt',
    'print-scale',
    'card-bow',
    'thread-form',
  ]),
  pitchMm: mm,
  majorDiameterMm: mm,
});

const otherPeriodSchema = z.object({ ratio: z.number().positive().max(20), share });

/** A part of how an error is spread: its share, and its standard uncertainty in the unit of what it belongs to. */
const spreadPartSchema = z.object({ share, u: z.number().nonnegative() });
const spreadParts = z.array(spreadPartSchema).min(1).max(4);

/** What a photo shows of an end: how likely each kind is, were all as common; each part adds to 1. */
const endShowsSchema = z.object({
  /** Before the thread's first turn. */
  nose: z.object({ none: share, 'cone-30': share, 'cone-37': share, 'cone-45': share }),
  /** Between its last turn and the hex. */
  base: z.object({ none: share, 'o-ring': share, shoulder: share }),
});

/** What the thread itself looks like, likewise. */
const threadShowsSchema = z.object({
  /** Flanks of 60° with flat crests, of 55° with round ones, or of 60° as deep as a pipe thread's. */
  profile: z.object({ '60': share, '55': share, npt: share }),
  taper: z.object({ straight: share, tapered: share }),
});

export const measurementSchema = z.object({
  /** Absent: male. */
  end: z.enum(['male', 'female']).optional(),
  pitchMm: estimateSchema,
  /** Over the crests as they are; on a tapered thread at the middle of the measured zone. Of a female end over the
   *  crests inside, which is its minor diameter. */
  majorDiameterMm: estimateSchema,
  /** The diameter's error as it is spread, in parts about the same value, shares adding to 1; `u` covers as much as
   *  all of them. Absent: one part, with the stated u. */
  diameterParts: spreadParts.optional(),
  /** Between pitch and major diameter. */
  correlation: z.number().min(-1).max(1),
  /** On diameter, mm per mm, positive when growing away from the free end. */
  taper: estimateSchema.nullable(),
  /** As `diameterParts`. */
  taperParts: spreadParts.optional(),
  /** Included angle between the flanks. */
  flankAngleDeg: estimateSchema.nullable(),
  noseHalfAngleDeg: estimateSchema.nullable(),
  /** Absent: nobody has looked. */
  endShows: endShowsSchema.optional(),
  threadShows: threadShowsSchema.optional(),
  /** Of the hex beside the thread; absent from sheets that are older than it. */
  hexAcrossFlatsMm: estimateSchema.nullable().optional(),
  turns: z.number().nonnegative(),
  hand: z.enum(['right', 'left']).nullable(),
  starts: z.number().int().positive().max(100).nullable(),
  /** Axial distance from the free end's first crest to the middle of the measured zone. */
  middleFromEndMm: mm.nullable(),
  budget: z.array(budgetRowSchema).max(50),
  /** Other periods that the photo leaves possible as the pitch, over the stated one, with their
   *  probability; the stated one has the rest. */
  otherPeriods: z.array(otherPeriodSchema).max(10).optional(),
});

/** Where uncertainty comes from. Shares are one standard uncertainty each, in mm. */
export type BudgetRow = ReadOnly<z.infer<typeof budgetRowSchema>>;
export type SpreadPart = ReadOnly<z.infer<typeof spreadPartSchema>>;
export type EndShows = ReadOnly<z.infer<typeof endShowsSchema>>;
export type ThreadShows = ReadOnly<z.infer<typeof threadShowsSchema>>;
export type OtherPeriod = ReadOnly<z.infer<typeof otherPeriodSchema>>;
/** What the photo says of the thread. Plain data: stages 6–8, the sheet and the
 *  command line use it as it is. A quantity the photo does not resolve is null. */
export type ThreadMeasurement = ReadOnly<z.infer<typeof measurementSchema>>;
