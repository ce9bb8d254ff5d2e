import { expect, test } from 'vitest';
import { judgeCaliper } from '../../../src/journey/wear/caliper-places';
import { judgeCrest } from '../../../src/journey/wear/judge';
import { leastOverlapMm, overlapMm } from '../../../src/journey/wear/overlap';
import { canPass, guardFactor, verdictOn } from '../../../src/journey/wear/verdict';
import { seededRandom } from '../../../src/quantity/random';
import { classLimits } from '../../../src/standards/limits/class-limits';
import { findThread } from '../../../src/standards/threads';

const unf = findThread('3/4-16 UNF')!;
const band = classLimits(unf, '2A')!.major;
const parts = 10_000;

/** Share of states among parts of one true diameter, each measured once. */
function shares(truthMm: number, u: number, seed: number): Record<string, number> {
  const random = seededRandom(seed);
  const count: Record<string, number> = { within: 0, below: 0, above: 0, 'not-decidable': 0 };
  for (let i = 0; i < parts; i++) {
    const { state } = verdictOn({ value: truthMm + u * random.normal(), u }, band);
    count[state] = count[state]! + 1 / parts;
  }
  return count;
}

// One part in twenty by ISO 14253-1; three standard deviations of a count of 500 in 10,000 more.
const oneInTwenty = 0.05 + 3 * Math.sqrt((0.05 * 0.95) / parts);

test('10,000 parts at a limit: wrong acceptances and wrong rejections are at most one in twenty', () => {
  for (const u of [0.01, 0.02, 0.03]) {
    const low = shares(band.minMm, u, 11);
    const high = shares(band.maxMm, u, 12);
    expect(low.within).toBeLessThan(oneInTwenty);
    expect(low.below).toBeLessThan(oneInTwenty);
    expect(high.within).toBeLessThan(oneInTwenty);
    expect(high.above).toBeLessThan(oneInTwenty);
    // The rule is no tighter than it says: at the limit the guard band is used up.
    expect(low.within).toBeGreaterThan(0.04);
    expect(low.below).toBeGreaterThan(0.04);
  }
});

// The worst of three places counts, which alone would reject one in seven at the limit.
test('10,000 parts at a limit by caliper at three places, read to 0.01 mm: one in twenty at most', () => {
  const random = seededRandom(17);
  const shareAt = (truthMm: number) => {
    const count: Record<string, number> = {};
    for (let i = 0; i < parts; i++) {
      const read = () => {
        const mm = Math.round(100 * (truthMm + 0.02 * random.normal())) / 100;
        return { mm, text: `${mm.toFixed(2)}mm` };
      };
      const { verdict } = judgeCaliper(
        { caliper: { end: read(), middle: read(), last: read() } },
        band,
      )!;
      count[verdict.state] = (count[verdict.state] ?? 0) + 1 / parts;
    }
    return count;
  };
  const low = shareAt(band.minMm);
  expect(low.within ?? 0).toBeLessThan(oneInTwenty);
  expect(low.below).toBeLessThan(oneInTwenty);
  // Not far below it either; the guard falls between two steps of 0.01 mm.
  expect(low.below).toBeGreaterThan(0.015);
  const high = shareAt(band.maxMm);
  expect(high.within ?? 0).toBeLessThan(oneInTwenty);
  expect(high.above).toBeLessThan(oneInTwenty);
  // A new part passes, and one worn by a tenth of a millimetre below its class is found.
  expect(shareAt((band.minMm + band.maxMm) / 2).within).toBeGreaterThan(0.99);
  expect(shareAt(band.minMm - 0.1).below).toBeGreaterThan(0.99);
});

