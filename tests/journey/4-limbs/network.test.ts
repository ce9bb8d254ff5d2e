import { expect, test } from 'vitest';
import {
  type Convolution,
  convolve,
  halved,
  type Planes,
  pooled,
  Weights,
} from '../../../src/journey/4-limbs/network';
import { weightsOf } from '../../../src/journey/4-limbs/weights';
import { seededRandom } from '../../../src/quantity/random';

const { uniform } = seededRandom(5);
const planes = (channels: number, rows: number, columns: number): Planes => ({
  values: Float64Array.from({ length: channels * rows * columns }, () => uniform() - 0.5),
  channels,
  rows,
  columns,
});

/** Straight from the definition: zeros above and below, the pattern going round or zeros sideways. */
function direct(
  x: Planes,
  { weights: w, bias, to, rows: kr, columns: kc, dilation }: Convolution,
  round: boolean,
) {
  const out: number[] = [];
  for (let o = 0; o < to; o++)
    for (let r = 0; r < x.rows; r++)
      for (let c = 0; c < x.columns; c++) {
        let sum = bias[o];
        for (let f = 0; f < x.channels; f++)
          for (let i = 0; i < kr; i++)
            for (let j = 0; j < kc; j++) {
              const y = r + (i - (kr >> 1)) * dilation;
              let z = c + j - (kc >> 1);
              if (round) z = (z + x.columns) % x.columns;
              if (y < 0 || y >= x.rows || z < 0 || z >= x.columns) continue;
              sum +=
                w[((o * x.channels + f) * kr + i) * kc + j] *
                x.values[(f * x.rows + y) * x.columns + z];
            }
        out.push(sum);
      }
  return out;
}

test.each([
  [5, 5, 1, true],
  [5, 3, 4, true],
  [5, 3, 2, false],
  [5, 1, 1, false],
  [1, 1, 1, false],
])(
  'a convolution of %i × %i, dilation %i, round %s, is what its definition says',
  (rows, columns, dilation, round) => {
    const x = planes(3, 11, 8);
    const w = Float32Array.from({ length: 2 * 3 * rows * columns }, () => uniform() - 0.5);
    const bias = Float32Array.of(0.25, -0.5);
    const layer = { weights: w, bias, from: 3, to: 2, rows, columns, dilation };
    const expected = direct(x, layer, round);
    const seen = convolve(x, layer, round).values;
    expect(seen.length).toBe(expected.length);
    for (const [i, v] of expected.entries()) expect(seen[i]).toBeCloseTo(v, 12);
  },
);

test.each([
  [5, 5, 1, true],
  [5, 3, 2, true],
  [5, 3, 4, false],
])(
  'of every second column, a convolution of %i × %i, dilation %i, round %s, gives the bits of the whole',
  (rows, columns, dilation, round) => {
    const x = planes(3, 11, 8);
    const weights = Float32Array.from({ length: 3 * 3 * rows * columns }, () => uniform() - 0.5);
    const bias = Float32Array.of(0.25, -0.5, 0.125);
    const layer = { weights, bias, from: 3, to: 3, rows, columns, dilation };
    const seen = convolve(x, layer, round, 2);
    expect(seen).toEqual(halved(convolve(x, layer, round), false));
  },
);

test('halving takes means or every second column, pooling the greatest and the mean', () => {
  const x: Planes = { values: Float64Array.of(1, 3, 5, 9), channels: 1, rows: 1, columns: 4 };
  expect([...halved(x, true).values]).toEqual([2, 7]);
  expect([...halved(x, false).values]).toEqual([1, 5]);
  expect([...pooled(x).values]).toEqual([9, 4.5]);
});

test('weights are read tensor by tensor, all of them and no more', () => {
  const all = weightsOf('limb');
  const reader = new Weights(all);
  reader.take(all.length - 1);
  expect(() => reader.end()).toThrow();
  reader.take(1);
  expect(() => reader.end()).not.toThrow();
  expect(all.every(Number.isFinite)).toBe(true);
});
