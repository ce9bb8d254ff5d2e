import * as portable from '../../quantity/portable-math';
import { type LimbPatch, limbBins, limbChannels, limbPhases } from './limb-patch';
import { halved, Weights } from './network';
import { headChannels, readTrunk, shares, throughTrunk, weighed } from './trunk';
import { weightsOf } from './weights';

/** Where the crests of one side lie, as probability over the patch's bins; `none` that no crest of a
 *  thread is there. Trained on rendered photos only (fixtures/training). */
export interface CrestBelief {
  readonly bins: Float64Array;
  readonly none: number;
}

type Network = ReturnType<typeof read>;
let network: Network | undefined;

function read() {
  const w = new Weights(weightsOf('limb'));
  const trunk = readTrunk(w, 2 * limbChannels, [2, 4, 6]);
  const none = { weights: w.take(headChannels), bias: w.take(1)[0] };
  w.end();
  return { trunk, none };
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
  const input = { values, channels: 2 * limbChannels, rows: limbBins, columns: limbPhases };
  const { features, logits } = throughTrunk(net.trunk, input, true, (planes, after) =>
    after === 0 ? halved(planes, true) : planes,
  );
  const none = weighed(features, net.none.weights, net.none.bias);
  const most = logits.reduce((a, b) => Math.max(a, b), none);
  const { each: bins, sum } = shares(logits, most);
  const absent = portable.exp(none - most);
  return { bins, none: absent / (absent + sum) };
}
