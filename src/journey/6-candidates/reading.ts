import { z } from 'zod';
import type { ReadOnly } from '../../quantity/read-only';
import { line } from '../schema-bounds';
import { askableKinds, endTypes, gaugedCones, marks, seats } from './reading-choices';

// Stages import the types alone: the schema is loaded where sheets are read.

const length = z.number().positive().max(1e4);

export const readingSchema = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('pitch-gauge'),
    pitchMm: z.number().positive().max(1000),
    text: line,
  }),
  /** Crests counted against a rule: this many turns in this length. */
  z.object({
    kind: z.literal('turns-over'),
    turns: z.number().positive().max(1000),
    overMm: length,
    text: line,
  }),
  /** Over the crests of a male end (or the head of a flange), or across the crests of a female
   *  end. */
  z.object({ kind: z.enum(['caliper-od', 'caliper-id', 'rule-od']), mm: length, text: line }),
  /** Of a flange head; between its bolts, the longer way; across the flats of a hex; across the
   *  narrow end of the cone that stands in a nut. */
  z.object({
    kind: z.enum(['flange-thickness', 'bolt-spacing', 'hex', 'nose-od']),
    mm: length,
    text: line,
  }),
  /** The tube that the end takes (its bore in the end serves too); null: it takes none. */
  z.object({ kind: z.literal('tube-od'), mm: length.nullable(), text: line }),
  /** `seat` is by eye: flares of 30°, 37° and 45° look alike. `other-seat` denies the photo's
   *  claim: whatever it shows, this it is not. */
  z.object({ kind: z.enum(['seat', 'other-seat']), seat: z.enum(seats), text: line }),
  z.object({ kind: z.literal('seat-gauge'), cone: z.enum(gaugedCones), text: line }),
  /** A cone on a male end: across its wide and its narrow end, and the length between them. Half
   *  the difference over the length is the tangent of its angle to the axis. */
  z.object({
    kind: z.literal('cone-size'),
    wideMm: length,
    narrowMm: z.number().nonnegative().max(1e4),
    overMm: length,
    text: line,
  }),
  z.object({ kind: z.literal('end-type'), type: z.enum(endTypes), text: line }),
  /** Angle of the thread-form gauge that sits in the thread without light. */
  z.object({
    kind: z.literal('flank'),
    flankDeg: z.union([z.literal(55), z.literal(60)]),
    text: line,
  }),
  /** Whitworth crests are rounded, those of the 60° forms are cut flat. */
  z.object({ kind: z.literal('crest-form'), crest: z.enum(['rounded', 'flat']), text: line }),
  z.object({ kind: z.literal('taper'), taper: z.enum(['tapered', 'straight']), text: line }),
  z.object({ kind: z.literal('marking'), mark: z.enum(marks), text: line }),
  /** Which way it screws on. */
  z.object({ kind: z.literal('hand'), hand: z.enum(['right', 'left']), text: line }),
  /** Asked, and not to be had: it is not asked again. */
  z.object({ kind: z.literal('cannot-tell'), of: z.enum(askableKinds), text: line }),
]);

/** What a person measured or saw. `text` is the value as typed: `${kind}=${text}` reads back as the
 *  same reading, and how it is written ('11/16in', '17.2mm') says how finely it was read. */
export type Reading = ReadOnly<z.infer<typeof readingSchema>>;
export type ReadingKind = Reading['kind'];
