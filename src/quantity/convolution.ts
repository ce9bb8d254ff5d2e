import { convolveWasm } from './convolve-wasm';

/** What is summed: each output is a plane of weighted sums over a kernel that slides over all channels' planes. A matrix
 *  product is one whose kernel is 1 by 1. */
export interface ConvolutionShape {
  readonly channels: number;
  readonly outputs: number;
  /** Of an output's plane. A channel's is larger by what the kernel reaches beyond it, zeros or whatever: `tallOf`,
   *  `broadOf`. */
  readonly rows: number;
  readonly columns: number;
  /** The kernel's rows and columns, and how far apart its rows lie. */
  readonly tall: number;
  readonly broad: number;
  readonly dilation: number;
  /** What sums are raised to: 0 rectifies them, −∞ leaves them. */
  readonly floor: number;
}

export const tallOf = ({ rows, tall, dilation }: ConvolutionShape): number =>
  rows + (tall - 1) * dilation;
export const broadOf = ({ columns, broad }: ConvolutionShape): number => columns + broad - 1;

type Convolve = (
  shape: ConvolutionShape,
  planes: Float32Array,
  weights: Float32Array,
  bias: Float32Array,
) => Float32Array;

/** Planes of the sums: out[(output·rows + row)·columns + column]. Planes hold `channels` of `tallOf` rows by `broadOf`
 *  columns, weights [(output·channels + channel)·tall + row]·broad + column, bias one value for each output. Each sum
 *  begins with its bias and goes on in the order of its weights, every product and sum rounded to single precision: the
 *  same bits from compiled code and from plain, in every engine. */
export function convolveSingle(...operands: Parameters<Convolve>): Float32Array {
  compiled ??= compiledConvolve() ?? convolvePlain;
  // Compiled code takes four columns at once.
  return operands[0].columns < 4 ? convolvePlain(...operands) : compiled(...operands);
}

/** a·b: out[row·columns + column], of `a` [row·inner + i] with `rows` rows and `b` [i·columns + column]. */
export function matrixProduct(
  a: Float32Array,
  b: Float32Array,
  rows: number,
  columns: number,
): Float32Array {
  const channels = b.length / columns;
  const plane = { rows: 1, columns, tall: 1, broad: 1, dilation: 1 };
  const shape = { channels, outputs: rows, ...plane, floor: Number.NEGATIVE_INFINITY };
  return convolveSingle(shape, b, a, new Float32Array(rows));
}

/** Where the engine has no SIMD, or planes are narrow. */
export const convolvePlain: Convolve = (shape, planes, weights, bias) => {
  const { channels, outputs, rows, columns, tall, broad, dilation, floor } = shape;
  const [height, width] = [tallOf(shape), broadOf(shape)];
  const out = new Float32Array(outputs * rows * columns);
  let weight = 0;
  for (let o = 0; o < outputs; o++) {
    const plane = out.subarray(o * rows * columns, (o + 1) * rows * columns).fill(bias[o]);
    for (let c = 0; c < channels; c++)
      for (let i = 0; i < tall; i++)
        for (let j = 0; j < broad; j++, weight++) {
          const w = weights[weight];
          for (let y = 0; y < rows; y++) {
            const from = (c * height + y + i * dilation) * width + j;
            for (let x = 0; x < columns; x++)
              plane[y * columns + x] += Math.fround(w * planes[from + x]);
          }
        }
    for (let i = 0; i < plane.length; i++) plane[i] = Math.max(plane[i], floor);
  }
  return out;
};

let compiled: Convolve | undefined;

/** Of `struct Shape` in wasm/convolve.c: seven counts, then the floor. */
const shapeWords = 8;

/** wasm/convolve.c, which has its operands one after the other in its memory; null where an engine does not know its
 *  instructions. */
export function compiledConvolve(): Convolve | null {
  const module = compiledModule();
  if (!module) return null;
  const { memory, convolve, __heap_base } = new WebAssembly.Instance(module).exports as unknown as {
    readonly memory: WebAssembly.Memory;
    readonly convolve: (
      shape: number,
      planes: number,
      weights: number,
      bias: number,
      out: number,
    ) => void;
    readonly __heap_base: WebAssembly.Global<'i32'>;
  };
  const shapeAt = __heap_base.value;
  const planesAt = shapeAt + 4 * shapeWords;
  let floats = new Float32Array(memory.buffer);
  return (shape, planes, weights, bias) => {
    const { channels, outputs, rows, columns, tall, broad, dilation, floor } = shape;
    const size = outputs * rows * columns;
    const weightsAt = planesAt + 4 * planes.length;
    const biasAt = weightsAt + 4 * weights.length;
    const outAt = biasAt + 4 * bias.length;
    const missing = outAt + 4 * (size - floats.length);
    if (missing > 0) {
      memory.grow(Math.ceil(missing / 65536));
      floats = new Float32Array(memory.buffer);
    }
    new Int32Array(floats.buffer, shapeAt, shapeWords - 1).set([
      channels,
      outputs,
      rows,
      columns,
      tall,
      broad,
      dilation,
    ]);
    floats[shapeAt / 4 + shapeWords - 1] = floor;
    floats.set(planes, planesAt / 4);
    floats.set(weights, weightsAt / 4);
    floats.set(bias, biasAt / 4);
    convolve(shapeAt, planesAt, weightsAt, biasAt, outAt);
    return floats.slice(outAt / 4, outAt / 4 + size);
  };
}

function compiledModule(): WebAssembly.Module | null {
  try {
    return new WebAssembly.Module(Uint8Array.from(atob(convolveWasm), (c) => c.charCodeAt(0)));
  } catch {
    return null;
  }
}
