import { matrixProduct } from '../../quantity/convolution';
import * as portable from '../../quantity/portable-math';

/** Rows of samples, folded about their middle: there the even part of a row meets the cosine only and the odd part the
 *  sine only, half the products of a plain sum. Values [sample·rows + row], from the middle outwards. */
export interface FoldedRows {
  /** Of samples before they were folded. */
  readonly samples: number;
  readonly rows: number;
  readonly even: Float32Array;
  readonly odd: Float32Array;
}

export function foldedRows(samples: number, rows: number): FoldedRows {
  const size = ((samples + 1) >> 1) * rows;
  return { samples, rows, even: new Float32Array(size), odd: new Float32Array(size) };
}

/** Folds one row's samples into its place. */
export function foldInto(folded: FoldedRows, row: number, values: Float64Array): void {
  const { samples, rows, even, odd } = folded;
  let after = samples >> 1;
  let before = samples - 1 - after;
  let at = row;
  // Of an odd number the middle one is its own mirror image.
  if (after === before) {
    even[at] = values[after++];
    before--;
    at += rows;
  }
  for (; after < samples; after++, before--, at += rows) {
    even[at] = values[after] + values[before];
    odd[at] = values[after] - values[before];
  }
}

/** Waves about the middle of so many samples, from the middle outwards: values [wave·half + sample]. */
export interface Waves {
  readonly count: number;
  readonly cosines: Float32Array;
  readonly sines: Float32Array;
}

/** `turns`: of each wave between two samples, rad. */
export function wavesOf(samples: number, turns: readonly number[]): Waves {
  const half = (samples + 1) >> 1;
  const cosines = new Float32Array(turns.length * half);
  const sines = new Float32Array(turns.length * half);
  let at = 0;
  for (const turn of turns) {
    const ct = portable.cos(turn);
    const st = portable.sin(turn);
    const first = samples % 2 === 1 ? 0 : turn / 2;
    let c = portable.cos(first);
    let s = portable.sin(first);
    for (const end = at + half; at < end; at++) {
      cosines[at] = c;
      sines[at] = s;
      const next = c * ct - s * st;
      s = s * ct + c * st;
      c = next;
    }
  }
  return { count: turns.length, cosines, sines };
}

/** Sums of rows times cosines and times sines: values [wave·rows + row]. */
export function amplitudes(
  { rows, even, odd }: FoldedRows,
  { count, cosines, sines }: Waves,
): { readonly re: Float32Array; readonly im: Float32Array } {
  return {
    re: matrixProduct(cosines, even, count, rows),
    im: matrixProduct(sines, odd, count, rows),
  };
}
