import type { ThreadMeasurement } from './5-measurement/thread-measurement';
import type { Reading } from './6-candidates/reading';
import type { Conclusion } from './7-next-reading/decision';
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

/** What a photo may be measured against: the printed scale card, an ID-1 card, a sheet of paper, a rule. */
export const referenceKinds = ['card', 'id1', 'a4', 'letter', 'rule'] as const;
export type ReferenceKind = (typeof referenceKinds)[number];

export interface Reference {
  readonly kind: ReferenceKind;
  /** At the axis of the thread. */
  readonly pxPerMm: number;
  readonly axisHeightMm: number | null;
  readonly cameraHeightMm: number | null;
  readonly tiltDeg: number | null;
  readonly field: 'light' | 'dark' | null;
}

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

export interface OtherEnd {
  readonly measurement: ThreadMeasurement;
  /** From the free end towards the middle of the part, over the measured zone, in the photo. */
  readonly axis: readonly [PhotoPoint, PhotoPoint];
}

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

export const notes = [
  'print-unchecked',
  'no-focal-length',
  'one-side-only',
  'card-not-flat',
  'resting-unknown',
  'few-markers',
  'ruler-without-pose',
  'flash-fired',
  'outline-alone',
] as const;
export type Note = (typeof notes)[number];

/** Everything besides the photo's bytes that a measurement may use. */
export interface MeasureOptions {
  readonly readings: readonly Reading[];
  readonly reference: ReferenceAsked;
  /** Two marked points a known distance apart, for photos without the card. */
  readonly ruler: {
    readonly from: PhotoPoint;
    readonly to: PhotoPoint;
    readonly mm: number;
  } | null;
  /** Measured lengths of the card's print-check bars, mm, nominally 150 and 100. */
  readonly bars: {
    readonly horizontalMm: number;
    readonly verticalMm: number;
    readonly uMm: number;
  } | null;
  /** A person's help when detection fails, photo frame. */
  readonly corrections: Corrections | null;
  readonly gender: GenderAsked;
}

/** Which end the photo shows; 'auto' weighs both. */
export const gendersAsked = ['auto', 'male', 'female'] as const;
export type GenderAsked = (typeof gendersAsked)[number];

/** What to look for; its four corners, one after the other, where a person has shown them. */
export interface ReferenceAsked {
  readonly kind: 'auto' | Exclude<ReferenceKind, 'rule'>;
  readonly corners: readonly PhotoPoint[] | null;
}

export interface Corrections {
  /** Ends of the axis over the thread: free end first. The zone is between them. */
  readonly axis: readonly [PhotoPoint, PhotoPoint] | null;
  readonly side: 'left' | 'right' | 'both';
}

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
