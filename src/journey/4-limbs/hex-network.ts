import * as portable from '../../quantity/portable-math';
import { type HexPatch, hexColumns, hexRows } from './hex-patch';
import {
  added,
  convolution,
  convolve,
  halved,
  type Planes,
  pooled,
  rectified,
  Weights,
} from './network';
import { weightsOf } from './weights';

/** Where the corners of the hex lie on either side, as probability over the patch's rows, and the
 *  probability that the hex lies towards greater s. Trained on rendered photos only. */
export interface HexBelief {
  readonly left: Float64Array;
  readonly right: Float64Array;
  readonly ahead: number;
}

const channels = 16;
const head = 24;
const quarter = hexColumns / 4;

type Network = ReturnType<typeof read>;
let network: Network | undefined;

function read() {
  const w = new Weights(weightsOf('hex'));
  const layers = {
    c1: convolution(w, 3, channels, 5, 5),
    c2: convolution(w, channels, channels, 5, 3),
    c3: convolution(w, channels, channels, 5, 3, 2),
    c4: convolution(w, channels, channels, 5, 3, 4),
    d1: convolution(w, 2 * channels, head, 5, 1),
    d2: convolution(w, head, 1, 1, 1),
    ahead: { weights: w.take(quarter * channels), bias: w.take(1) },
  };
  if (!w.spent) throw new Error('The hex network and its weights do not belong together.');
  return layers;
}

export function hexOf({ left, right, thread }: HexPatch): HexBelief {
  network ??= read();
  const a = believed(network, left, right, thread);
  const b = believed(network, right, left, thread);
  const logit = (a.ahead + b.ahead) / 2;
  return { left: a.rows, right: b.rows, ahead: 1 / (1 + portable.exp(-logit)) };
}

function believed(net: Network, own: Float32Array, other: Float32Array, thread: Float32Array) {
  const size = hexRows * hexColumns;
  const values = new Float64Array(3 * size);
  values.set(own);
  values.set(other, size);
  values.set(thread, 2 * size);
  let x: Planes = { values, channels: 3, rows: hexRows, columns: hexColumns };
  x = rectified(halved(convolve(x, net.c1, false), false));
  x = rectified(halved(convolve(x, net.c2, false), false));
  x = added(x, rectified(convolve(x, net.c3, false)));
  x = added(x, rectified(convolve(x, net.c4, false)));
  const logits = convolve(rectified(convolve(pooled(x), net.d1, false)), net.d2, false).values;
  const most = Math.max(...logits);
  const rows = logits.map((v) => portable.exp(v - most));
  const all = rows.reduce((s, v) => s + v, 0);
  for (let i = 0; i < rows.length; i++) rows[i] /= all;
  let ahead = net.ahead.bias[0];
  for (let c = 0; c < channels; c++)
    for (let q = 0; q < quarter; q++) {
      let sum = 0;
      for (let r = 0; r < hexRows; r++) sum += x.values[(c * hexRows + r) * quarter + q];
      ahead += (net.ahead.weights[c * quarter + q] * sum) / hexRows;
    }
  return { rows, ahead };
}
