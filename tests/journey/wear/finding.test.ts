import { expect, test } from 'vitest';
import type { ThreadMeasurement } from '../../../src/journey/5-measurement/thread-measurement';
import { assessWear, type WearCase } from '../../../src/journey/wear/assess';
import { combineWorn } from '../../../src/journey/wear/combine-worn';
import type { CrestHeight } from '../../../src/journey/wear/crest-heights';
import { crestState } from '../../../src/journey/wear/crest-state';
import { noWearReadings, type WearReadings } from '../../../src/journey/wear/wear-readings';
import { seededRandom } from '../../../src/quantity/random';
import { classLimits } from '../../../src/standards/limits/class-limits';
import { findThread } from '../../../src/standards/threads';

const unf = findThread('3/4-16 UNF')!;

function measured(majorMm: number, u: number, thread = unf): ThreadMeasurement {
  return {
    pitchMm: { value: thread.pitchMm, u: 0.003 },
    majorDiameterMm: { value: majorMm, u },
    correlation: 0.5,
    taper: null,
    flankAngleDeg: null,
    noseHalfAngleDeg: null,
    turns: 7,
    hand: null,
    starts: null,
    middleFromEndMm: null,
    budget: [{ source: 'edge-noise', pitchMm: 0.003, majorDiameterMm: u }],
  };
}

const shot = (measurement: ThreadMeasurement, crests: readonly CrestHeight[] = []) => ({
  measurement,
  crests,
});

function assess(readings: Partial<WearReadings>, more: Partial<WearCase> = {}) {
  return assessWear({
    thread: unf,
    className: null,
    measurement: null,
    shots: [],
    ...more,
    readings: { ...noWearReadings, ...readings },
  });
}

const level = (readings: Partial<WearReadings>, more?: Partial<WearCase>) =>
  assess(readings, more).finding.level;
const reasons = (readings: Partial<WearReadings>, more?: Partial<WearCase>) =>
  assess(readings, more).finding.reasons.map(({ reason }) => reason);

const caliper = (...mm: (number | null)[]): Pick<WearReadings, 'caliper'> => {
  const [end, middle, last] = mm.map((v) =>
    v === null ? null : { mm: v, text: `${v.toFixed(2)}mm` },
  );
  return { caliper: { end: end ?? null, middle: middle ?? null, last: last ?? null } };
};
const allWell = {
  seal: 'unmarked',
  firstTurns: 'whole',
  byHand: 'free',
  goRing: 'runs-on',
  notGoRing: 'holds',
} as const;

test('nothing looked at is no finding; all well is none, which names what was left open', () => {
  expect(level({})).toBeNull();
  expect(level({ seal: 'unmarked' })).toBe('none');
  expect(assess({ seal: 'unmarked' }).finding.open).toEqual([
    'firstTurns',
    'byHand',
    'goRing',
    'notGoRing',
  ]);
  expect(assess(allWell).finding).toEqual({ level: 'none', reasons: [], open: [] });
});

// Common practice: seal face, first turns, run by hand, rings, and the crest as the mildest.
test('every answer changes the finding, the gravest counts, and reasons keep the trade’s order', () => {
  const grave = {
    'seal-scratched': [{ seal: 'scratched' }, 'replace'],
    'turns-torn': [{ firstTurns: 'torn' }, 'replace'],
    'turns-burred': [{ firstTurns: 'burred' }, 'gauge'],
    rocks: [{ byHand: 'rocks' }, 'gauge'],
    stiff: [{ byHand: 'stiff' }, 'gauge'],
    'not-go-beyond': [{ notGoRing: 'beyond-two' }, 'replace'],
    'go-stops': [{ goRing: 'stops' }, 'replace'],
    'crest-below': [{ ...caliper(18.4, 18.5, 18.5), goRing: null }, 'gauge'],
  } as const;
  for (const [reason, [answer, expected]] of Object.entries(grave)) {
    expect(level({ ...allWell, ...answer }), reason).toBe(expected);
    expect(reasons({ ...allWell, ...answer }), reason).toContain(reason);
  }
  expect(
    reasons({
      ...caliper(18.4, 18.4, 18.4),
      notGoRing: 'beyond-two',
      byHand: 'rocks',
      firstTurns: 'torn',
      seal: 'scratched',
    }),
  ).toEqual(['seal-scratched', 'turns-torn', 'rocks', 'not-go-beyond', 'crest-below']);
});

test('a crest below its class stays a finding when the rings pass, but says that they do', () => {
  expect(reasons({ ...allWell, ...caliper(18.4, 18.4, 18.4) })).toEqual(['crest-below-rings-pass']);
  // A photo too uncertain asks for gauges; once they have passed it asks for nothing.
  const vague = { measurement: measured(18.9, 0.12), shots: [shot(measured(18.9, 0.12))] };
  expect(reasons({}, vague)).toEqual(['crest-open']);
  expect(level({}, vague)).toBe('gauge');
  expect(level(allWell, vague)).toBe('none');
});

test('a caliper decides where the photo cannot, at three places', () => {
  const vague = { measurement: measured(18.9, 0.12), shots: [shot(measured(18.9, 0.12))] };
  expect(assess({}, vague).photo).toMatchObject({ couldPass: false });
  expect(assess({}, vague).crest).toMatchObject({ why: 'too-uncertain' });
  expect(assess(caliper(18.9, 18.88, 18.91), vague).crest).toEqual({ state: 'within' });
  expect(assess(caliper(18.9, null, 18.91), vague).crest).toMatchObject({ why: 'places-missing' });
  const worn = assess(caliper(18.55, 18.88, 18.91), vague);
  expect(worn.crest?.state).toBe('below');
  expect(worn.caliper?.smallest.place).toBe('end');
  expect(worn.caliper?.unevenMm?.value).toBeCloseTo(0.36, 9);
  expect(worn.finding.reasons.map(({ reason }) => reason)).toContain('uneven');
  expect(worn.overlap?.leftMm).toBeCloseTo((18.55 - 17.69) / 2, 2);
  // Read in whole millimetres, a caliper decides as little as a photo.
  const coarse = { caliper: { ...noWearReadings.caliper, middle: { mm: 19, text: '19mm' } } };
  expect(assess(coarse).crest?.state).toBe('not-decidable');
});

