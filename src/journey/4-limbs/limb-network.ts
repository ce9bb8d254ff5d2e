import * as portable from '../../quantity/portable-math';
import { type LimbPatch, limbBins, limbChannels, limbPhases } from './limb-patch';
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

/** Where the crests of one side lie, as probability over the patch's bins; `none` that no crest of a
 *  thread is there. Trained on rendered photos only (fixtures/training). */
export interface CrestBelief {
  readonly bins: Float64Array;
  readonly none: number;
}

const channels = 16;
const head = 24;

type Network = ReturnType<typeof read>;
let network: Network | undefined;

function read() {
  const w = new Weights(weightsOf('limb'));
  const layers = {
    c1: convolution(w, 2 * limbChannels, channels, 5, 5),
    c2: convolution(w, channels, channels, 5, 3),
    c3: convolution(w, channels, channels, 5, 3, 2),
    c4: convolution(w, channels, channels, 5, 3, 4),
    c5: convolution(w, channels, channels, 5, 3, 6),
    d1: convolution(w, 2 * channels, head, 5, 1),
    d2: convolution(w, head, 1, 1, 1),
    none: { weights: w.take(head), bias: w.take(1) },
  };
  if (!w.spent) throw new Error('The limb network and its weights do not belong together.');
  return layers;
}

export function crestsOf(patch: LimbPatch): { left: CrestBelief; right: CrestBelief } {
  network ??= read();
  return {
    left: believed(network, patch.left, patch.right),
    right: believed(network, patch.right, patch.left),
  };
}

function believed(net: Network, own: Float32Array, other: Float32Array): CrestBelief {
  const values = new Float64Array(own.length + other.length);
  values.set(own);
  values.set(other, own.length);
  let x: Planes = { values, channels: 2 * limbChannels, rows: limbBins, columns: limbPhases };
  x = halved(rectified(convolve(x, net.c1, true)), true);
  x = rectified(convolve(x, net.c2, true));
  x = added(x, rectified(convolve(x, net.c3, true)));
  x = added(x, rectified(convolve(x, net.c4, true)));
  x = added(x, rectified(convolve(x, net.c5, true)));
  const f = rectified(convolve(pooled(x), net.d1, false));
  const logits = convolve(f, net.d2, false).values;
  let none = net.none.bias[0];
  for (let c = 0; c < head; c++) {
    let sum = 0;
    for (let r = 0; r < limbBins; r++) sum += f.values[c * limbBins + r];
    none += (net.none.weights[c] * sum) / limbBins;
  }
  let most = none;
  for (const v of logits) if (v > most) most = v;
  const bins = logits.map((v) => portable.exp(v - most));
  const absent = portable.exp(none - most);
  const present = bins.reduce((s, v) => s + v, 0);
  for (let i = 0; i < bins.length; i++) bins[i] /= present;
  return { bins, none: absent / (absent + present) };
}
