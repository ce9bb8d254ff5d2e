import {
  added,
  type Convolution,
  convolution,
  convolve,
  type Dense,
  dense,
  type Planes,
  pooled,
  quartered,
  through,
  Weights,
} from '../4-limbs/network';
import { weightsIn } from '../4-limbs/weights';
import { endColumns, endRows } from './end-patch';
import { profilePhases, taperColumns, threadRows } from './thread-patch';
import trained from './weights.json';

/** Kinds in the order in which the networks tell them. */
export const noseKinds = ['none', 'cone-30', 'cone-37', 'cone-45'] as const;
export const baseKinds = ['none', 'o-ring', 'shoulder'] as const;
export const profileKinds = ['60', '55', 'npt'] as const;
export const taperKinds = ['straight', 'tapered'] as const;

/** What each network tells apart, and the window that it sees: rows, columns, and whether columns go round. */
const parts = {
  nose: { kinds: noseKinds.length, rows: endRows, columns: endColumns, round: false },
  base: { kinds: baseKinds.length, rows: endRows, columns: endColumns, round: false },
  profile: { kinds: profileKinds.length, rows: threadRows, columns: profilePhases, round: true },
  taper: { kinds: taperKinds.length, rows: threadRows, columns: taperColumns, round: false },
} as const;
export type Part = keyof typeof parts;

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
  const { kinds, rows, columns, round } = parts[part];
  const features = 24 * (rows / 16) * (round ? 2 : columns / 8) + 1;
  const network = {
    pooling,
    adding,
    hidden: dense(w, features, hiddenUnits),
    output: dense(w, hiddenUnits, kinds),
  };
  w.end();
  return network;
};

const networks = new Map<Part, Network>();

/** One logit for each kind that a window may show, as if all were as common. `told`: how the view leans along the axis,
 *  mm along per mm down (nose, base, taper), or ln of how finely the photo shows a pitch (profile). Trained on rendered
 *  photos only (fixtures/training). */
export function endLogits(part: Part, window: Float32Array, told: number): Float64Array {
  const net = networks.get(part) ?? read(part);
  networks.set(part, net);
  const { rows, columns, round } = parts[part];
  let x: Planes = { values: window, channels: 1, rows, columns };
  for (const layer of net.pooling) x = quartered(convolve(x, layer, round));
  x = folded(added(x, convolve(x, net.adding, round)));
  const { values } = round ? pooled(x) : x;
  const hidden = through(net.hidden, Float64Array.from([...values, told]));
  return through(
    net.output,
    hidden.map((v) => Math.max(0, v)),
  );
}

/** The upper rows and the lower ones in mirror image, added: a part looks the same from either side of its axis. */
function folded({ values, channels, rows, columns }: Planes): Planes {
  const half = rows / 2;
  const out = new Float32Array(channels * half * columns);
  for (let c = 0; c < channels; c++)
    for (let y = 0; y < half; y++)
      for (let x = 0; x < columns; x++)
        out[(c * half + y) * columns + x] =
          values[(c * rows + y) * columns + x] + values[(c * rows + rows - 1 - y) * columns + x];
  return { values: out, channels, rows: half, columns };
}
