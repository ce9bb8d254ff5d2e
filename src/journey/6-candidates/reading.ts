/** What a person measures or sees at the bench. */
export const seats = [
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
export type Seat = (typeof seats)[number];

/** `text` is the value as typed: `${kind}=${text}` reads back as the same reading, and how it is
 *  written ('11/16in', '17.2mm') says how finely it was read. */
export type Reading =
  | { readonly kind: 'pitch-gauge'; readonly pitchMm: number; readonly text: string }
  | {
      /** Over the crests of a male end, or across the crests of a female end. */
      readonly kind: 'caliper-od' | 'caliper-id' | 'rule-od';
      readonly mm: number;
      readonly text: string;
    }
  | {
      /** The tube that the end takes (its bore in the end serves too); null: it takes none. */
      readonly kind: 'tube-od';
      readonly mm: number | null;
      readonly text: string;
    }
  | {
      readonly kind: 'seat';
      readonly seat: Seat;
      /** By eye the angle of a cone is a guess; without a word a seat gauge was used. */
      readonly byEye?: boolean | undefined;
      readonly text: string;
    }
  | {
      /** Angle of the thread-form gauge that sits in the thread without light. */
      readonly kind: 'flank';
      readonly flankDeg: 55 | 60;
      readonly text: string;
    }
  | { readonly kind: 'taper'; readonly taper: 'tapered' | 'straight'; readonly text: string };

export type ReadingKind = Reading['kind'];
