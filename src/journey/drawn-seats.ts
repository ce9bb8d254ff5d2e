/** Seats that a photo can show of a male end, and that are drawn on it where it does. */
export const drawnSeats = [
  'cone-30',
  'cone-37',
  'cone-45',
  'o-ring-at-hex',
  'flat-washer-face',
] as const;
