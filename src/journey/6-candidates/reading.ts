import { type EndType, endTypes, seatForms } from '../../standards/connections/connection';

/** What a person measures or sees at the bench. */
export const seats = seatForms;
export type Seat = (typeof seats)[number];

export { type EndType, endTypes };

/** Blades of a seat gauge: 24° and 60° are included angles, the others stand to the axis. */
export const gaugedCones = [
  'cone-24',
  'cone-30',
  'cone-37',
  'cone-45',
  'cone-60',
  'none',
] as const satisfies readonly Seat[];
export type GaugedCone = (typeof gaugedCones)[number];

/** What is stamped or notched into a part (common practice). */
export const marks = ['none', 'left-hand', 'light', 'heavy', 'nptf'] as const;
export type Mark = (typeof marks)[number];

/** `text` is the value as typed: `${kind}=${text}` reads back as the same reading, and how it is
 *  written ('11/16in', '17.2mm') says how finely it was read. */
export type Reading =
  | { readonly kind: 'pitch-gauge'; readonly pitchMm: number; readonly text: string }
  | {
      /** Crests counted against a rule: this many turns in this length. */
      readonly kind: 'turns-over';
      readonly turns: number;
      readonly overMm: number;
      readonly text: string;
    }
  | {
      /** Over the crests of a male end (or the head of a flange), or across the crests of a female
       *  end. */
      readonly kind: 'caliper-od' | 'caliper-id' | 'rule-od';
      readonly mm: number;
      readonly text: string;
    }
  | {
      /** Of a flange head; between its bolts, the longer way; across the flats of a hex; across the
       *  narrow end of the cone that stands in a nut. */
      readonly kind: 'flange-thickness' | 'bolt-spacing' | 'hex' | 'nose-od';
      readonly mm: number;
      readonly text: string;
    }
  | {
      /** The tube that the end takes (its bore in the end serves too); null: it takes none. */
      readonly kind: 'tube-od';
      readonly mm: number | null;
      readonly text: string;
    }
  /** By eye: flares of 30°, 37° and 45° look alike. */
  | { readonly kind: 'seat'; readonly seat: Seat; readonly text: string }
  /** The photo's claim denied: whatever it shows, this it is not. */
  | { readonly kind: 'other-seat'; readonly seat: Seat; readonly text: string }
  | { readonly kind: 'seat-gauge'; readonly cone: GaugedCone; readonly text: string }
  | {
      /** A cone on a male end: across its wide and its narrow end, and the length between them. Half
       *  the difference over the length is the tangent of its angle to the axis. */
      readonly kind: 'cone-size';
      readonly wideMm: number;
      readonly narrowMm: number;
      readonly overMm: number;
      readonly text: string;
    }
  | { readonly kind: 'end-type'; readonly type: EndType; readonly text: string }
  | {
      /** Angle of the thread-form gauge that sits in the thread without light. */
      readonly kind: 'flank';
      readonly flankDeg: 55 | 60;
      readonly text: string;
    }
  /** Whitworth crests are rounded, those of the 60° forms are cut flat. */
  | { readonly kind: 'crest-form'; readonly crest: 'rounded' | 'flat'; readonly text: string }
  | { readonly kind: 'taper'; readonly taper: 'tapered' | 'straight'; readonly text: string }
  | { readonly kind: 'marking'; readonly mark: Mark; readonly text: string }
  /** Which way it screws on. */
  | { readonly kind: 'hand'; readonly hand: 'right' | 'left'; readonly text: string }
  /** Asked, and not to be had: it is not asked again. */
  | { readonly kind: 'cannot-tell'; readonly of: AskableKind; readonly text: string };

export const askableKinds = [
  'pitch-gauge',
  'turns-over',
  'caliper-od',
  'caliper-id',
  'rule-od',
  'end-type',
  'seat',
  'seat-gauge',
  'cone-size',
  'taper',
  'crest-form',
  'flank',
  'tube-od',
  'nose-od',
  'flange-thickness',
  'bolt-spacing',
  'marking',
  'hand',
  'hex',
] as const;
/** What can be asked for. */
export type AskableKind = (typeof askableKinds)[number];

export type ReadingKind = Reading['kind'];
