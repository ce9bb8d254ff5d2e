import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';
import { sampleLinear } from '../2-card-pose/sampling';
import { darkLight } from './level-light';

/** Some turns of a thread laid on one another: sums of the logarithm of light and of its square, cell by cell;
 *  values[(channel·rows + row)·phases + phase]. Each cell takes `sub` by `sub` samples of every turn. */
export interface Folding {
  readonly values: Float32Array;
  readonly rows: number;
  readonly phases: number;
  readonly turns: number;
  readonly sub: number;
}

/** What a fold keeps of each cell: the mean over its samples, and their spread. */
export const foldChannels = 2;

export const folding = (size: Omit<Folding, 'values'>): Folding => ({
  ...size,
  values: new Float32Array(foldChannels * size.rows * size.phases),
});

/** Adds one line of samples, at photo points (x and y in turn), to a row. False where one lies beyond the photo. */
export function addLine(
  { values, rows, phases, turns, sub }: Folding,
  grey: GreyImage,
  at: Float64Array,
  row: number,
): boolean {
  const cells = rows * phases;
  const first = row * phases;
  let i = 0;
  for (let turn = 0; turn < turns; turn++)
    for (let cell = first; cell < first + phases; cell++)
      for (let k = 0; k < sub; k++, i += 2) {
        const v = portable.log(sampleLinear(grey, at[i], at[i + 1]) + darkLight);
        if (Number.isNaN(v)) return false;
        values[cell] += v;
        values[cells + cell] += v * v;
      }
  return true;
}

/** Means and spreads out of the sums, in place. */
export function folded({ values, rows, phases, turns, sub }: Folding): Float32Array {
  const n = turns * sub * sub;
  const cells = rows * phases;
  for (let k = 0; k < cells; k++) {
    const mean = values[k] / n;
    values[cells + k] = Math.sqrt(Math.max(0, values[cells + k] / n - mean * mean));
    values[k] = mean;
  }
  return values;
}
