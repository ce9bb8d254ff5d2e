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
/** Sixty-fourths: their products and sums are exact in single precision. */
const sixtyFourths = (length: number) =>
  Float32Array.from({ length }, () => Math.round(64 * (uniform() - 0.5)) / 64);
const planes = (channels: number, rows: number, columns: number): Planes => ({
  values: sixtyFourths(channels * rows * columns),
  channels,
  rows,
  columns,
});

/** Straight from the definition: zeros above and below, the pattern going round or zeros sideways. */
function direct(
  x: Planes,
  { weights: w, bias, to, rows: kr, columns: kc, dilation, signed }: Convolution,
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
        out.push(signed ? sum : Math.max(0, sum));
      }
  return out;
}

test.each([
  [5, 5, 1, true, false],
  [5, 3, 4, true, false],
  [5, 3, 2, false, true],
  [5, 1, 1, false, false],
  [1, 5, 1, true, false],
  [1, 1, 1, false, true],
])(
  'a convolution of %i × %i, dilation %i, round %s, signed %s, is what its definition says',
  (rows, columns, dilation, round, signed) => {
    for (const wide of [1, 4, 8, 11]) {
      if (round && wide === 1) continue;
      const x = planes(3, 11, wide);
      const weights = sixtyFourths(2 * 3 * rows * columns);
      const bias = Float32Array.of(0.25, -0.5);
      const layer = { weights, bias, from: 3, to: 2, rows, columns, dilation, signed };
      expect([...convolve(x, layer, round).values]).toEqual(direct(x, layer, round));
    }
  },
);

test('halving takes means or every second column, pooling the greatest and the mean', () => {
  const x: Planes = { values: Float32Array.of(1, 3, 5, 9), channels: 1, rows: 1, columns: 4 };
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
