import { z } from 'zod';
import type { ReadOnly } from '../../quantity/read-only';
import { threadSystems } from '../../standards/thread';
import { mm, share, word } from '../schema-bounds';
import { endTypes } from './reading-choices';

// Stages import the types alone: the schemas are loaded where sheets are read.

export const threadCandidateSchema = z.discriminatedUnion('system', [
  z.object({
    system: z.enum(threadSystems),
    /** A left-hand thread ends in ' LH'. */
    designation: word,
    basicMajorMm: mm,
    pitchMm: mm,
    probability: share,
  }),
  /** None of the listed threads. */
  z.object({ system: z.null(), probability: share }),
]);

export const connectionEndSchema = z.object({
  /** The standard's number where it has one, e.g. 'ISO 8434-3'. */
  family: word,
  size: word,
  // The first sheets kept family and size alone.
  end: z.enum(['male', 'female']).nullable().default(null),
  form: word.nullable().default(null),
  endTypes: z.array(z.enum(endTypes)).max(20).readonly().default([]),
});

export const connectionCandidateSchema = connectionEndSchema.extend({ probability: share });

export type ThreadCandidate = ReadOnly<z.infer<typeof threadCandidateSchema>>;
/** One connection as far as it is known: null, or several end types, where that is open. */
export type ConnectionEnd = ReadOnly<z.infer<typeof connectionEndSchema>>;
export type ConnectionCandidate = ReadOnly<z.infer<typeof connectionCandidateSchema>>;
