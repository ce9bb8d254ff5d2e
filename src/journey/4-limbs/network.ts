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
  const padded = room(0, from * height * width + kc).fill(0);
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
  const sum = room(1, (rows - 1) * width + columns);
  const twin = room(2, sum.length);
  const out = new Float64Array(to * rows * columns);
  const accumulate = accumulators[`${kr}×${kc}`];
  if (!accumulate) throw new Error(`No kernel of ${kr} by ${kc} has been written.`);
  const taps = kr * kc;
  for (let o = 0; o < to; o += 2) {
    // Past the last output its own is summed again, for nothing.
    const p = Math.min(o + 1, to - 1);
    sum.fill(bias[o]);
    twin.fill(bias[p]);
    for (let c = 0; c < from; c++) {
      const k = (o * from + c) * taps;
      const l = (p * from + c) * taps;
      const kernel = weights.subarray(k, k + taps);
      const other = weights.subarray(l, l + taps);
      accumulate(sum, twin, padded, c * height * width, dilation * width, kernel, other);
    }
    for (let y = 0; y < rows; y++)
      for (let x = 0; x < columns; x++) {
        out[(o * rows + y) * columns + x] = sum[y * width + x];
        out[(p * rows + y) * columns + x] = twin[y * width + x];
      }
  }
  return { values: out, channels: to, rows, columns };
}

/** Room that one convolution after the other uses, its values whatever was there: memory that is new each time has to be
 *  mapped and collected. */
const rooms = [new Float64Array(0), new Float64Array(0), new Float64Array(0)];

function room(which: 0 | 1 | 2, size: number): Float64Array {
  if (rooms[which].length < size) rooms[which] = new Float64Array(size);
  return rooms[which].subarray(0, size);
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

/** Kernels of two outputs over one run of values, added to `sum` and to `twin`: rows of a kernel begin at `at` and `far`
 *  apart. Written out for each size, all rows in one pass: half of all the time that a photo takes would go into loops
 *  over the taps. What is loaded serves both outputs; each is still summed in the order of its taps, to the same bits. */
type Accumulate = (
  sum: Float64Array,
  twin: Float64Array,
  from: Float64Array,
  at: number,
  far: number,
  kernel: Float32Array,
  other: Float32Array,
) => void;

const accumulators: Readonly<Record<string, Accumulate>> = {
  '1×1': (sum, twin, from, at, _, kernel, other) => {
    const a = kernel[0];
    const p = other[0];
    for (let i = 0; i < sum.length; i++) {
      const x = from[at + i];
      sum[i] += a * x;
      twin[i] += p * x;
    }
  },
  '1×5': (sum, twin, from, at, _, kernel, other) => {
    const a = kernel[0];
    const b = kernel[1];
    const c = kernel[2];
    const d = kernel[3];
    const e = kernel[4];
    const p = other[0];
    const q = other[1];
    const r = other[2];
    const s = other[3];
    const t = other[4];
    for (let i = 0; i < sum.length; i++) {
      const first = at + i;
      const v = from[first];
      const w = from[first + 1];
      const x = from[first + 2];
      const y = from[first + 3];
      const z = from[first + 4];
      sum[i] += a * v + b * w + c * x + d * y + e * z;
      twin[i] += p * v + q * w + r * x + s * y + t * z;
    }
  },
  '5×1': (sum, twin, from, at, far, kernel, other) => {
    const a = kernel[0];
    const b = kernel[1];
    const c = kernel[2];
    const d = kernel[3];
    const e = kernel[4];
    const p = other[0];
    const q = other[1];
    const r = other[2];
    const s = other[3];
    const t = other[4];
    for (let i = 0; i < sum.length; i++) {
      const first = at + i;
      const v = from[first];
      const w = from[first + far];
      const x = from[first + 2 * far];
      const y = from[first + 3 * far];
      const z = from[first + 4 * far];
      sum[i] = sum[i] + a * v + b * w + c * x + d * y + e * z;
      twin[i] = twin[i] + p * v + q * w + r * x + s * y + t * z;
    }
  },
  '5×3': (sum, twin, from, at, far, kernel, other) => {
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
    const p0 = other[0];
    const p1 = other[1];
    const p2 = other[2];
    const q0 = other[3];
    const q1 = other[4];
    const q2 = other[5];
    const r0 = other[6];
    const r1 = other[7];
    const r2 = other[8];
    const s0 = other[9];
    const s1 = other[10];
    const s2 = other[11];
    const t0 = other[12];
    const t1 = other[13];
    const t2 = other[14];
    const ia = at + 2;
    const ib = ia + far;
    const ic = ib + far;
    const id = ic + far;
    const ie = id + far;
    // Two of three values of a row are those of the step before.
    let a = from[ia - 2];
    let b = from[ib - 2];
    let c = from[ic - 2];
    let d = from[id - 2];
    let e = from[ie - 2];
    let aa = from[ia - 1];
    let bb = from[ib - 1];
    let cc = from[ic - 1];
    let dd = from[id - 1];
    let ee = from[ie - 1];
    for (let i = 0; i < sum.length; i++) {
      const a3 = from[ia + i];
      const b3 = from[ib + i];
      const c3 = from[ic + i];
      const d3 = from[id + i];
      const e3 = from[ie + i];
      sum[i] =
        sum[i] +
        (a0 * a + a1 * aa + a2 * a3) +
        (b0 * b + b1 * bb + b2 * b3) +
        (c0 * c + c1 * cc + c2 * c3) +
        (d0 * d + d1 * dd + d2 * d3) +
        (e0 * e + e1 * ee + e2 * e3);
      twin[i] =
        twin[i] +
        (p0 * a + p1 * aa + p2 * a3) +
        (q0 * b + q1 * bb + q2 * b3) +
        (r0 * c + r1 * cc + r2 * c3) +
        (s0 * d + s1 * dd + s2 * d3) +
        (t0 * e + t1 * ee + t2 * e3);
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
  '5×5': (sum, twin, from, at, far, kernel, other) => {
    for (let row = 0; row < 5; row++) {
      const a = kernel[5 * row];
      const b = kernel[5 * row + 1];
      const c = kernel[5 * row + 2];
      const d = kernel[5 * row + 3];
      const e = kernel[5 * row + 4];
      const p = other[5 * row];
      const q = other[5 * row + 1];
      const r = other[5 * row + 2];
      const s = other[5 * row + 3];
      const t = other[5 * row + 4];
      const start = at + row * far + 4;
      // Four of five values are those of the step before.
      let v = from[start - 4];
      let w = from[start - 3];
      let x = from[start - 2];
      let y = from[start - 1];
      for (let i = 0; i < sum.length; i++) {
        const z = from[start + i];
        sum[i] += a * v + b * w + c * x + d * y + e * z;
        twin[i] += p * v + q * w + r * x + s * y + t * z;
        v = w;
        w = x;
        x = y;
        y = z;
      }
    }
  },
};
