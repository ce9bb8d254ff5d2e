import { z } from 'zod';
import type { BudgetRow } from '../5-measurement/thread-measurement';
import { askableKinds, endTypes, gaugedCones, marks, seats } from '../6-candidates/reading';
import { allTools } from '../7-next-reading/tools';
import { notes, referenceKinds } from '../identification';
import { estimate, line, mm, point, share, text, time, word } from './schema-bounds';
import { wearSchema } from './wear-schema';

export const sheetVersion = 1;
export const maxShots = 8;

const sources = {
  'edge-noise': true,
  'edge-bias': true,
  'focal-length': true,
  height: true,
  tilt: true,
  'print-scale': true,
  'card-bow': true,
  'thread-form': true,
} satisfies Record<BudgetRow['source'], true>;

function keys<T extends Record<string, true>>(of: T) {
  return Object.keys(of) as (keyof T & string)[];
}

export const measurementSchema = z.object({
  end: z.enum(['male', 'female']).optional(),
  pitchMm: estimate,
  majorDiameterMm: estimate,
  diameterParts: z
    .array(z.object({ share, uMm: mm }))
    .min(1)
    .max(4)
    .optional(),
  correlation: z.number().min(-1).max(1),
  taper: estimate.nullable(),
  flankAngleDeg: estimate.nullable(),
  noseHalfAngleDeg: estimate.nullable(),
  hexAcrossFlatsMm: estimate.nullable().optional(),
  turns: z.number().nonnegative(),
  hand: z.enum(['right', 'left']).nullable(),
  starts: z.number().int().positive().max(100).nullable(),
  middleFromEndMm: mm.nullable(),
  budget: z
    .array(z.object({ source: z.enum(keys(sources)), pitchMm: mm, majorDiameterMm: mm }))
    .max(50),
  otherPeriods: z
    .array(z.object({ ratio: z.number().positive().max(20), share: z.number().min(0).max(1) }))
    .max(10)
    .optional(),
});

export const readingSchema = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('pitch-gauge'),
    pitchMm: z.number().positive().max(1000),
    text: line,
  }),
  z.object({
    kind: z.enum(['caliper-od', 'caliper-id', 'rule-od']),
    mm: z.number().positive().max(1e4),
    text: line,
  }),
  z.object({
    kind: z.literal('turns-over'),
    turns: z.number().positive().max(1000),
    overMm: z.number().positive().max(1e4),
    text: line,
  }),
  z.object({
    kind: z.enum(['flange-thickness', 'bolt-spacing', 'hex', 'nose-od']),
    mm: z.number().positive().max(1e4),
    text: line,
  }),
  z.object({
    kind: z.literal('tube-od'),
    mm: z.number().positive().max(1e4).nullable(),
    text: line,
  }),
  z.object({ kind: z.enum(['seat', 'other-seat']), seat: z.enum(seats), text: line }),
  z.object({
    kind: z.literal('flank'),
    flankDeg: z.union([z.literal(55), z.literal(60)]),
    text: line,
  }),
  z.object({ kind: z.literal('seat-gauge'), cone: z.enum(gaugedCones), text: line }),
  z.object({
    kind: z.literal('cone-size'),
    wideMm: z.number().positive().max(1e4),
    narrowMm: z.number().nonnegative().max(1e4),
    overMm: z.number().positive().max(1e4),
    text: line,
  }),
  z.object({ kind: z.literal('end-type'), type: z.enum(endTypes), text: line }),
  z.object({ kind: z.literal('crest-form'), crest: z.enum(['rounded', 'flat']), text: line }),
  z.object({ kind: z.literal('taper'), taper: z.enum(['tapered', 'straight']), text: line }),
  z.object({ kind: z.literal('marking'), mark: z.enum(marks), text: line }),
  z.object({ kind: z.literal('hand'), hand: z.enum(['right', 'left']), text: line }),
  z.object({ kind: z.literal('cannot-tell'), of: z.enum(askableKinds), text: line }),
]);

const askable = z.enum(askableKinds);

const threadCandidate = z.discriminatedUnion('system', [
  z.object({
    system: z.enum(['UN', 'M', 'G', 'R', 'NPT']),
    designation: word,
    basicMajorMm: mm,
    pitchMm: mm,
    probability: share,
  }),
  z.object({ system: z.null(), probability: share }),
]);

