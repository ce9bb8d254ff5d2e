import { expect, test } from 'vitest';
import { fitSpread } from '../../src/cli/calibrate/fit-spread';
import { heldOut } from '../../src/cli/calibrate/folds';
import {
  type SpreadWeights,
  spreadOf,
  type Traces,
} from '../../src/journey/5-measurement/learnt-spread';
import { coveringU } from '../../src/journey/5-measurement/local-spread';
import { seededRandom } from '../../src/quantity/random';

const { uniform, normal } = seededRandom(3);
const truth: SpreadWeights = {
  base: -4,
  fit: 0.6,
  doubt: 0.4,
  scatter: 0.2,
  score: -0.5,
  dark: 0.5,
  taper: 0.6,
  astray: -5,
  astrayScatter: 1,
  astrayLimbs: -0.7,
  astrayDark: -0.5,
  far: -1,
  lost: -2.4,
  lostAstray: 0.8,
  lostFar: 1,
  least: 0,
  most: 9,
};
const anyTraces = (): Traces => {
  const pitchMm = 1 + 2 * uniform();
  return {
    pitchMm,
    fitMm: pitchMm * Math.exp(-6 + 3 * uniform()),
    doubtMm: pitchMm * Math.exp(-4 + 2 * uniform()),
    scatterMm: pitchMm * Math.exp(-4 + 3 * uniform()),
    score: -uniform(),
    limbsShown: -4 * uniform(),
    dark: uniform() < 0.4,
    taper: uniform() < 0.3 ? 1 : 0,
  };
};
/** Invented errors whose spread is known. */
const rows = Array.from({ length: 900 }, () => {
  const traces = anyTraces();
  const { u, astray, far, lost } = spreadOf(traces, truth);
  const own = uniform() < astray ? far : u;
  const errorMm = (uniform() < lost!.share ? lost!.u : own) * normal();
  return { errorMm, sharedMm: 0, traces };
});
const found = fitSpread(rows);

test('a spread is found again from errors drawn with it: both its parts, and how many go astray', () => {
  const both = rows.map(
    ({ traces }) => [spreadOf(traces, found), spreadOf(traces, truth)] as const,
  );
  const ratios = both.map(([a, b]) => a.u / b.u).sort((a, b) => a - b);
  expect(ratios[90]).toBeGreaterThan(0.75);
  expect(ratios[810]).toBeLessThan(1.35);
  const mean = (of: readonly number[]) => of.reduce((a, b) => a + b, 0) / of.length;
  const astray = (k: 0 | 1) => mean(both.map((pair) => pair[k].astray));
  expect(astray(0) / astray(1)).toBeGreaterThan(0.75);
  expect(astray(0) / astray(1)).toBeLessThan(1.3);
  expect(Math.abs(found.far - truth.far)).toBeLessThan(0.2);
});

test('what is lost altogether is found again, and that it is met where more goes astray', () => {
  const likely = rows.filter(({ traces }) => spreadOf(traces, truth).astray > 0.2);
  const unlikely = rows.filter(({ traces }) => spreadOf(traces, truth).astray < 0.05);
  const lost = (of: typeof rows) =>
    of.reduce((sum, { traces }) => sum + spreadOf(traces, found).lost!.share, 0) / of.length;
  expect(Math.min(likely.length, unlikely.length)).toBeGreaterThan(50);
  expect(lost(likely)).toBeGreaterThan(2 * lost(unlikely));
});

test('as many errors as should lie within 1.96 of the covering u', () => {
  const held = rows.filter(
    ({ errorMm, traces }) => Math.abs(errorMm) < 1.96 * coveringU(spreadOf(traces, found)),
  );
  expect(held.length / rows.length).toBeGreaterThan(0.935);
  expect(held.length / rows.length).toBeLessThan(0.965);
});

test('what other folds say of one holds there too; a spread told by nothing does not', () => {
  const some = rows.slice(0, 600);
  const { held, medianU } = heldOut(some, 3);
  expect(held).toBeGreaterThan(0.93);
  expect(held).toBeLessThan(0.965);
  // Traces that belong to other rows tell nothing: what is stated grows.
  const shuffled = some.map((row, i) => ({ ...row, traces: some[(i + 7) % some.length]!.traces }));
  expect(heldOut(shuffled, 3).medianU).toBeGreaterThan(1.3 * medianU);
});

test('the covering u is the plain one where nothing goes astray, and grows with what does', () => {
  expect(coveringU({ u: 0.2, astray: 0, far: 3 })).toBeCloseTo(0.2, 3);
  expect(coveringU({ u: 0.2, astray: 1, far: 3 })).toBeCloseTo(3, 2);
  // 0.95 = 0.96·0.9843 + 0.04·0.128: the normal integral is 0.9843 within ±2.416 and 0.128 within ±0.161.
  expect(coveringU({ u: 0.2, astray: 0.04, far: 3 })).toBeCloseTo((0.2 * 2.416) / 1.96, 3);
});

test('a spread stays within what photos have shown', () => {
  const { traces } = rows[0]!;
  const { pitchMm } = traces;
  const worst = { ...traces, fitMm: 50 * pitchMm, doubtMm: 50 * pitchMm, scatterMm: 50 * pitchMm };
  expect(spreadOf(worst, found).u).toBeCloseTo(found.most * pitchMm, 12);
  const surest = { ...traces, fitMm: 1e-12, doubtMm: 0, scatterMm: 1e-12 };
  expect(spreadOf(surest, found).u).toBeCloseTo(found.least * pitchMm, 12);
});

test('a taper is less sure, and a limb that shows little goes astray more often', () => {
  const mean = (of: readonly number[]) => of.reduce((a, b) => a + b, 0) / of.length;
  const changed = (more: Partial<Traces>) =>
    rows.map(({ traces }) => spreadOf({ ...traces, ...more }, found));
  const u = (taper: number) => mean(changed({ taper }).map((one) => one.u));
  expect(u(1) / u(0)).toBeGreaterThan(1.3);
  const astray = (limbsShown: number) => mean(changed({ limbsShown }).map((one) => one.astray));
  expect(astray(-4)).toBeGreaterThan(2 * astray(-1));
});
