import type { RefusalReason } from '../../../journey/identification';

/** Why a photo was not measured, and the ways on. */
export const refusedEn = {
  title: 'Not measured',
  retry: 'Another photo',
  retake: 'Take it again',
  byHand: 'Show it by hand',
  byRule: 'Use a rule instead',
  readings: 'Enter readings instead',
  ruleMarks: {
    what: 'The two marks give no scale.',
    todo: 'Put them on two graduations far apart within the photo, and check the distance and its unit.',
  },
  reasons: {
    'no-card': {
      what: 'No scale card was found.',
      todo: 'Lay the fitting on the printed card, beside a bank card or on a blank sheet, and keep all of it in view; or show it by hand.',
    },
    'business-card': {
      what: 'This is the shape of a business card.',
      todo: 'Business cards come in many sizes. Use a bank or library card, a blank A4 or Letter sheet, or the printed card.',
    },
    banknote: {
      what: 'This is the shape of a banknote.',
      todo: 'Notes are cut too loosely to measure by. Use a bank or library card, a blank A4 or Letter sheet, or the printed card.',
    },
    'other-rectangle': {
      what: 'This card or sheet is of no known size.',
      todo: 'Use a bank or library card, a blank A4 or Letter sheet, or the printed card.',
    },
    'which-reference': {
      what: 'It is not sure what kind of card or sheet this is.',
      todo: 'Say what it is, and it is measured again.',
    },
    'no-thread': {
      what: 'The scale was found, but no thread.',
      todo: 'Lay the fitting flat in the window with the thread free; if it is hard to see, use the other field of the card (light or dark).',
    },
    'too-few-turns': {
      what: 'Too few turns of the thread can be seen.',
      todo: 'Show at least four turns: remove nuts and caps, turn the thread towards the middle.',
    },
    'too-blurred': {
      what: 'The photo is not sharp.',
      todo: 'Hold still or rest the elbows, add light, tap on the thread to focus.',
    },
    'too-coarse': {
      what: 'The thread has too few pixels.',
      todo: 'Send the photo at full size, or go nearer while the ring stays in view.',
    },
    'cut-off': {
      what: 'The thread runs out of the picture or out of the window.',
      todo: 'Move the fitting so that the whole thread lies inside the window.',
    },
    'several-fittings': {
      what: 'More than one fitting lies in the window.',
      todo: 'Leave one fitting on the card and shoot again.',
    },
    'card-mirrored': {
      what: 'The card is seen mirrored.',
      todo: 'Shoot directly, not through a mirror or a selfie preview.',
    },
    unreadable: {
      what: 'This file cannot be read as a photo.',
      todo: 'Choose the original photo as JPEG, PNG or WebP.',
    },
    'unsupported-format': {
      what: 'This browser cannot open this kind of photo.',
      todo: 'On the phone, set the camera to “most compatible” (JPEG), or share the photo as JPEG.',
    },
    'too-large': {
      what: 'The photo is too large for this device.',
      todo: 'Choose a smaller camera size, such as 12 megapixels.',
    },
  } satisfies Record<RefusalReason, { what: string; todo: string }>,
  other: { what: 'The photo could not be measured.', todo: 'Try another photo.' },
  detail: 'In detail',
};
export type RefusedWords = typeof refusedEn;