const connectionEnd = z.object({
  family: word,
  size: word,
  // The first sheets kept family and size alone.
  end: z.enum(['male', 'female']).nullable().default(null),
  form: word.nullable().default(null),
  endTypes: z.array(z.enum(endTypes)).max(20).readonly().default([]),
});

export const conclusionSchema = z.object({
  threads: z.array(threadCandidate).max(1000),
  connections: z.array(connectionEnd.extend({ probability: share })).max(1000),
  decision: z.object({
    state: z.enum(['settled', 'needs-reading', 'unlisted']),
    thread: word.nullable(),
    connection: connectionEnd.nullable(),
    ask: z
      .object({
        reading: askable,
        why: text,
        gainBits: z.number(),
        // Left out of the code on a shared picture.
        fits: z
          .array(z.object({ value: word, candidates: z.array(word).max(100) }))
          .max(100)
          .default([]),
      })
      .nullable(),
    missing: z
      .object({ reading: askable, tools: z.array(z.enum(allTools)).max(20) })
      .nullable()
      .default(null),
  }),
  contradictions: z
    .array(
      z.discriminatedUnion('source', [
        z.object({ source: z.literal('photo') }),
        z.object({
          source: z.literal('reading'),
          index: z.number().int().nonnegative(),
          text: line,
        }),
      ]),
    )
    .max(101)
    .default([]),
  end: z.enum(['male', 'female']).nullable().default(null),
  hand: z.enum(['right', 'left']).nullable().default(null),
  nearest: z
    .object({ thread: word, end: z.enum(['male', 'female']), offMm: mm })
    .nullable()
    .default(null),
});

/** The first sheets said 'ruler'. */
export const referenceKind = z.preprocess(
  (kind) => (kind === 'ruler' ? 'rule' : kind),
  z.enum(referenceKinds),
);

const corners = z.array(point).length(4);

/** What was looked for, and the corners that a person showed; the first sheets looked for the card alone. */
const askedSchema = z
  .object({
    kind: z.enum(['auto', 'card', 'id1', 'a4', 'letter']),
    corners: corners.nullable(),
  })
  .default({ kind: 'auto', corners: null });

export const referenceSchema = z.object({
  kind: referenceKind,
  pxPerMm: z.number().positive().max(1e5),
  axisHeightMm: mm.nullable(),
  cameraHeightMm: mm.nullable(),
  tiltDeg: z.number().min(-360).max(360).nullable(),
  field: z.enum(['light', 'dark']).nullable(),
});

export const overlaySchema = z.object({
  widthPx: z.number().int().positive().max(1e5),
  heightPx: z.number().int().positive().max(1e5),
  markers: z
    .array(z.object({ id: z.number().int().min(0).max(1000), corners: z.array(point).max(4) }))
    .max(200),
  reference: z.union([corners, z.array(point).length(0)]).default([]),
  outline: z.array(z.array(point).max(20_000)).max(200),
  axis: z.tuple([point, point]).nullable(),
  contactLines: z.array(z.tuple([point, point])).max(20),
  crests: z.array(z.object({ at: point, side: z.enum(['left', 'right']), axialMm: mm })).max(2000),
});

const radii = z.array(mm).max(20_000);
export const profileSchema = z
  .object({
    axialMm: radii,
    leftMm: z.array(mm.nullable()).max(20_000),
    rightMm: z.array(mm.nullable()).max(20_000),
    leftFitMm: radii,
    rightFitMm: radii,
  })
  .refine(
    (p) =>
      [p.leftMm, p.rightMm, p.leftFitMm, p.rightFitMm].every((a) => a.length === p.axialMm.length),
    'profile arrays differ in length',
  );

/** On a phone's screen the card is shown at down to 0.4 of its size. */
export const barsSchema = z.object({
  horizontalMm: z.number().min(30).max(500),
  verticalMm: z.number().min(30).max(500),
  uMm: z.number().min(0).max(50),
});

export const correctionsSchema = z.object({
  axis: z.tuple([point, point]).nullable(),
  side: z.enum(['left', 'right', 'both']),
});

const rulerSchema = z.object({ from: point, to: point, mm: z.number().positive().max(1e4) });

