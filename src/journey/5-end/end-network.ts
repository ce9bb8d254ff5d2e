import {
  added,
  type Convolution,
  convolution,
  convolve,
  type Dense,
  dense,
  type Planes,
  quartered,
  rectified,
  through,
  Weights,
} from '../4-limbs/network';
import { weightsIn } from '../4-limbs/weights';
import { endColumns, endRows } from './end-patch';
import trained from './weights.json';

/** Kinds in the order in which the networks tell them. */
export const noseKinds = ['none', 'cone-30', 'cone-37', 'cone-45'] as const;
export const baseKinds = ['none', 'o-ring', 'shoulder'] as const;
export type NoseKind = (typeof noseKinds)[number];
export type BaseKind = (typeof baseKinds)[number];

const kinds = { nose: noseKinds.length, base: baseKinds.length } as const;
type Part = keyof typeof kinds;

interface Network {
  readonly pooling: readonly Convolution[];
  readonly adding: Convolution;
  readonly hidden: Dense;
  readonly output: Dense;
}

const hiddenUnits = 24;
const read = (part: Part): Network => {
  const w = new Weights(weightsIn(trained[part]));
  const layer = (from: number, to: number, columns = 5) =>
    convolution(w, { from, to, rows: 5, columns });
  const pooling = [layer(1, 12), layer(12, 16), layer(16, 24)];
  const adding = layer(24, 24, 3);
  const features = 24 * (endRows / 16) * (endColumns / 8) + 1;
  const network = {
    pooling,
    adding,
    hidden: dense(w, features, hiddenUnits),
    output: dense(w, hiddenUnits, kinds[part]),
  };
  w.end();
  return network;
};

const networks = new Map<Part, Network>();

/** One logit for each kind that a window of an end may show, as if all were as common. `lean`: how the view leans
 *  along the axis, mm along per mm down. Trained on rendered photos only (fixtures/training). */
export function endLogits(part: Part, window: Float32Array, lean: number): Float64Array {
  const net = networks.get(part) ?? read(part);
  networks.set(part, net);
  let x: Planes = {
    values: Float64Array.from(window),
    channels: 1,
    rows: endRows,
    columns: endColumns,
  };
  for (const layer of net.pooling) x = quartered(rectified(convolve(x, layer, false)));
  x = added(x, rectified(convolve(x, net.adding, false)));
  const hidden = through(net.hidden, Float64Array.from([...folded(x), lean]));
  return through(
    net.output,
    hidden.map((v) => Math.max(0, v)),
  );
}

/** The upper rows and the lower ones in mirror image, added: a part looks the same from either side of its axis. */
function folded({ values, channels, rows, columns }: Planes): Float64Array {
  const half = rows / 2;
  const out = new Float64Array(channels * half * columns);
  for (let c = 0; c < channels; c++)
    for (let y = 0; y < half; y++)
      for (let x = 0; x < columns; x++)
        out[(c * half + y) * columns + x] =
          values[(c * rows + y) * columns + x] + values[(c * rows + rows - 1 - y) * columns + x];
  return out;
}
