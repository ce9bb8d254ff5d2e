import * as portable from '../../quantity/portable-math';
import {
  added,
  type Convolution,
  convolution,
  convolve,
  type Planes,
  pooledAlong,
  Weights,
} from './network';

/** Where the crest next to a window's middle lies, periods along the frame, as a density on the circle of phases (von Mises,
 *  concentration `sureness`; Mardia and Jupp, Directional Statistics, 3.5.4). Trained on rendered photos only
 *  (fixtures/training). */
export interface PhaseBelief {
  readonly phase: number;
  readonly sureness: number;
}

interface Network {
  readonly first: Convolution;
  readonly second: Convolution;
  readonly adding: readonly Convolution[];
  readonly head: Convolution;
  readonly direction: Convolution;
}

const channels = { in: 4, first: 12, rest: 24, head: 24 } as const;
/** Of a turn. */
export const phases = 24;
/** Pixels of a pitch about which the networks were told how fine a photo is. */
const usualPitchPx = 12;

function read(weights: Float32Array): Network {
  const w = new Weights(weights);
  const c = channels.rest;
  const network = {
    first: convolution(w, { from: channels.in, to: channels.first, rows: 5, columns: 5 }),
    second: convolution(w, { from: channels.first, to: c, rows: 5, columns: 3 }),
    adding: [2, 4].map((dilation) =>
      convolution(w, { from: c, to: c, rows: 5, columns: 3, dilation }),
    ),
    head: convolution(w, { from: 2 * c, to: channels.head, rows: 1, columns: 5 }),
    direction: convolution(w, { from: channels.head, to: 2, rows: 1, columns: 1, signed: true }),
  };
  w.end();
  return network;
}

const cosines = Float64Array.from({ length: phases }, (_, i) => portable.cos(angleOf(i)));
const sines = Float64Array.from({ length: phases }, (_, i) => portable.sin(angleOf(i)));

function angleOf(column: number): number {
  return (2 * Math.PI * (column + 0.5)) / phases;
}

/** What a network says of a patch of so many rows; `lean` is how the view leans along the frame at its window, as the network
 *  was told of it, `pitchPx` how many pixels show a pitch. */
export type PhaseTeller = (patch: Float32Array, lean: number, pitchPx: number) => PhaseBelief;

/** A network, read when it is asked first. */
export function phaseTeller(weights: () => Float32Array, rows: number): PhaseTeller {
  let network: Network | undefined;
  return (patch, lean, pitchPx) => {
    network ??= read(weights());
    return told(network, rows, patch, [lean, portable.log(pitchPx / usualPitchPx)]);
  };
}

function told(
  network: Network,
  rows: number,
  patch: Float32Array,
  [lean, fineness]: readonly [number, number],
): PhaseBelief {
  const values = new Float32Array(channels.in * rows * phases);
  values.set(patch);
  values.fill(lean, patch.length, patch.length + rows * phases);
  values.fill(fineness, patch.length + rows * phases);
  let x: Planes = { values, channels: channels.in, rows, columns: phases };
  x = convolve(x, network.first, true);
  x = convolve(x, network.second, true);
  for (const layer of network.adding) x = added(x, convolve(x, layer, true));
  const features = convolve(pooledAlong(x), network.head, true);
  const z = convolve(features, network.direction, true).values;
  let a = 0;
  let b = 0;
  for (let i = 0; i < phases; i++) {
    a += z[i] * cosines[i] - z[phases + i] * sines[i];
    b += z[i] * sines[i] + z[phases + i] * cosines[i];
  }
  const turn = portable.atan2(b, a) / (2 * Math.PI);
  return { phase: turn - Math.floor(turn), sureness: Math.sqrt(a * a + b * b) };
}
