import type { Estimate } from '../../quantity/estimate';
import * as portable from '../../quantity/portable-math';

/** Steps either way of the pitches that are weighed about the one that is expected. */
const steps = 80;
/** Places within a pitch that a line of crests may begin at. */
const starts = 60;
/** Windows in which the network may have been misled altogether. */
const misled = 0.05;

/** Crests as windows all along one side of a thread show them: places, mm, and concentrations of their phases. */
export interface CrestLine {
  readonly at: readonly number[];
  readonly sureness: readonly number[];
}

/** The same with the mean of what each density is made of. */
interface Line extends CrestLine {
  readonly mean: readonly number[];
}

/** The pitch of lines whose crests lie evenly, all of them by the same pitch, about one that is expected; sought within `span`,
 *  a share of it. An infinite `expected.u`: nothing else is known. */
export function evenPitch(seen: readonly CrestLine[], expected: Estimate, span: number): Estimate {
  const lines = seen.map((line) => ({ ...line, mean: line.sureness.map(besselRatio) }));
  const uExpected = expected.u / expected.value;
  const offAt = (k: number) => (span * (k - steps)) / steps;
  const logs = Array.from({ length: 2 * steps + 1 }, (_, k) => {
    const pitchMm = expected.value * (1 + offAt(k));
    const prior = -0.5 * (offAt(k) / uExpected) ** 2;
    return lines.reduce((sum, line) => sum + evidence(line, pitchMm), prior);
  });
  const best = Math.max(...logs);
  let all = 0;
  let mean = 0;
  let square = 0;
  for (const [k, log] of logs.entries()) {
    const share = portable.exp(log - best);
    all += share;
    mean += share * offAt(k);
    square += share * offAt(k) ** 2;
  }
  mean /= all;
  const u = Math.sqrt(Math.max(0, square / all - mean * mean));
  return { value: expected.value * (1 + mean), u: expected.value * u };
}

/** Logarithm of how likely a side's crests are, were they a pitch apart, wherever the first of them lies. */
function evidence({ at, sureness, mean }: Line, pitchMm: number): number {
  let sum = 0;
  for (let start = 0; start < starts; start++) {
    let all = 1;
    for (let i = 0; i < at.length; i++) {
      // A von Mises density over that of an even spread, with those that were misled.
      const cosine = portable.cos(2 * Math.PI * (at[i] / pitchMm - start / starts));
      all *= misled + ((1 - misled) * portable.exp(sureness[i] * (cosine - 1))) / mean[i];
    }
    // Neighbouring windows see one of their two turns in common: each says half of what it says alone.
    sum += Math.sqrt(all);
  }
  return portable.log(sum / starts);
}

/** I₀(k)·exp(−k): Abramowitz and Stegun, 9.8.1 and 9.8.2. */
function besselRatio(k: number): number {
  if (k < 3.75) {
    const t = (k / 3.75) ** 2;
    const series = [0.0045813, 0.0360768, 0.2659732, 1.2067492, 3.0899424, 3.5156229, 1];
    return portable.exp(-k) * series.reduce((sum, c) => sum * t + c, 0);
  }
  const t = 3.75 / k;
  const series = [
    0.00392377, -0.01647633, 0.02635537, -0.02057706, 0.00916281, -0.00157565, 0.00225319,
    0.01328592, 0.39894228,
  ];
  return series.reduce((sum, c) => sum * t + c, 0) / Math.sqrt(k);
}
