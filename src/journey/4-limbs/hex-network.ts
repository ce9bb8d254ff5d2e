import * as portable from '../../quantity/portable-math';
import { type HexPatch, hexColumns, hexRows } from './hex-patch';
import { halved, type Planes, Weights } from './network';
import { readTrunk, shares, throughTrunk, weighed } from './trunk';
import { weightsOf } from './weights';

/** Where the corners of the hex lie on either side, as probability over the patch's rows, and the
 *  probability that the hex lies towards greater s. Trained on rendered photos only. */
export interface HexBelief {
  readonly left: Float64Array;
  readonly right: Float64Array;
  readonly ahead: number;
}

type Network = ReturnType<typeof read>;
let network: Network | undefined;
const channels = 16;

function read() {
  const w = new Weights(weightsOf('hex'));
  const trunk = readTrunk(w, { inputs: 3, channels, dilations: [2, 4] });
  const ahead = { weights: w.take((channels * hexColumns) / 4), bias: w.take(1)[0] };
  w.end();
  return { trunk, ahead };
}

export function hexOf({ left, right, thread }: HexPatch): HexBelief {
  network ??= read();
  const a = believed(network, left, right, thread);
  const b = believed(network, right, left, thread);
  const logit = (a.ahead + b.ahead) / 2;
  return { left: a.rows, right: b.rows, ahead: 1 / (1 + portable.exp(-logit)) };
}

const everySecond = (planes: Planes) => halved(planes, false);

function believed(net: Network, own: Float32Array, other: Float32Array, thread: Float32Array) {
  const size = hexRows * hexColumns;
  const values = new Float32Array(3 * size);
  values.set(own);
  values.set(other, size);
  values.set(thread, 2 * size);
  const input = { values, channels: 3, rows: hexRows, columns: hexColumns };
  const { planes, logits } = throughTrunk(net.trunk, input, false, {
    afterFirst: everySecond,
    afterSecond: everySecond,
  });
  return {
    rows: shares(logits, Math.max(...logits)).each,
    ahead: weighed(planes, net.ahead.weights, net.ahead.bias),
  };
}
