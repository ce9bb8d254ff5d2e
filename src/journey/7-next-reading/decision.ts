import { z } from 'zod';
import type { ReadOnly } from '../../quantity/read-only';
import {
  connectionCandidateSchema,
  connectionEndSchema,
  threadCandidateSchema,
} from '../6-candidates/candidate';
import { askableKinds } from '../6-candidates/reading-choices';
import { line, mm, text, word } from '../schema-bounds';
import { allTools } from './tools';

// Stages import the types alone: the schemas are loaded where sheets are read.

const askable = z.enum(askableKinds);

const fitSchema = z.object({
  /** As the reading would be written: '16tpi', 'cone-37', '26.5…26.9mm', 'tapered'. */
  value: word,
  /** Thread designations, or 'family size' where the reading separates connections. */
  candidates: z.array(word).max(100),
});

const askSchema = z.object({
  reading: askable,
  why: text,
  gainBits: z.number(),
  // Left out of the code on a shared picture.
  fits: z.array(fitSchema).max(100).default([]),
});

const decisionSchema = z.object({
  state: z.enum(['settled', 'needs-reading', 'unlisted']),
  /** Designation (a left-hand thread ends in ' LH'), or null while open. */
  thread: word.nullable(),
  connection: connectionEndSchema.nullable(),
  ask: askSchema.nullable(),
  /** Where nothing at hand would settle it: what would. */
  missing: z
    .object({ reading: askable, tools: z.array(z.enum(allTools)).max(20) })
    .nullable()
    .default(null),
});

const contradictionSchema = z.discriminatedUnion('source', [
  z.object({ source: z.literal('photo') }),
  z.object({ source: z.literal('reading'), index: z.number().int().nonnegative(), text: line }),
]);

const nearestSchema = z.object({
  thread: word,
  end: z.enum(['male', 'female']),
  /** From the nearest crest that a made part may have; positive: too large. */
  offMm: mm,
});

export const conclusionSchema = z.object({
  /** Sorted by probability, highest first. */
  threads: z.array(threadCandidateSchema).max(1000),
  connections: z.array(connectionCandidateSchema).max(1000),
  decision: decisionSchema,
  contradictions: z.array(contradictionSchema).max(101).default([]),
  /** Which end this is, where the evidence says so. */
  end: z.enum(['male', 'female']).nullable().default(null),
  /** Which way the thread winds, where anything says so. */
  hand: z.enum(['right', 'left']).nullable().default(null),
  nearest: nearestSchema.nullable().default(null),
});

/** Which candidates an outcome of the asked reading would speak for: the reason in a form that a
 *  page can put into any language. */
export type Fit = ReadOnly<z.infer<typeof fitSchema>>;
export type Ask = ReadOnly<z.infer<typeof askSchema>>;
export type Decision = ReadOnly<z.infer<typeof decisionSchema>>;
/** A source that the rest of the evidence speaks against: 'photo' or the index of a reading.
 *  Both sides are kept; nothing is settled until a third source agrees with one of them. */
export type Contradiction = ReadOnly<z.infer<typeof contradictionSchema>>;
/** Measured well, and no listed thread has this diameter: the one that comes closest. */
export type Nearest = ReadOnly<z.infer<typeof nearestSchema>>;
/** Stages 6 and 7 together: what a measurement and the readings amount to. */
export type Conclusion = ReadOnly<z.infer<typeof conclusionSchema>>;
