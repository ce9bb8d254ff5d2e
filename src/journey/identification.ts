import type { z } from 'zod';
import type { ReadOnly } from '../quantity/read-only';
import type { ThreadMeasurement } from './5-measurement/thread-measurement';
import type { Reading } from './6-candidates/reading';
import type { Conclusion } from './7-next-reading/decision';
import type {
  askedSchema,
  barsSchema,
  correctionsSchema,
  noteSchema,
  otherEndSchema,
  referenceKinds,
  referenceSchema,
  rulerSchema,
} from './identification-schema';
import type { CrestProfile, Overlay, PhotoPoint } from './overlay';
import type { CrestHeight } from './wear/crest-heights';

export type RefusalReason =
  | 'no-card'
  | 'business-card'
  | 'banknote'
  | 'other-rectangle'
  | 'which-reference'
  | 'no-thread'
  | 'too-few-turns'
  | 'too-blurred'
  | 'too-coarse'
  | 'cut-off'
  | 'several-fittings'
  | 'card-mirrored'
  | 'unreadable'
  | 'unsupported-format'
  | 'decoder-missing'
  | 'too-large';

export type ReferenceKind = (typeof referenceKinds)[number];
export type Reference = ReadOnly<z.infer<typeof referenceSchema>>;

export interface Measured {
  readonly outcome: 'measured';
  readonly reference: Reference;
  readonly measurement: ThreadMeasurement;
  readonly overlay: Overlay;
  readonly profile: CrestProfile;
  /** None beside a rule: without a pose a single crest says nothing. */
  readonly crests: readonly CrestHeight[];
  readonly conclusion: Conclusion;
  /** Of a part threaded at both ends, the end that was measured less well. */
  readonly otherEnds: readonly OtherEnd[];
  /** Things the reader should know: one-sided outline, bowed card, unchecked print … */
  readonly notes: readonly Note[];
  readonly timingsMs: Readonly<Record<string, number>>;
}

export type OtherEnd = ReadOnly<z.infer<typeof otherEndSchema>>;

export interface Refused {
  readonly outcome: 'refused';
  readonly refusal: { readonly reason: RefusalReason; readonly advice: string };
  /** What was found before the refusal, when anything was. */
  readonly overlay: Overlay | null;
  /** Of the printed card, once it is known: nobody is told to use the field that is used already. */
  readonly field: 'light' | 'dark' | null;
  readonly timingsMs: Readonly<Record<string, number>>;
}

export type Identification = Measured | Refused;

export type Note = z.infer<typeof noteSchema>;

/** Everything besides the photo's bytes that a measurement may use. */
export interface MeasureOptions {
  readonly readings: readonly Reading[];
  readonly reference: ReferenceAsked;
  /** Two marked points a known distance apart, for photos without the card. */
  readonly ruler: Ruler | null;
  /** Measured lengths of the card's print-check bars, nominally 150 and 100 mm. */
  readonly bars: Bars | null;
  /** A person's help when detection fails, photo frame. */
  readonly corrections: Corrections | null;
  readonly gender: GenderAsked;
}

/** Which end the photo shows; 'auto' weighs both. */
export const gendersAsked = ['auto', 'male', 'female'] as const;
export type GenderAsked = (typeof gendersAsked)[number];

/** What to look for; its four corners, one after the other, where a person has shown them. */
export type ReferenceAsked = ReadOnly<z.infer<typeof askedSchema>>;
export type Ruler = ReadOnly<z.infer<typeof rulerSchema>>;
export type Bars = ReadOnly<z.infer<typeof barsSchema>>;
export type Corrections = ReadOnly<z.infer<typeof correctionsSchema>>;

export type StageName =
  | 'photo'
  | 'card-pose'
  | 'silhouette'
  | 'thread-signal'
  | 'measurement'
  | 'candidates';

/** What was found first: enough to know what of the photo may be kept. */
export interface SeenReference {
  readonly kind: ReferenceKind;
  readonly outline: readonly PhotoPoint[];
  /** Of the upright photo that `outline` lies in. */
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Each stage as it is entered; the first one that has a reference says so. */
export type OnStage = (stage: StageName, seen?: SeenReference) => void;

export const defaultOptions: MeasureOptions = {
  readings: [],
  reference: { kind: 'auto', corners: null },
  ruler: null,
  bars: null,
  corrections: null,
  gender: 'male',
};
