/** What the scale of a photo is taken from. */
export const referenceEn = {
  atHand: 'What lies beside it?',
  choice: {
    card: {
      name: 'Printed card',
      how: 'Lay the fitting in the window of the scale card, whole ring of marks in view.',
      settles: 'Pitch and diameter: about half of all threads by the photo alone.',
    },
    id1: {
      name: 'Bank card',
      how: 'Lay the fitting on the table a finger’s width beside the card, all four edges in view. A library card or the back of a bank card is best.',
      settles:
        'Pitch and its ratio to the diameter: most threads, now and then with one gauge reading more.',
    },
    sheet: {
      name: 'Sheet of paper',
      how: 'Lay the fitting in the middle of a blank sheet, all four edges in view, the table darker than the sheet. Shoot at full resolution.',
      settles: 'Coarse threads from about M12; on small ones the sheet leaves too few pixels.',
    },
    rule: {
      name: 'Rule',
      how: 'Lay the rule beside the fitting and shoot from straight above, as far away as is sharp. Two graduations are marked afterwards.',
      settles: 'Often the pitch; the diameter is left open, and a caliper settles it.',
    },
  },
  settles: 'Settles:',
  paper: 'Sheet size',
  privacy: 'Its face is painted over on this device before the photo is kept. No number is stored.',
  painted: 'The face of the bank card is painted over in what is kept.',
  showCorners: 'Show its corners',
  whatIsIt: 'What is it?',
  kind: { id1: 'Bank card (ID-1)', a4: 'A4 sheet', letter: 'Letter sheet' },
  cornersText:
    'Drag the four marks to where the sides meet: beyond the round corners of a card. Edges are then fitted near them.',
  corner: (n: number) => `Corner ${n}`,
  markRule: 'Mark the rule',
  markText:
    'Drag the two marks onto two graduations, far apart, and type what lies between them. The loupe shows the mark being moved.',
  onScreen: {
    title: 'Size on this screen',
    lead: 'Lay a bank card on the screen and move the slider until the frame is exactly its size. It is kept for this device.',
    slider: 'Size of the frame',
    smaller: 'Smaller',
    larger: 'Larger',
    keep: 'It fits',
    again: 'Set the size again',
    tooSmall: 'The whole card does not fit this screen: turn the device, or print the card.',
    shown: (percent: string) => `Shown at ${percent} % of the printed size.`,
    use: 'Use this card',
    name: (device: string) => `On this screen (${device})`,
    glass: 'Lay the fitting on the glass with care: a clear film keeps it from scratches.',
  },
  camera: {
    inView: 'Card or sheet in view',
    bring: {
      id1: 'Bring the bank card into the frame, fitting beside it',
      sheet: 'Bring the whole sheet into the frame',
      rule: 'Shoot straight from above, rule and thread in view',
    },
  },
};
