import { z } from 'zod';
import type { ReadOnly } from '../../quantity/read-only';
import { line, word } from '../schema-bounds';
import { wearAnswers } from './wear-answers';

// Others import the types alone: the schemas are loaded where sheets are read.

const caliperSchema = z.object({
  mm: z.number().positive().max(1e4),
  /** As typed, which says how finely it was read. */
  text: line,
});
const place = caliperSchema.nullable().default(null);
const answer = <const A extends readonly [string, ...string[]]>(answers: A) =>
  z.enum(answers).nullable().default(null);

export const wearReadingsSchema = z.object({
  seal: answer(wearAnswers.seal),
  firstTurns: answer(wearAnswers.firstTurns),
  byHand: answer(wearAnswers.byHand),
  goRing: answer(wearAnswers.goRing),
  notGoRing: answer(wearAnswers.notGoRing),
  caliper: z
    .object({ end: place, middle: place, last: place })
    .default({ end: null, middle: null, last: null }),
  /** Of a taper: turns that the small end stands past the face of its hand-tight gauge ring; negative short
   *  of it. */
  ringTurns: z.number().min(-100).max(100).nullable().default(null),
});

export const wearSchema = z.object({
  /** Which it should be; null: the one found. */
  thread: word.nullable(),
  /** Null: the usual class of its standard. */
  class: word.nullable(),
  readings: wearReadingsSchema,
});

/** The question whether this one is still good. */
export type WearPart = ReadOnly<z.infer<typeof wearSchema>>;
