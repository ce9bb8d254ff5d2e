import { z } from 'zod';
import { measurementSchema } from './5-measurement/thread-measurement';
import { axisSchema, cornersSchema } from './overlay';
import { mm, point } from './schema-bounds';

/** What a photo may be measured against: the printed scale card, an ID-1 card, a sheet of paper, a rule. */
export const referenceKinds = ['card', 'id1', 'a4', 'letter', 'rule'] as const;

/** The first sheets said 'ruler'. */
export const referenceKindSchema = z.preprocess(
  (kind) => (kind === 'ruler' ? 'rule' : kind),
  z.enum(referenceKinds),
);

export const referenceSchema = z.object({
  kind: referenceKindSchema,
  /** At the axis of the thread. */
  pxPerMm: z.number().positive().max(1e5),
  axisHeightMm: mm.nullable(),
  cameraHeightMm: mm.nullable(),
  tiltDeg: z.number().min(-360).max(360).nullable(),
  field: z.enum(['light', 'dark']).nullable(),
});

export const otherEndSchema = z.object({
  measurement: measurementSchema,
  /** From the free end towards the middle of the part, over the measured zone, in the photo. */
  axis: axisSchema,
});

export const noteSchema = z.enum([
  'print-unchecked',
  'no-focal-length',
  'one-side-only',
  'card-not-flat',
  'resting-unknown',
  'few-markers',
  'ruler-without-pose',
  'flash-fired',
  'outline-alone',
]);

export const askedSchema = z.object({
  kind: z.enum(['auto', 'card', 'id1', 'a4', 'letter']),
  corners: cornersSchema.nullable(),
});

export const rulerSchema = z.object({
  from: point,
  to: point,
  mm: z.number().positive().max(1e4),
});

/** On a phone's screen the card is shown at down to 0.4 of its size. */
export const barsSchema = z.object({
  horizontalMm: z.number().min(30).max(500),
  verticalMm: z.number().min(30).max(500),
  uMm: z.number().min(0).max(50),
});

export const correctionsSchema = z.object({
  /** Ends of the axis over the thread: free end first. The zone is between them. */
  axis: axisSchema.nullable(),
  side: z.enum(['left', 'right', 'both']),
});
