/** 1.4375 → '1 7/16'. Only for sizes that are whole sixty-fourths; others come back as decimals. */
export function inchFraction(inches: number): string {
  const whole = Math.floor(inches + 1e-9);
  let top = Math.round((inches - whole) * 64);
  if (Math.abs(inches - whole - top / 64) > 1e-6) return inches.toFixed(4).replace(/^0/, '');
  if (top === 0) return String(whole);
  let bottom = 64;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return whole > 0 ? `${whole} ${top}/${bottom}` : `${top}/${bottom}`;
}

/** '1 7/16' → 1.4375, '2' → 2, '.750' → 0.75. For the tables' own size strings. */
export function inchesOf(fraction: string): number {
  return fraction
    .split(' ')
    .map((part) => {
      const [top, bottom] = part.split('/');
      return Number(top) / (bottom === undefined ? 1 : Number(bottom));
    })
    .reduce((a, b) => a + b, 0);
}
