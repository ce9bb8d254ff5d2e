import * as portable from '../../quantity/portable-math';
import { closeLook, firstLook, type LimbGrid, type LimbPatch, limbChannels } from './limb-patch';
import { halved, Weights } from './network';
import { headChannels, readTrunk, shares, throughTrunk, weighed } from './trunk';
import { weightsOf } from './weights';

/** Where the crests of one side lie, as probability over the patch's bins; `none` that no crest of a
 *  thread is there. Trained on rendered photos only (fixtures/training). */
export interface CrestBelief {
  readonly bins: Float64Array;
  readonly none: number;
}

export interface CrestBeliefs {
  readonly left: CrestBelief;
  readonly right: CrestBelief;
}

type Network = ReturnType<typeof read>;
const networks = new Map<keyof typeof shapes, Network>();

/** Of a network: its channels, and inputs beside those of the two sides. */
const shapes = { limb: { channels: 16, told: 0 }, close: { channels: 24, told: 1 } } as const;

function read(name: keyof typeof shapes) {
  const w = new Weights(weightsOf(name));
  const { channels, told } = shapes[name];
  const trunk = readTrunk(w, {
    inputs: 2 * limbChannels + told,
    channels,
    dilations: [2, 4, 6],
  });
  const none = { weights: w.take(headChannels), bias: w.take(1)[0] };
  w.end();
  return { trunk, none };
}

function networkOf(name: keyof typeof shapes): Network {
  const network = networks.get(name) ?? read(name);
  networks.set(name, network);
  return network;
}

/** Of a patch by `firstLook`. */
export const crestsOf = (patch: LimbPatch): CrestBeliefs =>
  bothSides(networkOf('limb'), firstLook, patch, []);

/** Pixels of a pitch about which the network was told how fine a photo is. */
const usualPitchPx = 12;

/** Of a patch by `closeLook`, on a photo that shows a pitch in so many pixels. */
export const closeCrestsOf = (patch: LimbPatch, pitchPx: number): CrestBeliefs =>
  bothSides(networkOf('close'), closeLook, patch, [portable.log(pitchPx / usualPitchPx)]);

const bothSides = (
  net: Network,
  grid: LimbGrid,
  { left, right }: LimbPatch,
  told: readonly number[],
) => ({
  left: believed(net, grid, [left, right], told),
  right: believed(net, grid, [right, left], told),
});

function believed(
  net: Network,
  { bins: rows, phases: columns }: LimbGrid,
  [own, other]: readonly [Float32Array, Float32Array],
  told: readonly number[],
): CrestBelief {
  const cells = rows * columns;
  const channels = 2 * limbChannels + told.length;
  const values = new Float32Array(channels * cells);
  values.set(own);
  values.set(other, own.length);
  for (const [i, value] of told.entries())
    values.fill(value, (2 * limbChannels + i) * cells, (2 * limbChannels + i + 1) * cells);
  const input = { values, channels, rows, columns };
  const { features, logits } = throughTrunk(net.trunk, input, true, {
    afterFirst: (planes) => halved(planes, true),
  });
  const none = weighed(features, net.none.weights, net.none.bias);
  const most = logits.reduce((a, b) => Math.max(a, b), none);
  const { each: bins, sum } = shares(logits, most);
  const absent = portable.exp(none - most);
  return { bins, none: absent / (absent + sum) };
}
