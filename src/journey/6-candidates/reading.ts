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

export type Reading =
  | { readonly kind: 'pitch-gauge'; readonly pitchMm: number; readonly text: string }
  | {
      readonly kind: 'caliper-od' | 'caliper-id' | 'rule-od';
      readonly mm: number;
      readonly text: string;
    }
  | { readonly kind: 'seat'; readonly seat: Seat; readonly text: string }
  | { readonly kind: 'taper'; readonly taper: 'tapered' | 'straight'; readonly text: string };

export type ReadingKind = Reading['kind'];
