import { z } from 'zod';

export const threadSystems = ['UN', 'M', 'G', 'R', 'NPT'] as const;

const range = z.strictObject({ minMm: z.number().positive(), maxMm: z.number().positive() });

/** Where a made part's crests lie, from its tolerance class: diameters over the crests, mm. */
export type CrestRange = z.infer<typeof range>;

/** Lengths of a tapered thread, mm along the axis from the small end. */
const taperPlanes = z.strictObject({
  /** From the small end to the plane where the basic diameters hold. */
  gaugeLengthMm: z.number().positive(),
  /** Either way, along the axis. */
  gaugeToleranceMm: z.number().positive(),
  /** Of the threads that make up. */
  usefulLengthMm: z.number().positive(),
  majorAtSmallEndMm: z.number().positive(),
  pitchDiameterAtSmallEndMm: z.number().positive(),
});

/** One screw thread. Basic diameters in mm; on a tapered thread they hold at the gauge plane,
 *  but for NPT `basicMajorMm` is the pipe's outside diameter, as ASME B1.20.1 tabulates it. */
export const threadSchema = z.strictObject({
  system: z.enum(threadSystems),
  designation: z.string().min(1),
  series: z.string().min(1),
  tpi: z.number().positive().nullable(),
  pitchMm: z.number().positive(),
  basicMajorMm: z.number().positive(),
  pitchDiameterMm: z.number().positive(),
  /** Basic minor diameter of the internal thread: what a caliper finds across a female end. */
  minorInternalMm: z.number().positive(),
  flankAngleDeg: z.union([z.literal(60), z.literal(55)]),
  /** On diameter, mm per mm. */
  taper: z.number().min(0),
  taperPlanes: taperPlanes.nullable(),
  /** Class of the external thread behind `crests`, e.g. '2A', '6g', 'B'. */
  externalClass: z.string(),
  internalClass: z.string(),
  /** External thread, over its crests. On tapers: at the gauge plane. */
  crests: range,
  /** Internal thread, across its crests. */
  bore: range,
  source: z.string().min(1),
  /** False for a row that no measurement can tell from another row, which stands for both. */
  separable: z.boolean(),
});
export type Thread = z.infer<typeof threadSchema>;

/** Of a tapered end, from its last useful turn to the hex: about three turns (common practice). The
 *  short metric tapers are no longer than they are useful. */
export function runOutMm({ series, pitchMm }: Pick<Thread, 'series' | 'pitchMm'>): number {
  return series === 'taper' ? 0 : 3 * pitchMm;
}
