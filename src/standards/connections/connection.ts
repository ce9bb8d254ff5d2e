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
  'none',
] as const;

/** What kind of end it is, as a person at the bench would say. */
export const endTypes = ['fixed', 'swivel-nut', 'stud', 'port', 'tube-nut', 'flange-head'] as const;
export type EndType = (typeof endTypes)[number];

export const oRingSchema = z.strictObject({
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
  endType: z.enum(endTypes),
  /** Sixteenths of an inch, for dash-sized families. */
  dash: z.number().positive().nullable(),
  tubeOdMm: z.number().positive().nullable(),
  /** Metric tubes the same end takes, through its sleeve or nut. */
  metricTubesMm: z.array(z.number().positive()).readonly(),
  hoseBoreMm: z.number().positive().nullable(),
  /** Designation in the thread tables; null for flange heads. */
  thread: z.string().nullable(),
  flangeHead: z.strictObject({ diameterMm: z.number(), thicknessMm: z.number() }).nullable(),
  seat: z.enum(seatForms),
  /** Of a conical seat, from the axis to the cone. */
  seatHalfAngleDeg: z.number().positive().nullable(),
  /** True where this end shows the seat as a cone that points outwards. */
  coneOutwards: z.boolean(),
  sealing: z.enum(['o-ring', 'metal-cone', 'thread', 'face-ring', 'metal-edge']),
  oRing: oRingSchema.nullable(),
  source: z.string().min(1),
});
export type Connection = z.infer<typeof connectionSchema>;

const absent = {
  form: null,
  dash: null,
  tubeOdMm: null,
  metricTubesMm: [],
  hoseBoreMm: null,
  thread: null,
  flangeHead: null,
  seatHalfAngleDeg: null,
  coneOutwards: false,
  oRing: null,
} as const;

type Given = Omit<Connection, keyof typeof absent> & Partial<Connection>;

export function connection(given: Given): Connection {
  return { ...absent, ...given };
}

/** A dash is a sixteenth of an inch (common practice). */
export function dashMm(dash: number): number {
  return (dash * 25.4) / 16;
}
