import { expect, test } from 'vitest';
import { unifiedThread } from '../../src/standards/threads';
import { unifiedThreads } from '../../src/standards/unified-threads';

/** ASME B1.1-2003 Table 2, class 2A major max and min and class 2B minor min and max, inches, as
 *  tabulated (from memory). */
const tabulated: Record<string, readonly [number, number, number, number]> = {
  '1/4-20': [0.2489, 0.2408, 0.196, 0.207],
  '7/16-20': [0.4362, 0.4281, 0.383, 0.395],
  '1/2-13': [0.4985, 0.4876, 0.417, 0.417 + 0.017],
  '9/16-18': [0.5611, 0.5524, 0.502, 0.515],
  '3/4-16': [0.7485, 0.7391, 0.682, 0.696],
  '7/8-14': [0.8734, 0.8631, 0.798, 0.814],
  '1-8': [0.998, 0.983, 0.865, 0.89],
  '1 1/16-12': [1.0608, 1.0494, 0.972, 0.99],
  '1 5/16-12': [1.3108, 1.2994, 1.222, 1.24],
  '1 7/16-12': [1.4357, 1.4243, 1.347, 1.365],
};

test('limits follow ASME B1.1 within its rounding', () => {
  for (const [name, [majorMax, majorMin, minorMin, minorMax]] of Object.entries(tabulated)) {
    const { crests, bore } = unifiedThread(name);
    expect(crests.maxMm / 25.4, name).toBeCloseTo(majorMax, 3.4);
    expect(crests.minMm / 25.4, name).toBeCloseTo(majorMin, 3.4);
    // Minor limits are tabulated to three places.
    expect(Math.abs(bore.minMm / 25.4 - minorMin), name).toBeLessThan(0.0006);
    expect(Math.abs(bore.maxMm / 25.4 - minorMax), name).toBeLessThan(0.0011);
  }
});

/** Sizes per series of the OpenSCAD library 'threadlib' (design/UIS_thread.csv), a general-purpose
 *  thread table, up to 4 in. It writes 4.5 threads per inch as 4 for UNC 2 and 2 1/4. */
const threadlib = {
  UNC: {
    64: '#1',
    56: '#2',
    48: '#3',
    40: '#4 #5',
    32: '#6 #8',
    24: '#10 #12',
    20: '1/4',
    18: '5/16',
    16: '3/8',
    14: '7/16',
    13: '1/2',
    12: '9/16',
    11: '5/8',
    10: '3/4',
    9: '7/8',
    8: '1',
    7: '1+1/8 1+1/4',
    6: '1+3/8 1+1/2',
    5: '1+3/4',
    4.5: '2 2+1/4',
    4: '2+1/2 2+3/4 3 3+1/4 3+1/2 3+3/4 4',
  },
  UNF: {
    80: '#0',
    72: '#1',
    64: '#2',
    56: '#3',
    48: '#4',
    44: '#5',
    40: '#6',
    36: '#8',
    32: '#10',
    28: '#12 1/4',
    24: '5/16 3/8',
    20: '7/16 1/2',
    18: '9/16 5/8',
    16: '3/4',
    14: '7/8',
    12: '1 1+1/8 1+1/4 1+3/8 1+1/2',
  },
  UNEF: {
    32: '#12 1/4 5/16 3/8',
    28: '7/16 1/2',
    24: '9/16 5/8 11/16',
    20: '3/4 13/16 7/8 15/16 1',
    18: '1+1/16 1+1/8 1+3/16 1+1/4 1+5/16 1+3/8 1+7/16 1+1/2 1+9/16 1+5/8 1+11/16',
  },
} as const;

/** The same library's constant-pitch series: first and last size, inches, by 1/16 to 2 in, by 1/8
 *  above. Sizes with a graded name are listed in both. */
const constant: readonly (readonly [tpi: number, first: number, last: number])[] = [
  [4, 2.5, 4],
  [6, 1.375, 4],
  [8, 1, 4],
  [12, 0.5625, 4],
  [16, 0.375, 4],
  [20, 0.25, 3],
  [28, 0.25, 1.5],
];

test('every series holds the sizes of a general thread library', () => {
  const names = new Set(unifiedThreads.map((t) => t.designation));
  for (const [series, byTpi] of Object.entries(threadlib)) {
    for (const [tpi, sizes] of Object.entries(byTpi)) {
      for (const size of sizes.split(' ')) {
        expect(names).toContain(`${size.replace('+', ' ')}-${tpi} ${series}`);
      }
    }
  }
  const has = (inches: number, tpi: number) =>
    unifiedThreads.some((t) => t.tpi === tpi && Math.abs(t.basicMajorMm - inches * 25.4) < 1e-6);
  let checked = 0;
  for (const [tpi, first, last] of constant) {
    for (let inches = first; inches <= last; inches += inches < 2 ? 1 / 16 : 1 / 8) {
      expect(has(inches, tpi), `${inches}-${tpi}`).toBe(true);
      checked++;
    }
  }
  expect(checked).toBeGreaterThan(200);
});

test('sizes are written as the trade writes them', () => {
  for (const name of [
    '11/16-16 UN',
    '7/16-20 UNF',
    '1-14 UNS',
    '2-12 UN',
    '1 7/16-12 UN',
    '#10-32 UNF',
  ])
    expect(unifiedThreads.map((t) => t.designation)).toContain(name);
});
