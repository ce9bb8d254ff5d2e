import { z } from 'zod';
import { wearAnswers } from '../wear/wear-readings';
import { line, word } from './schema-bounds';

const caliperSchema = z
  .object({ mm: z.number().positive().max(1e4), text: line })
  .nullable()
  .default(null);
const answer = <const A extends readonly [string, ...string[]]>(answers: A) =>
  z.enum(answers).nullable().default(null);

export const wearReadingsSchema = z.object({
  seal: answer(wearAnswers.seal),
  firstTurns: answer(wearAnswers.firstTurns),
  byHand: answer(wearAnswers.byHand),
  goRing: answer(wearAnswers.goRing),
  notGoRing: answer(wearAnswers.notGoRing),
  caliper: z
    .object({ end: caliperSchema, middle: caliperSchema, last: caliperSchema })
    .default({ end: null, middle: null, last: null }),
  ringTurns: z.number().min(-100).max(100).nullable().default(null),
});

/** The question whether this one is still good. */
export const wearSchema = z.object({
  /** Which it should be; null: the one found. */
  thread: word.nullable(),
  /** Null: the usual class of its standard. */
  class: word.nullable(),
  readings: wearReadingsSchema,
});

export type WearPart = z.infer<typeof wearSchema>;
