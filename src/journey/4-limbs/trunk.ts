import * as portable from '../../quantity/portable-math';
import {
  added,
  type Convolution,
  convolution,
  convolve,
  type Planes,
  pooled,
  rectified,
  type Weights,
} from './network';

/** What both networks share: two convolutions, some that add to what is there, then for every row one
 *  logit out of its greatest and its mean values. */
export interface Trunk {
  readonly first: Convolution;
  readonly second: Convolution;
  readonly adding: readonly Convolution[];
  readonly head: Convolution;
  readonly logit: Convolution;
}

/** How fewer columns are made. */
export interface Thinning {
  readonly every?: 1 | 2;
  readonly thinned?: (planes: Planes) => Planes;
}

export const trunkChannels = 16;
export const headChannels = 24;

/** `dilations` of the rows of the adding convolutions. */
export function readTrunk(w: Weights, inputs: number, dilations: readonly number[]): Trunk {
  const c = trunkChannels;
  return {
    first: convolution(w, { from: inputs, to: c, rows: 5, columns: 5 }),
    second: convolution(w, { from: c, to: c, rows: 5, columns: 3 }),
    adding: dilations.map((dilation) =>
      convolution(w, { from: c, to: c, rows: 5, columns: 3, dilation }),
    ),
    head: convolution(w, { from: 2 * c, to: headChannels, rows: 5, columns: 1 }),
    logit: convolution(w, { from: headChannels, to: 1, rows: 1, columns: 1 }),
  };
}

/** `round`: whether columns go round. Of what the first and the second convolution give, `every` 2 leaves every
 *  second column only; `thinned` makes fewer of what the first gives. */
export function throughTrunk(
  trunk: Trunk,
  input: Planes,
  round: boolean,
  { every = 1, thinned = (planes) => planes }: Thinning,
): { readonly planes: Planes; readonly features: Planes; readonly logits: Float64Array } {
  let x = thinned(rectified(convolve(input, trunk.first, round, every)));
  x = rectified(convolve(x, trunk.second, round, every));
  for (const layer of trunk.adding) x = added(x, rectified(convolve(x, layer, round)));
  const features = rectified(convolve(pooled(x), trunk.head, false));
  return { planes: x, features, logits: convolve(features, trunk.logit, false).values };
}

/** Mean of each channel's rows from one column on, weighted and summed: a logit of the whole. */
export function weighed(
  { values, channels, rows, columns }: Planes,
  weights: Float32Array,
  bias: number,
): number {
  let logit = bias;
  for (let c = 0; c < channels; c++)
    for (let x = 0; x < columns; x++) {
      let sum = 0;
      for (let r = 0; r < rows; r++) sum += values[(c * rows + r) * columns + x];
      logit += (weights[c * columns + x] * sum) / rows;
    }
  return logit;
}

/** Exponentials of logits over their sum, which is of `exp(logit − most)`. */
export function shares(logits: Float64Array, most: number): { each: Float64Array; sum: number } {
  const each = logits.map((v) => portable.exp(v - most));
  const sum = each.reduce((s, v) => s + v, 0);
  for (let i = 0; i < each.length; i++) each[i] /= sum;
  return { each, sum };
}
