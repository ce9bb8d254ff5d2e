import type { MeasureOptions, RefusalReason } from '../../journey/identification';

/** What a person can do about a refusal: the same again, a new photo, another file, one of three kinds of help on
 *  this photo, the other gender, the printed card, or readings without a photo. */
export type Way =
  | 'again'
  | 'retake'
  | 'another'
  | 'axis'
  | 'ruler'
  | 'corners'
  | 'other-gender'
  | 'card'
  | 'readings';

/** What was shown by hand, or said, before this refusal came. */
export interface Shown {
  readonly ruler: boolean;
  readonly axis: boolean;
  readonly corners: boolean;
  readonly female: boolean;
}

export const shownIn = (
  options: Pick<MeasureOptions, 'ruler' | 'corrections' | 'reference' | 'gender'>,
): Shown => ({
  ruler: options.ruler !== null,
  axis: Boolean(options.corrections?.axis),
  corners: options.reference.corners !== null,
  female: options.gender === 'female',
});

/** The most promising first. */
const ways: Readonly<Record<RefusalReason, readonly Way[]>> = {
  'no-card': ['retake', 'card', 'ruler', 'corners', 'another'],
  'business-card': ['retake', 'card', 'corners', 'ruler', 'another'],
  banknote: ['retake', 'card', 'corners', 'ruler', 'another'],
  'other-rectangle': ['corners', 'retake', 'card', 'ruler', 'another'],
  'which-reference': ['retake', 'corners', 'card', 'another'],
  'no-thread': ['retake', 'axis', 'other-gender', 'another'],
  'too-few-turns': ['retake', 'axis', 'other-gender', 'another'],
  'too-blurred': ['retake', 'another', 'axis'],
  'too-coarse': ['another', 'retake', 'card', 'axis'],
  'cut-off': ['retake', 'axis', 'another'],
  'several-fittings': ['axis', 'retake', 'another'],
  'card-mirrored': ['retake', 'another'],
  unreadable: ['another', 'retake'],
  'unsupported-format': ['another', 'retake'],
  'decoder-missing': ['again', 'another', 'retake'],
  'too-large': ['another', 'retake'],
};

/** An axis and a rule speak of a thread outside. */
const ofMale: ReadonlySet<Way> = new Set(['axis', 'ruler']);

/** Best first. What was shown by hand already may be shown anew, but comes after what has not been
 *  tried, so that nobody is led in a circle; readings need no photo, and end every list. */
export function nextSteps(reason: string, shown: Shown): readonly Way[] {
  const known = Object.hasOwn(ways, reason)
    ? ways[reason as RefusalReason]
    : (['another', 'retake'] as const);
  const all = known.filter((way) => !(shown.female && ofMale.has(way)));
  const tried = (way: Way) => way in shown && shown[way as keyof Shown];
  return [...all.filter((way) => !tried(way)), 'readings', ...all.filter(tried)];
}
