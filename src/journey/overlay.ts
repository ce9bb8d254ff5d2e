import { z } from 'zod';
import type { ReadOnly } from '../quantity/read-only';
import { drawnSeats } from './drawn-seats';
import { mm, point } from './schema-bounds';

// Stages import the types alone: the schemas are loaded where sheets are read.

export const axisSchema = z.tuple([point, point]);
export const cornersSchema = z.array(point).length(4);

const crestMarkSchema = z.object({
  at: point,
  side: z.enum(['left', 'right']),
  /** Axial position along the axis from `axis[0]`. */
  axialMm: mm,
});

const endFeatureSchema = z.object({
  /** 0: the end that was measured; otherwise the shot's other ends, from 1. */
  end: z.number().int().min(0).max(3),
  seat: z.enum(drawnSeats),
  /** Of a cone its two sides, from the thread towards the free end; of a ring or a shoulder its two limbs. */
  lines: z.array(z.array(point).min(2).max(20)).min(1).max(4),
});

export const overlaySchema = z.object({
  widthPx: z.number().int().positive().max(1e5),
  heightPx: z.number().int().positive().max(1e5),
  markers: z
    .array(z.object({ id: z.number().int().min(0).max(1000), corners: z.array(point).max(4) }))
    .max(200),
  /** The four corners of a card's or sheet's face that gave the scale; none of the scale card's. */
  reference: z.union([cornersSchema, z.array(point).length(0)]).default([]),
  outline: z.array(z.array(point).max(20_000)).max(200),
  /** From the free end of the thread towards the hex, over the measured zone. */
  axis: axisSchema.nullable(),
  /** The two lines along which the view touches the crest cylinder or cone. */
  contactLines: z.array(axisSchema).max(20),
  crests: z.array(crestMarkSchema).max(2000),
  /** What the photo shows plainly of the seats. Absent: older than this, or none is shown. */
  ends: z.array(endFeatureSchema).max(8).optional(),
});

const radii = z.array(mm).max(20_000);
/** NaN is written as null where the outline is unusable. */
const seenRadii = z.array(mm.nullable()).max(20_000);

export const profileSchema = z
  .object({
    /** Axial positions, mm from `axis[0]`, shared by all arrays. */
    axialMm: radii,
    /** Outline radius from the axis. */
    leftMm: seenRadii,
    rightMm: seenRadii,
    leftFitMm: radii,
    rightFitMm: radii,
  })
  .refine(
    (p) =>
      [p.leftMm, p.rightMm, p.leftFitMm, p.rightFitMm].every((a) => a.length === p.axialMm.length),
    'profile arrays differ in length',
  );

/** In the upright full-size photo: pixels, x right, y down, pixel centres at integers. */
export type PhotoPoint = ReadOnly<z.infer<typeof point>>;
export type CrestMark = ReadOnly<z.infer<typeof crestMarkSchema>>;
export type EndFeature = ReadOnly<z.infer<typeof endFeatureSchema>>;
export type DrawnSeat = EndFeature['seat'];
/** What was found, for drawing over the photo. */
export type Overlay = ReadOnly<z.infer<typeof overlaySchema>>;
/** Radius profile of the outline over the measured zone, both sides, with the fitted period. */
export type CrestProfile = ReadOnly<z.infer<typeof profileSchema>>;
