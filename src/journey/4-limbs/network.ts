/** Layers of a small convolutional network, in plain double arithmetic: the same bits in every engine. */

import { accumulators, thinning } from './kernels';

/** Values[(channel·rows + row)·columns + column]. */
export interface Planes {
  readonly values: Float64Array;
  readonly channels: number;
  readonly rows: number;
  readonly columns: number;
}

/** Reads the weights of one layer after the other, in the order they were trained in. */
export class Weights {
  private at = 0;
  constructor(private readonly all: Float32Array) {}
  take(count: number): Float32Array {
    this.at += count;
    return this.all.subarray(this.at - count, this.at);
  }
  /** Throws unless all have been read. */
  end(): void {
    if (this.at !== this.all.length)
      throw new Error('A network and its weights do not belong together.');
  }
}

/** Channels in and out, and the kernel's size. */
interface Shape {
  readonly from: number;
  readonly to: number;
  readonly rows: number;
  readonly columns: number;
  /** Spacing of the kernel's rows. */
  readonly dilation?: number;
}

export interface Convolution extends Required<Shape> {
  readonly weights: Float32Array;
  readonly bias: Float32Array;
}

export function convolution(
  source: Weights,
  { from, to, rows, columns, dilation = 1 }: Shape,
): Convolution {
  const weights = source.take(to * from * rows * columns);
  return { weights, bias: source.take(to), from, to, rows, columns, dilation };
}

/** A layer that weighs all values for each of its outputs. */
export interface Dense {
  readonly weights: Float32Array;
  readonly bias: Float32Array;
}

export function dense(source: Weights, from: number, to: number): Dense {
  const weights = source.take(to * from);
  return { weights, bias: source.take(to) };
}

export function through({ weights, bias }: Dense, values: Float64Array): Float64Array {
  return Float64Array.from(bias, (b, o) => {
    let sum = b;
    const at = o * values.length;
    for (let i = 0; i < values.length; i++) sum += weights[at + i] * values[i];
    return sum;
  });
}

/** Same size out as in: zeros above and below; left and right zeros too, or the pattern going round. Of every second
 *  column only with `every` 2, for an even number of them. */
export function convolve(
  { values, rows, columns }: Planes,
  { weights, bias, from, to, rows: kr, columns: kc, dilation }: Convolution,
  round: boolean,
  every: 1 | 2 = 1,
): Planes {
  const padR = (kr >> 1) * dilation;
  const padC = kc >> 1;
  const width = columns + 2 * padC;
  const height = rows + 2 * padR;
  const padded = zeros(from * height * width + kc);
  for (let c = 0; c < from; c++)
    for (let y = 0; y < rows; y++) {
      const source = (c * rows + y) * columns;
      const at = (c * height + y + padR) * width;
      for (let x = 0; x < columns; x++) padded[at + padC + x] = values[source + x];
      if (!round) continue;
      for (let x = 0; x < padC; x++) {
        padded[at + x] = values[source + columns - padC + x];
        padded[at + padC + columns + x] = values[source + x];
      }
    }
  const wide = columns / every;
  const plane = rows * wide;
  // Two outputs are summed at once: past the last of an odd number its own is summed again, for nothing.
  const out = new Float64Array((to + (to % 2)) * plane);
  // Without padding aside, all rows are one.
  const size = kc === 1 ? { rows: 1, columns: plane } : { rows, columns: wide };
  const run = { from: padded, width, far: dilation * width, out, ...size, weights };
  const accumulate = (every === 2 ? thinning : accumulators)[`${kr}×${kc}`];
  if (!accumulate) throw new Error(`No kernel of ${kr} by ${kc} has been written.`);
  const taps = kr * kc;
  for (let o = 0; o < to; o += 2) {
    const p = Math.min(o + 1, to - 1);
    out.fill(bias[o], o * plane, (o + 1) * plane);
    out.fill(bias[p], (o + 1) * plane, (o + 2) * plane);
    for (let c = 0; c < from; c++)
      accumulate(run, c * height * width, o * plane, (o * from + c) * taps, (p * from + c) * taps);
  }
  return { values: out.subarray(0, to * plane), channels: to, rows, columns: wide };
}

/** Room that one convolution after the other uses: memory that is new each time has to be mapped and collected. */
let room = new Float64Array(0);

/** So many zeros, until the next ones are asked for. */
function zeros(size: number): Float64Array {
  if (room.length < size) room = new Float64Array(size);
  return room.subarray(0, size).fill(0);
}

export function rectified(planes: Planes): Planes {
  const { values } = planes;
  for (let i = 0; i < values.length; i++) if (values[i] < 0) values[i] = 0;
  return planes;
}

export function added(a: Planes, b: Planes): Planes {
  for (let i = 0; i < a.values.length; i++) a.values[i] += b.values[i];
  return a;
}

/** Every second column; with `mean`, the mean of each pair. */
export function halved({ values, channels, rows, columns }: Planes, mean: boolean): Planes {
  const half = columns >> 1;
  const out = new Float64Array(channels * rows * half);
  for (let r = 0; r < channels * rows; r++)
    for (let x = 0; x < half; x++) {
      const at = r * columns + 2 * x;
      out[r * half + x] = mean ? (values[at] + values[at + 1]) / 2 : values[at];
    }
  return { values: out, channels, rows, columns: half };
}

/** The mean of every two by two. */
export function quartered({ values, channels, rows, columns }: Planes): Planes {
  const [high, wide] = [rows >> 1, columns >> 1];
  const out = new Float64Array(channels * high * wide);
  for (let c = 0; c < channels; c++)
    for (let y = 0; y < high; y++)
      for (let x = 0; x < wide; x++) {
        const at = (c * rows + 2 * y) * columns + 2 * x;
        out[(c * high + y) * wide + x] =
          (values[at] + values[at + 1] + values[at + columns] + values[at + columns + 1]) / 4;
      }
  return { values: out, channels, rows: high, columns: wide };
}

/** Greatest, then mean of every row: twice the channels, one column. */
export function pooled({ values, channels, rows, columns }: Planes): Planes {
  const out = new Float64Array(2 * channels * rows);
  for (let r = 0; r < channels * rows; r++) {
    let most = values[r * columns];
    let sum = 0;
    for (let x = 0; x < columns; x++) {
      const v = values[r * columns + x];
      if (v > most) most = v;
      sum += v;
    }
    out[r] = most;
    out[channels * rows + r] = sum / columns;
  }
  return { values: out, channels: 2 * channels, rows, columns: 1 };
}

/** Greatest, then mean of every column: twice the channels, one row. */
export function pooledAlong({ values, channels, rows, columns }: Planes): Planes {
  const out = new Float64Array(2 * channels * columns);
  for (let c = 0; c < channels; c++)
    for (let x = 0; x < columns; x++) {
      let most = values[c * rows * columns + x];
      let sum = 0;
      for (let r = 0; r < rows; r++) {
        const v = values[(c * rows + r) * columns + x];
        if (v > most) most = v;
        sum += v;
      }
      out[c * columns + x] = most;
      out[(channels + c) * columns + x] = sum / rows;
    }
  return { values: out, channels: 2 * channels, rows: 1, columns };
}