test('10,000 worn parts: none within when below by more than U, and the deeper the more are found', () => {
  const u = 0.03;
  const just = shares(band.minMm - 2 * u, u, 13);
  expect(just.within).toBeLessThan(0.002);
  const worn = shares(band.minMm - 0.15, u, 14);
  expect(worn.within).toBe(0);
  expect(worn.below).toBeGreaterThan(0.99);
  expect(shares((band.minMm + band.maxMm) / 2, u, 15).below).toBe(0);
});

test('10,000 parts of any diameter: of those within class few are called below, of worn ones few within', () => {
  const random = seededRandom(16);
  let [accepted, wronglyAccepted, rejected, wronglyRejected] = [0, 0, 0, 0];
  for (let i = 0; i < parts; i++) {
    const u = random.between(0.005, 0.05);
    const truth = random.between(band.minMm - 0.2, band.maxMm + 0.05);
    const { state } = verdictOn({ value: truth + u * random.normal(), u }, band);
    if (state === 'within') accepted++;
    if (state === 'within' && truth < band.minMm) wronglyAccepted++;
    if (state === 'below') rejected++;
    if (state === 'below' && truth >= band.minMm) wronglyRejected++;
  }
  expect(accepted).toBeGreaterThan(2000);
  expect(rejected).toBeGreaterThan(2000);
  expect(wronglyAccepted / accepted).toBeLessThan(0.01);
  expect(wronglyRejected / rejected).toBeLessThan(0.01);
});

test('a photo of ± 0.24 mm decides nothing against a tolerance of 0.24 mm; a caliper of ± 0.04 does', () => {
  const { major } = classLimits(findThread('M22x1.5')!, '6g')!;
  expect(canPass(0.12, major)).toBe(false);
  expect(canPass(0.02, major)).toBe(true);
  expect(verdictOn({ value: 21.85, u: 0.12 }, major)).toEqual({
    state: 'not-decidable',
    why: 'too-uncertain',
  });
  expect(verdictOn({ value: 21.85, u: 0.02 }, major)).toEqual({ state: 'within' });
  expect(verdictOn({ value: 21.75, u: 0.02 }, major)).toMatchObject({ why: 'near-limit' });
  // Wide or not, a part far enough below is below.
  const below = verdictOn({ value: 21.2, u: 0.12 }, major);
  expect(below).toMatchObject({ state: 'below', by: { u: 0.12 } });
  expect(below.state === 'below' && below.by.value).toBeCloseTo(0.532, 9);
  expect(verdictOn({ value: 22.1, u: 0.02 }, major).state).toBe('above');
  expect(verdictOn({ value: Number.NaN, u: 0.02 }, major)).toMatchObject({ why: 'unresolved' });
  expect(guardFactor).toBe(1.65);
});

// Computed: 3/4-16 2B has a minor diameter of 17.69 mm at most (ASME B1.1, 5.8.2).
test('what still bears', () => {
  expect(overlapMm(18.4, unf)).toBeCloseTo(0.36, 2);
  expect(leastOverlapMm(classLimits(unf, '2A')!, unf)).toBeCloseTo(0.54, 2);
  expect(overlapMm(15, unf)).toBe(0);
});

test('a taper, an unknown class and another pitch decide nothing, each for its reason', () => {
  const seen = { diameterMm: { value: 18.9, u: 0.02 }, pitchMm: { value: 1.5875, u: 0.003 } };
  const why = (designation: string, pitchMm = seen.pitchMm) => {
    const { verdict } = judgeCrest(findThread(designation)!, undefined, { ...seen, pitchMm });
    return verdict.state === 'not-decidable' ? verdict.why : verdict.state;
  };
  expect(why('1/2 NPT')).toBe('tapered');
  expect(why('1/2 NPSM')).toBe('no-class');
  expect(why('3/4-16 UNF', { value: 1.814, u: 0.003 })).toBe('another-pitch');
  expect(why('3/4-16 UNF')).toBe('within');
  expect(judgeCrest(unf, undefined, { diameterMm: null, pitchMm: null }).verdict).toMatchObject({
    why: 'unresolved',
  });
});
