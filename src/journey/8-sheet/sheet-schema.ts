import { z } from 'zod';
import { estimateSchema } from '../../quantity/estimate';
import type { ReadOnly } from '../../quantity/read-only';
import { measurementSchema } from '../5-measurement/thread-measurement';
import { connectionEndSchema } from '../6-candidates/candidate';
import { readingSchema } from '../6-candidates/reading';
import { conclusionSchema } from '../7-next-reading/decision';
import {
  askedSchema,
  barsSchema,
  correctionsSchema,
  noteSchema,
  otherEndSchema,
  referenceSchema,
  rulerSchema,
} from '../identification-schema';
import { overlaySchema, profileSchema } from '../overlay';
import { line, text, time, word } from '../schema-bounds';
import { crestHeightSchema } from '../wear/crest-height-schema';
import { wearSchema } from '../wear/wear-schema';

export const sheetVersion = 1;
export const maxShots = 8;

/** One photo of the fitting and what it gave. Its bytes travel beside the sheet, in the same order. */
const shotSchema = z.object({
  photo: z.object({
    /** As stored, before orientation. */
    widthPx: z.number().int().positive().max(65_535),
    heightPx: z.number().int().positive().max(65_535),
    orientation: z.number().int().min(1).max(8),
    focal35Mm: z.number().positive().max(5000).nullable(),
    // The first sheets did not say.
    flashFired: z.boolean().default(false),
    /** A picture that came through a messenger: fewer pixels than the sender measured. */
    recompressed: z.boolean(),
  }),
  reference: referenceSchema,
  measurement: measurementSchema,
  /** Null when the measurement came without its drawing, from the code on a shared picture. */
  overlay: overlaySchema.nullable(),
  profile: profileSchema.nullable(),
  // Older sheets have neither.
  crests: z.array(crestHeightSchema).max(2000).default([]),
  /** Ends that the shot measured besides its own. */
  otherEnds: z.array(otherEndSchema).max(3).default([]),
  notes: z.array(noteSchema).max(50),
  /** Print check applied, with the name it is kept under. */
  bars: barsSchema.extend({ name: word.nullable() }).nullable(),
  // The first sheets looked for the card alone.
  asked: askedSchema.default({ kind: 'auto', corners: null }),
  ruler: rulerSchema.nullable(),
  corrections: correctionsSchema.nullable(),
});

/** Who measured or judged: the one who made the sheet, or the counter it was sent to. */
export const party = z.enum(['sender', 'counter']);

/** A measurement that a later one has taken the place of. */
const earlierSchema = z.object({
  at: time,
  by: party,
  pitchMm: estimateSchema,
  majorDiameterMm: estimateSchema,
});

export const counterSchema = z.object({
  verdict: z.enum(['open', 'confirmed', 'rejected']),
  /** What the counter confirms, in its own words if need be; null where it left the sheet's own
   *  decision as it was. */
  identified: z
    .object({ thread: word.nullable(), connection: connectionEndSchema.nullable() })
    .nullable()
    .default(null),
  /** Whoever judged, as they call themselves. */
  by: word.default(''),
  remarks: text,
  /** The counter's own part numbers. */
  parts: z.array(z.object({ number: word, note: line })).max(50),
  at: time,
});

export const sheetSchema = z.object({
  format: z.literal('crestwise-sheet'),
  version: z.literal(sheetVersion),
  id: z.uuid(),
  createdAt: time,
  updatedAt: time,
  appVersion: word,
  title: line,
  remarks: text,
  shots: z.array(shotSchema).max(maxShots),
  /** What the conclusion was drawn from: the shot's, or several shots combined. Null for
   *  readings alone. */
  measurement: measurementSchema.nullable(),
  /** When, and by whom; the first sheets were measured when they were made. */
  measuredAt: time.nullable().default(null),
  measuredBy: party.default('sender'),
  /** Oldest first. */
  earlier: z.array(earlierSchema).max(20).default([]),
  readings: z.array(readingSchema).max(100),
  conclusion: conclusionSchema,
  counter: counterSchema.nullable(),
  /** The sender cannot tell more: the counter is to decide. */
  handedOver: z.boolean().default(false),
  /** Came to this device from elsewhere: it is judged here, not asked about. */
  received: z.boolean().default(false),
  /** Null while nobody asked. */
  wear: wearSchema.nullable().default(null),
});

/** The identification of one fitting. */
export type Sheet = ReadOnly<z.infer<typeof sheetSchema>>;
export type Shot = Sheet['shots'][number];
export type CounterAnswer = NonNullable<Sheet['counter']>;
export type Party = Sheet['measuredBy'];
export type EarlierMeasurement = Sheet['earlier'][number];
export type PrintCheckUsed = NonNullable<Shot['bars']>;
