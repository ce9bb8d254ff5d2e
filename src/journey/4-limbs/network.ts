/** Layers of a small convolutional network, in plain double arithmetic: the same bits in every engine. */

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

/** Same size out as in: zeros above and below; left and right zeros too, or the pattern going round. */
export function convolve(
  { values, rows, columns }: Planes,
  kernel: Convolution,
  round: boolean,
): Planes {
  const { bias, from, to, rows: kr, columns: kc, dilation } = kernel;
  const padR = (kr >> 1) * dilation;
  const padC = kc >> 1;
  const width = columns + 2 * padC;
  const height = rows + 2 * padR;
  const padded = new Float64Array(from * height * width + kc);
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
  // Rows of the padded width in one run; what falls on the padding is not read.
  const sum = new Float64Array((rows - 1) * width + columns);
  const out = new Float64Array(to * rows * columns);
  let k = 0;
  for (let o = 0; o < to; o++) {
    sum.fill(bias[o]);
    for (let c = 0; c < from; c++)
      for (let y = 0; y < kr; y++) {
        accumulate(sum, padded, (c * height + y * dilation) * width, kernel, k);
        k += kc;
      }
    for (let y = 0; y < rows; y++)
      for (let x = 0; x < columns; x++) out[(o * rows + y) * columns + x] = sum[y * width + x];
  }
  return { values: out, channels: to, rows, columns };
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

/** A kernel's row, whose weights begin at `k`, over a run of values: taps of one, three or five in one pass. */
function accumulate(
  sum: Float64Array,
  from: Float64Array,
  at: number,
  { weights, columns: taps }: Convolution,
  k: number,
): void {
  const run = sum.length;
  const a = weights[k];
  if (taps === 1) {
    for (let i = 0; i < run; i++) sum[i] += a * from[at + i];
    return;
  }
  const b = weights[k + 1];
  const c = weights[k + 2];
  if (taps === 3) {
    for (let i = 0; i < run; i++) {
      const q = at + i;
      sum[i] += a * from[q] + b * from[q + 1] + c * from[q + 2];
    }
    return;
  }
  const d = weights[k + 3];
  const e = weights[k + 4];
  for (let i = 0; i < run; i++) {
    const q = at + i;
    sum[i] += a * from[q] + b * from[q + 1] + c * from[q + 2] + d * from[q + 3] + e * from[q + 4];
  }
}