/** Single crests over the zone; sheets made before they were measured have none. */
const crestHeightsSchema = z
  .array(
    z.object({
      side: z.enum(['left', 'right']),
      turn: z.number().int().positive().max(1000),
      atMm: mm,
      heightMm: mm,
      u: z.number().nonnegative(),
      uOwnMm: z.number().nonnegative(),
      shortMm: mm.nullable(),
    }),
  )
  .max(2000)
  .default([]);

/** Ends that a shot measured besides its own; older sheets have none. */
const otherEndsSchema = z
  .array(z.object({ measurement: measurementSchema, axis: z.tuple([point, point]) }))
  .max(3)
  .default([]);

/** One photo of the fitting and what it gave. Its bytes travel beside the sheet, in the same order. */
export const shotSchema = z.object({
  photo: z.object({
    /** As stored, before orientation. */
    widthPx: z.number().int().positive().max(65_535),
    heightPx: z.number().int().positive().max(65_535),
    orientation: z.number().int().min(1).max(8),
    focal35Mm: z.number().positive().max(5000).nullable(),
    // The first sheets did not say.
    flashFired: z.boolean().default(false),
    /** A picture that came through a messenger: fewer pixels than the sender measured. */
    recompressed: z.boolean(),
  }),
  reference: referenceSchema,
  measurement: measurementSchema,
  /** Null when the measurement came without its drawing, from the code on a shared picture. */
  overlay: overlaySchema.nullable(),
  profile: profileSchema.nullable(),
  crests: crestHeightsSchema,
  otherEnds: otherEndsSchema,
  notes: z.array(z.enum(notes)).max(50),
  /** Print check applied, with the name it is kept under. */
  bars: barsSchema.extend({ name: word.nullable() }).nullable(),
  asked: askedSchema,
  ruler: rulerSchema.nullable(),
  corrections: correctionsSchema.nullable(),
});

/** Who measured or judged: the one who made the sheet, or the counter it was sent to. */
export const party = z.enum(['sender', 'counter']);

/** A measurement that a later one has taken the place of. */
export const earlierSchema = z.object({
  at: time,
  by: party,
  pitchMm: estimate,
  majorDiameterMm: estimate,
});

export const counterSchema = z.object({
  verdict: z.enum(['open', 'confirmed', 'rejected']),
  /** What the counter confirms, in its own words if need be; null where it left the sheet's own
   *  decision as it was. */
  identified: z
    .object({ thread: word.nullable(), connection: connectionEnd.nullable() })
    .nullable()
    .default(null),
  /** Whoever judged, as they call themselves. */
  by: word.default(''),
  remarks: text,
  /** The counter's own part numbers. */
  parts: z.array(z.object({ number: word, note: line })).max(50),
  at: time,
});

export const sheetSchema = z.object({
  format: z.literal('crestwise-sheet'),
  version: z.literal(sheetVersion),
  id: z.uuid(),
  createdAt: time,
  updatedAt: time,
  appVersion: word,
  title: line,
  remarks: text,
  shots: z.array(shotSchema).max(maxShots),
  /** What the conclusion was drawn from: the shot's, or several shots combined. Null for
   *  readings alone. */
  measurement: measurementSchema.nullable(),
  /** When, and by whom; the first sheets were measured when they were made. */
  measuredAt: time.nullable().default(null),
  measuredBy: party.default('sender'),
  /** Oldest first. */
  earlier: z.array(earlierSchema).max(20).default([]),
  readings: z.array(readingSchema).max(100),
  conclusion: conclusionSchema,
  counter: counterSchema.nullable(),
  /** The sender cannot tell more: the counter is to decide. */
  handedOver: z.boolean().default(false),
  /** Came to this device from elsewhere: it is judged here, not asked about. */
  received: z.boolean().default(false),
  /** Null while nobody asked. */
  wear: wearSchema.nullable().default(null),
});

/** Read-only all through, as what the stages hand on: theirs goes into a sheet as it is, and compiling
 *  stops when a stage says something that a sheet cannot keep. */
type Kept<T> = T extends object ? { readonly [K in keyof T]: Kept<T[K]> } : T;

/** The identification of one fitting. */
export type Sheet = Kept<z.infer<typeof sheetSchema>>;
export type Shot = Sheet['shots'][number];
export type CounterAnswer = NonNullable<Sheet['counter']>;
export type Party = Sheet['measuredBy'];
export type EarlierMeasurement = Sheet['earlier'][number];
export type PrintCheckUsed = NonNullable<Shot['bars']>;
