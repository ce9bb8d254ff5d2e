/** Which end a photo shows, and what is said of a female one. */
export const endEn = {
  either: 'Either: the photo tells',
  ways: {
    standing:
      'Standing: mouth up on the printed card, camera 30 to 40° from straight above, so that it looks onto the far wall of the bore.',
    lying:
      'Lying (hose ends): on a flat on the printed card, mouth towards you, camera 30 to 40° above the table; less sure than standing.',
  },
  /** Ways on after a refusal. */
  inside: 'The thread is inside',
  outside: 'The thread is outside',
  refused: {
    'no-thread': {
      what: 'The scale was found, but no thread inside.',
      todo: 'Stand the part on the printed card, mouth up, and shoot at a slant, so that the far wall of the bore is in view and lit.',
    },
    'several-fittings': {
      what: 'More than one fitting lies in the window.',
      todo: 'Leave one fitting and shoot again.',
    },
  },
  overCrests: 'over the crests inside, as they are',
  mouthHeight: 'height of the mouth',
  rings: 'Rings of the bore',
  shoot: {
    check: 'Slanted enough to see into the bore',
    tooLevel: 'Tilt the phone: the far wall of the bore has to be seen',
    tooSlanted: 'Hold the phone less slanted',
  },
};
