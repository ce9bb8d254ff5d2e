import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import {
  broadOf,
  compiledConvolve,
  convolvePlain,
  convolveSingle,
  tallOf,
} from '../../src/quantity/convolution';
import { compiler, convolveWasm, source } from '../../src/quantity/convolve-wasm';
import { seededRandom } from '../../src/quantity/random';
import { compiled, compilerVersion, sourceSha256 } from '../../wasm/compile.mjs';

const { uniform } = seededRandom(11);
const numbers = (length: number) => Float32Array.from({ length }, () => uniform() - 0.5);
const bits = (values: Float32Array) => [...new Uint32Array(values.buffer)];

/** Kernels and planes of the networks, counts that fill no vector, and matrix products. */
const shapes = [
  { channels: 5, outputs: 12, rows: 20, columns: 48, tall: 5, broad: 5, dilation: 1 },
  { channels: 16, outputs: 16, rows: 20, columns: 8, tall: 5, broad: 3, dilation: 6 },
  { channels: 16, outputs: 16, rows: 9, columns: 12, tall: 5, broad: 3, dilation: 2 },
  { channels: 24, outputs: 24, rows: 4, columns: 4, tall: 5, broad: 3, dilation: 1 },
  { channels: 32, outputs: 24, rows: 1, columns: 80, tall: 1, broad: 5, dilation: 1 },
  { channels: 16, outputs: 3, rows: 20, columns: 16, tall: 5, broad: 3, dilation: 1 },
  { channels: 24, outputs: 1, rows: 1, columns: 80, tall: 1, broad: 1, dilation: 1 },
  { channels: 3, outputs: 5, rows: 7, columns: 21, tall: 3, broad: 2, dilation: 3 },
  { channels: 301, outputs: 10, rows: 1, columns: 5, tall: 1, broad: 1, dilation: 1 },
];

test.each(shapes)('compiled and plain sums have the same bits: %o', (counts) => {
  const compiledOne = compiledConvolve()!;
  expect(compiledOne).not.toBeNull();
  for (const floor of [0, Number.NEGATIVE_INFINITY]) {
    const shape = { ...counts, floor };
    const { channels, outputs, tall, broad } = shape;
    const planes = numbers(channels * tallOf(shape) * broadOf(shape));
    const operands = [
      shape,
      planes,
      numbers(outputs * channels * tall * broad),
      numbers(outputs),
    ] as const;
    const plain = convolvePlain(...operands);
    expect(plain.some((v) => v > 0)).toBe(true);
    expect(plain.some((v) => v < 0)).toBe(floor < 0);
    expect(bits(compiledOne(...operands))).toEqual(bits(plain));
    expect(bits(convolveSingle(...operands))).toEqual(bits(plain));
  }
});

test('planes too narrow for a vector are summed plainly', () => {
  const shape = { channels: 2, outputs: 1, rows: 2, columns: 1, tall: 1, broad: 1, dilation: 1 };
  const operands = [Float32Array.of(1, 2, 3, 4), Float32Array.of(1, -1), Float32Array.of(0.5)];
  const [planes, weights, bias] = operands;
  const out = convolveSingle({ ...shape, floor: Number.NEGATIVE_INFINITY }, planes, weights, bias);
  expect([...out]).toEqual([-1.5, -1.5]);
});

test('the compiled bytes are those of the source', () => {
  expect(sourceSha256()).toBe(source);
  const bytes = Buffer.from(convolveWasm, 'base64');
  const readme = readFileSync(new URL('../../wasm/README.md', import.meta.url), 'utf8');
  expect(readme).toContain(createHash('sha256').update(bytes).digest('hex'));
  // Another compiler, or none, has its own bytes or cannot tell.
  if (`clang ${compilerVersion()}` === compiler)
    expect(compiled().toString('base64')).toBe(convolveWasm);
});
