import { z } from 'zod';

const threadSystem = z.enum(['UN', 'M', 'G', 'R', 'NPT']);
const point = z.tuple([z.number(), z.number(), z.number()]);

/** What is known of a photo with ground truth. World frame: origin at the card's centre, x right,
 *  y up, z out of the card, mm. Fields that scoring does not need are let through unread. */
export const truthSchema = z.looseObject({
  name: z.string(),
  designation: z.string(),
  system: threadSystem,
  basic_major_mm: z.number(),
  pitch_mm: z.number().positive(),
  /** On diameter. */
  taper: z.number(),
  crest_major_at_start_mm: z.number(),
  crest_major_at_end_mm: z.number(),
  axis_p0: point,
  axis_p1: point,
  /** None where the part has no hex: blocks, forged bodies. */
  hex_af_mm: z.number().optional(),
  gender: z.enum(['male', 'female']).optional(),
  /** Over the crests inside; how it stands or lies, and how long it is: female ends only. */
  minor_mm: z.number().positive().optional(),
  pose: z.enum(['standing', 'lying']).optional(),
  f_px: z.number(),
  k1: z.number(),
  /** Camera to world, rows of [right up back origin], and the lens's centre off the photo's, px; renders of
   *  fixtures/renderer. */
  camera: z
    .tuple([
      z.array(z.number()).length(4),
      z.array(z.number()).length(4),
      z.array(z.number()).length(4),
    ])
    .optional(),
  cxcy: z.tuple([z.number(), z.number()]).optional(),
  /** Of the upright photo, px. */
  width: z.number().positive().optional(),
  height: z.number().positive().optional(),
  distance_mm: z.number(),
  tilt_deg: z.number(),
  exif: z.enum(['f35', 'none']),
  field: z.enum(['light', 'dark']),
  finish: z.string(),
  /** What lit it, and its noise over that of a usual phone at 100 ISO; renders of fixtures/renderer. */
  light_kind: z.string().optional(),
  iso: z.number().positive().optional(),
  /** What use has done to single crests, in a word. */
  damage: z.string().nullish(),
  family: z.string().optional(),
  size: z.string().optional(),
  /** What the end looks like: 'cone', 'plain', 'flat_face'; the cone's half angle; the section of a ring at
   *  the hex; a turned shoulder. Of an adaptor, its other end, always plain, at `axis_rear`
   *  unless it says where its own thread lies (a bent body, a fitting with a tube). */
  nose: z.string().optional(),
  nose_half_angle_deg: z.number().nullish(),
  stud_oring: z.number().nullish(),
  collar: z.boolean().nullish(),
  axis_rear: point.optional(),
  other: z
    .looseObject({
      designation: z.string(),
      system: threadSystem,
      basic_major_mm: z.number(),
      pitch_mm: z.number(),
      taper: z.number(),
      thread_len_mm: z.number(),
      crest_major_at_start_mm: z.number(),
      crest_major_at_end_mm: z.number(),
      family: z.string().optional(),
      size: z.string().optional(),
      axis_p0: point.optional(),
      axis_p1: point.optional(),
    })
    .optional(),
  camera_height_mm: z.number().optional(),
  /** How the print-check bars were measured; synthetic photos only. */
  bars: z
    .object({ horizontalMm: z.number(), verticalMm: z.number(), uMm: z.number() })
    .nullable()
    .optional(),
});

export type Truth = z.infer<typeof truthSchema>;

/** An adaptor's other end as the truth of a photo of its own; null where there is none. */
export function otherEndOf(truth: Truth): Truth | null {
  const { other, axis_rear: rear, axis_p0: nose } = truth;
  if (!other || !rear) return null;
  const length = Math.hypot(...nose.map((x, i) => x - rear[i]!));
  const inward = nose.map((x, i) => rear[i]! + ((x - rear[i]!) / length) * other.thread_len_mm);
  return {
    ...truth,
    ...other,
    axis_p0: other.axis_p0 ?? rear,
    axis_p1: other.axis_p1 ?? (inward as Truth['axis_p1']),
    axis_rear: nose,
    // What the first end is, and what seals on it, is no part of the other.
    family: other.family,
    size: other.size,
    nose: truth.nose && 'plain',
    nose_half_angle_deg: null,
    stud_oring: undefined,
    collar: undefined,
    other: undefined,
  };
}
