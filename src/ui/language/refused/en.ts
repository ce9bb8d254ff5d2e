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
  cornerMarks: {
    what: 'The four corners shown give no scale.',
    todo: 'Put each mark where two sides meet, and say what it is. If they are there, take the photo again beside a bank card or on the printed card, or enter readings.',
  },
  axisMarks: {
    what: 'No thread can be measured where it was shown.',
    todo: 'Put A at the free end and B at the last full turn, both in the middle of the thread. If they are there, the photo does not show enough: go nearer, with light from the side, or enter readings.',
  },
  brightOnLight:
    'On a light ground a bright or plated part fades: the dark field of the card shows it better.',
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
      todo: 'Lay the fitting flat, its thread free and in full view, with light from the side and no glare; or show by hand where the thread is.',
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
      todo: 'Send the photo at full size rather than a preview, or go nearer while the ring stays in view.',
    },
    'cut-off': {
      what: 'Part of it lies outside the photo or the window.',
      todo: 'The card was found, but not the whole thread: lay the fitting in the middle of the window and keep the whole ring in view.',
    },
    'several-fittings': {
      what: 'More than one fitting lies in the window.',
      todo: 'Leave one fitting and shoot again, or show by hand which one is meant.',
    },
    'card-mirrored': {
      what: 'The card is seen mirrored.',
      todo: 'Shoot directly, not through a mirror or a selfie preview.',
    },
    unreadable: {
      what: 'This file cannot be read as a photo.',
      todo: 'Choose the original photo: JPEG, PNG, WebP, HEIC or AVIF. If it came by mail or messenger, have it sent again.',
    },
    'unsupported-format': {
      what: 'This kind of file cannot be opened here.',
      todo: 'Share or save it as a photo (JPEG, PNG, WebP, HEIC or AVIF) and choose that.',
    },
    'decoder-missing': {
      what: 'This photo needs a part of the page that is not loaded yet.',
      todo: 'Connect to the network and measure again: the part is then kept on this device. Or share the photo as JPEG.',
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
