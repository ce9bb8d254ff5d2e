/** The guided camera. */
export const shootEn = {
  title: 'Guided camera',
  start: 'Start the camera',
  noCamera: 'No camera can be used here. Take a photo with the button below instead.',
  denied:
    'The camera was not allowed. Allow it in the browser, or take a photo with the button below.',
  noGuide: 'No guidance on this device: shoot when the whole ring is in view.',
  hold: 'Hold still',
  shot: 'Taken',
  byHand: 'Shoot now',
  auto: 'Shoot by itself when all is well',
  torch: 'Torch',
  full: 'Full-resolution photo',
  viewfinder: 'What the camera sees',
  checks: {
    card: 'Card in view',
    tilt: 'Straight enough from above',
    distance: 'Far enough away',
    light: 'Enough light',
    still: 'Held still',
    contrast: 'Thread stands out',
    inside: 'Fitting inside the window',
  },
  hints: {
    card: 'Bring the whole ring of marks into view',
    tilt: 'Hold the phone more level',
    distance: 'A little farther away',
    light: 'More light',
    still: 'Hold still',
    contrast: 'Thread hard to see: use the other field',
    inside: 'Move the fitting into the window',
    loading: 'The guidance is loading',
  },
  good: 'good',
  bad: 'not yet',
};
export type ShootWords = typeof shootEn;
