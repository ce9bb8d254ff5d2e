import { mmPerInch } from '../quantity/length';

/** Widths across flats that hydraulic fittings and their spanners commonly have, mm (common practice, after
 *  the series of ISO 272 and what makers of fittings add to it; from memory). */
const metricMm = [
  8, 10, 11, 12, 13, 14, 16, 17, 18, 19, 21, 22, 24, 27, 30, 32, 34, 36, 38, 41, 46, 50, 55, 60, 65,
  70, 75, 80,
] as const;

/** Sixteenths of an inch (common practice); above an inch and a half every second one is met. */
const sixteenths = [
  5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 26, 28, 30, 32, 34, 36,
  38, 40, 42, 44, 46, 48,
] as const;

export interface Spanner {
  readonly system: 'metric' | 'inch';
  readonly acrossFlatsMm: number;
  /** '27', '1 1/16'. */
  readonly name: string;
}

const spanners: readonly Spanner[] = [
  ...metricMm.map((mm) => ({ system: 'metric' as const, acrossFlatsMm: mm, name: String(mm) })),
  ...sixteenths.map((n) => ({
    system: 'inch' as const,
    acrossFlatsMm: (n * mmPerInch) / 16,
    name: inches(n),
  })),
];

/** Spanners whose width lies from `lowMm` to `highMm`, metric ones first. */
export function spannersBetween(lowMm: number, highMm: number): readonly Spanner[] {
  return spanners.filter(({ acrossFlatsMm: mm }) => mm >= lowMm && mm <= highMm);
}

function inches(n: number): string {
  const whole = Math.floor(n / 16);
  let top = n % 16;
  let bottom = 16;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const part = top > 0 ? `${top}/${bottom}` : '';
  return [whole > 0 ? String(whole) : '', part].filter(Boolean).join(' ');
}
