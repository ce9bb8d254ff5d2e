import * as portable from '../../quantity/portable-math';
import {
  amplitudes,
  type SurfacePeriod,
  samplesPerWave,
  topOf,
  type Windowed,
  windowed,
} from './surface-period';
import type { Unrolled } from './unrolled-surface';

/** How a period's pattern bends over the rows. */
export interface SurfaceBend {
  /** By how much it is displaced along the axis at its top against where the axis' plane meets the surface, periods,
   *  beyond what the camera and the climb explain: rings of a cylinder that is seen with the right lean show none. */
  readonly bend: number;
  /** How well the rows agree on it, 0…1. */
  readonly agreement: number;
}

/** Harmonics and shares of the rows that bends are told by. */
const bendHarmonics = 3;
const bendBaselines = [1 / 8, 1 / 5, 2 / 7, 2 / 5];
const bendHop = 0.08;
const bends = Array.from({ length: 25 }, (_, i) => (i - 12) * bendHop);
/** Climbs about the pattern's own that are tried with each bend, periods per turn. */
const climbsBeside = [-0.2, -0.1, 0, 0.1, 0.2];

/** Null where too little is seen. */
export function surfaceBend(
  view: Unrolled,
  { periodMm, climb }: SurfacePeriod,
): SurfaceBend | null {
  const surface = windowed(view);
  if (!surface) return null;
  const pairs = rowPairs(surface, periodMm);
  const tried = climbsBeside.map((beside) => agreementsOf(pairs, climb + beside));
  const agreements = bends.map((_, i) => Math.max(...tried.map((each) => each[i])));
  const top = agreements.indexOf(Math.max(...agreements));
  return { bend: topOf(bends, agreements, top), agreement: agreements[top] };
}

/** Two rows' waves of one harmonic, one turned back by the other's phase, and how far they lie apart: in azimuth, and
 *  in its cosine. */
interface RowPair {
  readonly re: number;
  readonly im: number;
  readonly length: number;
  readonly harmonic: number;
  readonly apart: number;
  readonly lower: number;
}

function rowPairs(surface: Windowed, periodMm: number): RowPair[] {
  const { azimuths, stepMm } = surface;
  const pairs: RowPair[] = [];
  for (let harmonic = 1; harmonic <= bendHarmonics; harmonic++) {
    if (periodMm / harmonic < samplesPerWave * stepMm) break;
    const a = amplitudes(surface, harmonic / periodMm);
    for (const share of bendBaselines) {
      const b = Math.max(1, Math.round(share * azimuths.length));
      for (let j = 0; j + b < azimuths.length; j++) {
        const [p, q, r, s] = [a[2 * j], a[2 * j + 1], a[2 * (j + b)], a[2 * (j + b) + 1]];
        const re = r * p + s * q;
        const im = s * p - r * q;
        const apart = azimuths[j + b] - azimuths[j];
        const lower = portable.cos(azimuths[j + b]) - portable.cos(azimuths[j]);
        pairs.push({ re, im, length: Math.sqrt(re * re + im * im), harmonic, apart, lower });
      }
    }
  }
  return pairs;
}

/** How well the pairs agree on each of the bends with one climb. */
function agreementsOf(pairs: readonly RowPair[], climb: number): Float64Array {
  const sums = new Float64Array(bends.length);
  let all = 1e-12;
  for (const { re, im, length, harmonic, apart, lower } of pairs) {
    all += length;
    const first = harmonic * (climb * apart + 2 * Math.PI * bends[0] * lower);
    const hop = 2 * Math.PI * harmonic * bendHop * lower;
    const [ch, sh] = [portable.cos(hop), portable.sin(hop)];
    let [c, s] = [portable.cos(first), portable.sin(first)];
    for (let i = 0; i < sums.length; i++) {
      sums[i] += re * c - im * s;
      const next = c * ch - s * sh;
      s = s * ch + c * sh;
      c = next;
    }
  }
  return sums.map((sum) => sum / all);
}
