/** What a person sees and feels of a used thread, in the order the trade looks (common practice): the face that
 *  seals, the first turns, how it runs, the gauges, the crests last. Null: not looked at. */
export const wearAnswers = {
  seal: ['unmarked', 'scratched'],
  firstTurns: ['whole', 'burred', 'torn'],
  byHand: ['free', 'stiff', 'rocks'],
  /** GO ring (ISO 1502; ASME B1.2): must run on over the whole length. */
  goRing: ['runs-on', 'stops'],
  /** NOT GO ring: may take two turns at most. */
  notGoRing: ['holds', 'beyond-two'],
} as const;

export type WearQuestion = keyof typeof wearAnswers;
export const wearQuestions = Object.keys(wearAnswers) as WearQuestion[];

/** Where a caliper goes across the crests. */
export const caliperPlaces = ['end', 'middle', 'last'] as const;
export type CaliperPlace = (typeof caliperPlaces)[number];
