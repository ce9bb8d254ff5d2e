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

/** Same size out as in: zeros above and below; left and right zeros too, or the pattern going round. */
export function convolve(
  { values, rows, columns }: Planes,
  { weights, bias, from, to, rows: kr, columns: kc, dilation }: Convolution,
  round: boolean,
): Planes {
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
  const accumulate = accumulators[`${kr}×${kc}`];
  if (!accumulate) throw new Error(`No kernel of ${kr} by ${kc} has been written.`);
  const taps = kr * kc;
  let k = 0;
  for (let o = 0; o < to; o++) {
    sum.fill(bias[o]);
    for (let c = 0; c < from; c++) {
      const kernel = weights.subarray(k, k + taps);
      accumulate(sum, padded, c * height * width, dilation * width, kernel);
      k += taps;
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

/** A kernel over a run of values, added to `sum`: rows of the kernel begin at `at` and `far` apart. Written out for each
 *  size, all rows in one pass: half of all the time that a photo takes would go into loops over the taps. */
type Accumulate = (
  sum: Float64Array,
  from: Float64Array,
  at: number,
  far: number,
  kernel: Float32Array,
) => void;

const accumulators: Readonly<Record<string, Accumulate>> = {
  '1×1': (sum, from, at, _, kernel) => {
    const a = kernel[0];
    for (let i = 0; i < sum.length; i++) sum[i] += a * from[at + i];
  },
  '1×5': (sum, from, at, _, kernel) => {
    for (let i = 0; i < sum.length; i++) {
      const q = at + i;
      sum[i] +=
        kernel[0] * from[q] +
        kernel[1] * from[q + 1] +
        kernel[2] * from[q + 2] +
        kernel[3] * from[q + 3] +
        kernel[4] * from[q + 4];
    }
  },
  '5×1': (sum, from, at, far, kernel) => {
    const a = kernel[0];
    const b = kernel[1];
    const c = kernel[2];
    const d = kernel[3];
    const e = kernel[4];
    for (let i = 0; i < sum.length; i++) {
      const q = at + i;
      sum[i] =
        sum[i] +
        a * from[q] +
        b * from[q + far] +
        c * from[q + 2 * far] +
        d * from[q + 3 * far] +
        e * from[q + 4 * far];
    }
  },
  '5×3': (sum, from, at, far, kernel) => {
    const a0 = kernel[0];
    const a1 = kernel[1];
    const a2 = kernel[2];
    const b0 = kernel[3];
    const b1 = kernel[4];
    const b2 = kernel[5];
    const c0 = kernel[6];
    const c1 = kernel[7];
    const c2 = kernel[8];
    const d0 = kernel[9];
    const d1 = kernel[10];
    const d2 = kernel[11];
    const e0 = kernel[12];
    const e1 = kernel[13];
    const e2 = kernel[14];
    const pa = at + 2;
    const pb = pa + far;
    const pc = pb + far;
    const pd = pc + far;
    const pe = pd + far;
    // Two of three values of a row are those of the step before.
    let a = from[pa - 2];
    let b = from[pb - 2];
    let c = from[pc - 2];
    let d = from[pd - 2];
    let e = from[pe - 2];
    let aa = from[pa - 1];
    let bb = from[pb - 1];
    let cc = from[pc - 1];
    let dd = from[pd - 1];
    let ee = from[pe - 1];
    for (let i = 0; i < sum.length; i++) {
      const a3 = from[pa + i];
      const b3 = from[pb + i];
      const c3 = from[pc + i];
      const d3 = from[pd + i];
      const e3 = from[pe + i];
      sum[i] =
        sum[i] +
        (a0 * a + a1 * aa + a2 * a3) +
        (b0 * b + b1 * bb + b2 * b3) +
        (c0 * c + c1 * cc + c2 * c3) +
        (d0 * d + d1 * dd + d2 * d3) +
        (e0 * e + e1 * ee + e2 * e3);
      a = aa;
      aa = a3;
      b = bb;
      bb = b3;
      c = cc;
      cc = c3;
      d = dd;
      dd = d3;
      e = ee;
      ee = e3;
    }
  },
  '5×5': (sum, from, at, far, kernel) => {
    for (let row = 0; row < 5; row++) {
      const a = kernel[5 * row + 0];
      const b = kernel[5 * row + 1];
      const c = kernel[5 * row + 2];
      const d = kernel[5 * row + 3];
      const e = kernel[5 * row + 4];
      const start = at + row * far;
      for (let i = 0; i < sum.length; i++) {
        const q = start + i;
        sum[i] +=
          a * from[q] + b * from[q + 1] + c * from[q + 2] + d * from[q + 3] + e * from[q + 4];
      }
    }
  },
};