test('another pitch is not talked away by a caliper', () => {
  const m = { ...measured(18.9, 0.02), pitchMm: { value: 1.5, u: 0.003 } };
  expect(reasons(caliper(18.9, 18.9, 18.9), { measurement: m, shots: [shot(m)] })).toEqual([
    'another-thread',
  ]);
});

test('a taper is judged by its gauge plane alone', () => {
  const thread = findThread('1/2 NPT')!;
  const at = (ringTurns: number | null) => assess({ ringTurns }, { thread });
  // ASME B1.20.1, 8.1: flush with the ring's face within one turn.
  expect(at(0).plane?.state).toBe('within');
  expect(at(2).plane?.state).toBe('below');
  expect(at(2).finding).toMatchObject({ level: 'replace', reasons: [{ reason: 'plane-deep' }] });
  expect(at(-2).finding.reasons[0]?.reason).toBe('plane-short');
  expect(at(1).plane?.state).toBe('not-decidable');
  expect(at(null)).toMatchObject({ plane: null, crest: null, limits: null, overlap: null });
  // Rings for straight threads are not asked for.
  expect(at(0).finding.open).toEqual(['seal', 'firstTurns', 'byHand']);
  // ISO 7-1: R1/2 keeps its gauge plane within 1.8 mm, one turn of 1.814 mm.
  expect(assess({ ringTurns: 2 }, { thread: findThread('R1/2')! }).plane?.state).toBe('below');
});

test('crests that a photo shows short at the start are told from dents further on', () => {
  const crest = (turn: number): CrestHeight => ({
    ...{ side: 'left', turn, atMm: 1.6 * turn, heightMm: 9.3, u: 0.05, uOwnMm: 0.01 },
    shortMm: 0.12,
  });
  const m = measured(18.9, 0.02);
  const seen = (turn: number) => ({ measurement: m, shots: [shot(m, [crest(turn)])] });
  expect(reasons({}, seen(1))).toEqual(['first-turns-short', 'crest-within']);
  expect(reasons({}, seen(5))).toEqual(['crests-short', 'crest-within']);
  // A dent that both rings run over does no harm.
  expect(level(allWell, seen(5))).toBe('none');
  // Who looked closely knows better.
  expect(reasons({ firstTurns: 'whole' }, seen(1))).toEqual(['crest-within']);
});

test('two photos: the part is called uneven beyond chance only, and its smallest diameter counts', () => {
  const both = (a: number, b: number, u: number) => {
    const shots = [shot(measured(a, u)), shot(measured(b, u))];
    return assess({}, { measurement: measured((a + b) / 2, u), shots });
  };
  const oval = both(18.95, 18.6, 0.03);
  expect(oval.roundness?.uneven).toBe(true);
  expect(oval.crest?.state).toBe('below');
  expect(oval.overlap?.crestDiameterMm).toBe(18.6);
  expect(both(18.92, 18.88, 0.03).roundness?.uneven).toBe(false);
  expect(both(18.92, 18.88, 0.03).crest?.state).toBe('within');
  // One in twenty round parts is called uneven (95 %).
  const random = seededRandom(21);
  let called = 0;
  const parts = 2000;
  for (let i = 0; i < parts; i++) {
    const [a, b] = [18.9 + 0.03 * random.normal(), 18.9 + 0.03 * random.normal()];
    if (both(a, b, 0.03).roundness?.uneven) called++;
  }
  expect(called / parts).toBeGreaterThan(0.035);
  expect(called / parts).toBeLessThan(0.065);
});

test('photos of an uneven part are kept when they can be of one part, and only then', () => {
  const at = (majorMm: number, pitchMm = unf.pitchMm) => ({
    ...measured(majorMm, 0.02),
    pitchMm: { value: pitchMm, u: 0.003 },
  });
  // Agreeing photos are averaged; the least worn diameter stands for the thread where they do not agree.
  expect(combineWorn([at(18.9), at(18.92)])?.majorDiameterMm.value).toBeCloseTo(18.91, 2);
  expect(combineWorn([at(18.5), at(18.9)])?.majorDiameterMm.value).toBe(18.9);
  // M20x1.5 and M18x1.5, or another pitch, are two parts.
  expect(combineWorn([at(17.9, 1.5), at(19.9, 1.5)])).toBeNull();
  expect(combineWorn([at(18.5), at(18.9, 1.5)])).toBeNull();
});

test('a crest stands out when it is lower than the rest, or all of it below the class', () => {
  const { major } = classLimits(unf)!;
  const crest = (heightMm: number, shortMm: number | null = null): CrestHeight => ({
    ...{ side: 'left', turn: 3, atMm: 5, heightMm, u: 0.02, uOwnMm: 0.01, shortMm },
  });
  const half = major.minMm / 2;
  expect(crestState(crest(half + 0.05), classLimits(unf))).toBe('as-others');
  // Within the guard band of 1.65 u (ISO 14253-1) nothing is said.
  expect(crestState(crest(half - 0.03), classLimits(unf))).toBe('as-others');
  expect(crestState(crest(half - 0.04), classLimits(unf))).toBe('below');
  expect(crestState(crest(half + 0.05, 0.1), classLimits(unf))).toBe('short');
  expect(crestState(crest(1), null)).toBe('as-others');
});
