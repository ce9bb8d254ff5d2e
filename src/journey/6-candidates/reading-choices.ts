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
