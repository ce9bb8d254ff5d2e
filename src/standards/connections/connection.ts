import { z } from 'zod';

/** What carries the sealing surface, in the words of the readings (journey stage 6). */
export const seatForms = [
  'flat-face-o-ring',
  'cone-37',
  'cone-45',
  'cone-24',
  'cone-60',
  'cone-30',
  'o-ring-at-hex',
  'flat-washer-face',
  // The raised cone at the bottom of an inverted-flare port, and the nut that presses on it.
  'cone-inverted',
  'none',
] as const;

/** How an end is made: what turns, and what it screws into or takes. */
export const endTypes = ['fixed', 'swivel-nut', 'tube-nut', 'stud', 'port', 'flange-head'] as const;
export type EndType = (typeof endTypes)[number];

const oRingSchema = z.strictObject({
  /** AS568 dash number, or ISO 3601 / the standard's own size as 'ID x section' in mm. */
  designation: z.string().min(1),
  innerDiameterMm: z.number().positive(),
  sectionMm: z.number().positive(),
  /** Usual hardness of the standard's own ring. */
  hardnessShoreA: z.number().int().nullable(),
});
export type ORing = z.infer<typeof oRingSchema>;

/** One end of one connection. */
export const connectionSchema = z.strictObject({
  /** The standard's number where it has one. */
  family: z.string().min(1),
  /** What the trade calls the family. */
  tradeName: z.string().min(1),
  size: z.string().min(1),
  /** Variant within the family that shares thread and size, or null. */
  form: z.string().nullable(),
  end: z.enum(['male', 'female']),
  /** What this row is made as, the commonest first. */
  endTypes: z.array(z.enum(endTypes)).min(1).readonly(),
  /** Sixteenths of an inch, for dash-sized families. */
  dash: z.number().positive().nullable(),
  tubeOdMm: z.number().positive().nullable(),
  /** Metric tubes that the same end takes; several share a dash. */
  metricTubesMm: z.array(z.number().positive()).readonly(),
  hoseBoreMm: z.number().positive().nullable(),
  /** Designation in the thread tables; null for flange heads. */
  thread: z.string().nullable(),
  flangeHead: z
    .strictObject({
      diameterMm: z.number(),
      thicknessMm: z.number(),
      /** Between the middles of the bolts, along and across. */
      boltsMm: z.tuple([z.number(), z.number()]),
    })
    .nullable(),
  seat: z.enum(seatForms),
  /** Of a conical seat, from the axis to the cone. */
  seatHalfAngleDeg: z.number().positive().nullable(),
  /** True where this end shows the seat as a cone that points outwards. */
  coneOutwards: z.boolean(),
  sealing: z.enum(['o-ring', 'metal-cone', 'thread', 'face-ring', 'metal-edge', 'washer']),
  oRing: oRingSchema.nullable(),
  /** Where that ring sits: on this end, or on the end it mates with. */
  oRingOn: z.enum(['this-end', 'mate']).nullable(),
  source: z.string().min(1),
});
export type Connection = z.infer<typeof connectionSchema>;

const absent = {
  form: null,
  dash: null,
  tubeOdMm: null,
  metricTubesMm: [] as readonly number[],
  hoseBoreMm: null,
  thread: null,
  flangeHead: null,
  seatHalfAngleDeg: null,
  coneOutwards: false,
  oRing: null,
  oRingOn: null,
} as const;

type Optional = keyof typeof absent;
type Given = Omit<Connection, Optional> & Partial<Pick<Connection, Optional>>;

export function connection(given: Given): Connection {
  const oRingOn = given.oRing ? (given.oRingOn ?? 'this-end') : null;
  return { ...absent, ...given, oRingOn };
}

/** Whether there is a seat to be told by its looks. */
export const hasSeat = ({ seat }: Pick<Connection, 'seat'>): boolean => seat !== 'none';

/** A stud or port may be sized by a tube, but takes none. */
export function takesTube({ endTypes }: Pick<Connection, 'endTypes'>): boolean {
  return !endTypes.includes('stud') && !endTypes.includes('port');
}

/** A dash is a sixteenth of an inch (common practice). */
export function dashMm(dash: number): number {
  return (dash * 25.4) / 16;
}
