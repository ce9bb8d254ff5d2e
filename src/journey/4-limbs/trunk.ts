import * as portable from '../../quantity/portable-math';
import {
  added,
  type Convolution,
  convolution,
  convolve,
  type Planes,
  pooled,
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

/** How columns are made fewer. */
export interface Thinning {
  readonly afterFirst: (planes: Planes) => Planes;
  readonly afterSecond?: (planes: Planes) => Planes;
}

/** Channels out of its head. */
export const headChannels = 24;

/** Channels in and along the trunk, and dilations of the rows of its adding convolutions. */
export interface TrunkShape {
  readonly inputs: number;
  readonly channels: number;
  readonly dilations: readonly number[];
}

export function readTrunk(w: Weights, { inputs, channels: c, dilations }: TrunkShape): Trunk {
  return {
    first: convolution(w, { from: inputs, to: c, rows: 5, columns: 5 }),
    second: convolution(w, { from: c, to: c, rows: 5, columns: 3 }),
    adding: dilations.map((dilation) =>
      convolution(w, { from: c, to: c, rows: 5, columns: 3, dilation }),
    ),
    head: convolution(w, { from: 2 * c, to: headChannels, rows: 5, columns: 1 }),
    logit: convolution(w, { from: headChannels, to: 1, rows: 1, columns: 1, signed: true }),
  };
}

/** `round`: whether columns go round. */
export function throughTrunk(
  trunk: Trunk,
  input: Planes,
  round: boolean,
  { afterFirst, afterSecond = (planes) => planes }: Thinning,
): { readonly planes: Planes; readonly features: Planes; readonly logits: Float32Array } {
  let x = afterFirst(convolve(input, trunk.first, round));
  x = afterSecond(convolve(x, trunk.second, round));
  for (const layer of trunk.adding) x = added(x, convolve(x, layer, round));
  const features = convolve(pooled(x), trunk.head, false);
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
export function shares(
  logits: Float32Array | Float64Array,
  most: number,
): { each: Float64Array; sum: number } {
  const each = Float64Array.from(logits, (v) => portable.exp(v - most));
  const sum = each.reduce((s, v) => s + v, 0);
  for (let i = 0; i < each.length; i++) each[i] /= sum;
  return { each, sum };
}
