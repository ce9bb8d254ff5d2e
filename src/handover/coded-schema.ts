import { z } from 'zod';
import { referenceKindSchema } from '../journey/identification-schema';

const number = z.number();
const estimate = z.tuple([number, number]);
const points = z.array(number).max(400);

const pairs = z.array(z.tuple([number, number])).max(10);

const measurement = z.object({
  p: estimate,
  d: estimate,
  c: number,
  t: estimate.optional(),
  f: estimate.optional(),
  n: estimate.optional(),
  u: number,
  h: z.enum(['right', 'left']).optional(),
  s: number.optional(),
  e: number.optional(),
  b: z.array(z.tuple([z.string().max(40), number, number])).max(50),
  /** Across flats. Later than the rest, and dropped by readers that do not know it. */
  a: estimate.optional(),
  /** A female end; later still. */
  g: z.literal(1).optional(),
  /** What the end looks like: thousandths of three cones, of an O-ring and of a shoulder. */
  q: z.array(z.number().int().min(0).max(1000)).length(5).optional(),
  /** What the thread looks like: thousandths of a 55° profile, of NPT's, and of a taper. */
  v: z.array(z.number().int().min(0).max(1000)).length(3).optional(),
  /** Parts of diameter and taper, and other periods, in pairs: share and u, ratio and share. Latest. */
  k: pairs.optional(),
  l: pairs.optional(),
  o: pairs.optional(),
});

/** A sheet as the code on a shared picture carries it: short keys, rounded numbers, no arrays that
 *  grow with the photo. Only the shape is checked here; what it unfolds to goes through the sheet's
 *  own schema. Keys and order are the format: change them only with the version. */
export const codedSchema = z.object({
  v: z.literal(1),
  id: z.string().max(40),
  /** Created, changed: seconds since 1970. */
  t: z.tuple([number, number]),
  a: z.string().max(40),
  n: z.string().max(400).optional(),
  r: z.string().max(4000).optional(),
  /** Photo within the picture: width, height, width of the picture, all px. */
  p: z.tuple([number, number, number]),
  f: number.optional(),
  /** The flash fired; later than the rest, and dropped by readers that do not know it. */
  i: z.literal(1).optional(),
  s: z
    .object({
      k: referenceKindSchema,
      /** px per mm of the photo within the picture; axis height, camera height, tilt. */
      q: z.tuple([number, number.nullable(), number.nullable(), number.nullable()]),
      d: z.enum(['light', 'dark']).optional(),
      o: z.array(z.string().max(40)).max(50).optional(),
      /** Print check: both bars, uncertainty, name. */
      b: z.tuple([number, number, number, z.string().max(120).nullable()]).optional(),
    })
    .optional(),
  m: measurement.optional(),
  /** Other ends of the part: measurement and axis; later than the rest, and dropped by readers that do
   *  not know them. */
  o: z
    .array(z.object({ m: measurement, a: points }))
    .max(3)
    .optional(),
  l: z
    .object({
      a: points.optional(),
      c: points,
      /** Crests as x, y, side (0 left, 1 right), axial position. */
      k: points,
      /** What is drawn of the seats: which (drawn-seats.ts), of which end, lines. Later than the rest, and dropped by
       *  readers that do not know it. */
      e: z
        .array(z.tuple([number, number, z.array(points).min(1).max(4)]))
        .max(8)
        .optional(),
    })
    .optional(),
  g: z.array(z.unknown()).max(100),
  c: z.object({
    t: z.array(z.array(z.unknown()).max(5)).max(20),
    c: z.array(z.tuple([z.string().max(120), z.string().max(120), number])).max(20),
    d: z.unknown(),
    /** Which end. */
    e: z.enum(['male', 'female']).optional(),
    /** Gender, form and make of each connection, in their order; which way the thread winds; the
     *  nearest thread. Later than the rest, and dropped by readers that do not know them. */
    w: z.array(z.array(z.unknown()).max(3)).max(20).optional(),
    h: z.enum(['right', 'left']).optional(),
    n: z.unknown().optional(),
    /** Contradictions. */
    x: z.array(z.unknown()).max(101).optional(),
  }),
  k: z.unknown().optional(),
  /** Later than the rest: when and by whom (1: the counter) it was measured last, and what had been
   *  measured before, as time, party, pitch, diameter. */
  w: z.tuple([number, number]).optional(),
  y: z
    .array(z.tuple([number, number, estimate, estimate]))
    .max(20)
    .optional(),
  /** The sender lets the counter decide. */
  j: z.literal(1).optional(),
  /** Wear: thread, class, what was answered; later than the rest, and dropped by readers that do not
   *  know it. */
  z: z
    .object({
      t: z.string().max(120).optional(),
      c: z.string().max(120).optional(),
      r: z.record(z.string().max(20), z.unknown()),
    })
    .optional(),
});
export type Coded = z.infer<typeof codedSchema>;
