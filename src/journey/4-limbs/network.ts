/** Layers of a small convolutional network in single precision: the same bits in every engine. */

import { broadOf, type ConvolutionShape, convolveSingle, tallOf } from '../../quantity/convolution';

/** Values[(channel·rows + row)·columns + column]. */
export interface Planes {
  readonly values: Float32Array;
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
  /** Whether what is below zero stays, as in a last layer. */
  readonly signed?: boolean;
}

export interface Convolution extends Required<Shape> {
  readonly weights: Float32Array;
  readonly bias: Float32Array;
}

export function convolution(
  source: Weights,
  { from, to, rows, columns, dilation = 1, signed = false }: Shape,
): Convolution {
  const weights = source.take(to * from * rows * columns);
  return { weights, bias: source.take(to), from, to, rows, columns, dilation, signed };
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
export function convolve(planes: Planes, layer: Convolution, round: boolean): Planes {
  const { channels, rows, columns } = planes;
  const { weights, bias, from, to, signed } = layer;
  const shape = {
    channels: from,
    outputs: to,
    ...laidAlong(planes, layer),
    floor: signed ? Number.NEGATIVE_INFINITY : 0,
  };
  if (channels !== from) throw new Error('A layer does not belong to these planes.');
  const values = convolveSingle(shape, padded(planes.values, shape, round), weights, bias);
  return { values, channels: to, rows, columns };
}

/** How planes are gone over: a single column as if it were a row, since a row's values are summed side by side. */
function laidAlong(
  { rows, columns }: Planes,
  { rows: tall, columns: broad, dilation }: Convolution,
) {
  const single = columns === 1 && broad === 1 && dilation === 1;
  return single
    ? { rows: 1, columns: rows, tall: 1, broad: tall, dilation }
    : { rows, columns, tall, broad, dilation };
}

/** Room that one convolution after the other uses: memory that is new each time has to be mapped and collected. */
let room = new Float32Array(0);

/** All planes with as much about them as the kernel reaches beyond. */
function padded(values: Float32Array, shape: ConvolutionShape, round: boolean): Float32Array {
  const { channels, rows, columns, tall, broad, dilation } = shape;
  const [height, width] = [tallOf(shape), broadOf(shape)];
  const above = (tall >> 1) * dilation;
  const aside = broad >> 1;
  const size = channels * height * width;
  if (room.length < size) room = new Float32Array(size);
  const out = room.subarray(0, size).fill(0);
  for (let c = 0; c < channels; c++)
    for (let y = 0; y < rows; y++) {
      const source = (c * rows + y) * columns;
      const at = (c * height + above + y) * width + aside;
      for (let x = 0; x < columns; x++) out[at + x] = values[source + x];
      if (!round) continue;
      for (let x = 0; x < aside; x++) {
        out[at - aside + x] = values[source + columns - aside + x];
        out[at + columns + x] = values[source + x];
      }
    }
  return out;
}

export function added(a: Planes, b: Planes): Planes {
  for (let i = 0; i < a.values.length; i++) a.values[i] += b.values[i];
  return a;
}

/** Every second column; with `mean`, the mean of each pair. */
export function halved({ values, channels, rows, columns }: Planes, mean: boolean): Planes {
  const half = columns >> 1;
  const out = new Float32Array(channels * rows * half);
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
  const out = new Float32Array(channels * high * wide);
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
  const out = new Float32Array(2 * channels * rows);
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
  const out = new Float32Array(2 * channels * columns);
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
