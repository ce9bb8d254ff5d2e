import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseReading } from '../../../src/journey/6-candidates/parse-reading';
import type { MeasuredThread } from '../../../src/journey/6-candidates/photo-likelihood';
import { seats } from '../../../src/journey/6-candidates/reading-choices';
import { conclude } from '../../../src/journey/7-next-reading/conclude';

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const estimate = (min: number, max: number, uMin: number, uMax: number) =>
  fc.record({ value: positive(min, max), u: positive(uMin, uMax) });

const measurement: fc.Arbitrary<MeasuredThread> = fc.record({
  pitchMm: estimate(0.2, 12, 1e-6, 2),
  majorDiameterMm: estimate(1, 200, 1e-6, 30),
  correlation: positive(-1, 1),
  taper: fc.option(estimate(-0.3, 0.3, 1e-6, 0.2)),
  flankAngleDeg: fc.option(estimate(30, 90, 1e-3, 10)),
  noseHalfAngleDeg: fc.option(estimate(5, 85, 1e-3, 10)),
  turns: fc.option(positive(1, 40)),
  middleFromEndMm: fc.option(positive(0, 60)),
  hand: fc.constantFrom('left', 'right', null),
  starts: fc.constantFrom(1, 2, null),
});

const reading = fc
  .oneof(
    positive(3, 100).map((mm) => `caliper-od=${mm.toFixed(2)}mm`),
    positive(3, 100).map((mm) => `caliper-id=${mm.toFixed(1)}mm`),
    positive(3, 60).map((mm) => `tube-od=${mm.toFixed(1)}mm`),
    fc.integer({ min: 4, max: 80 }).map((tpi) => `pitch-gauge=${tpi}tpi`),
    fc.constantFrom(...seats).map((seat) => `seat=${seat}`),
    fc.constantFrom('taper=tapered', 'taper=straight', 'flank=55', 'tube-od=none'),
  )
  .map((text) => {
    const parsed = parseReading(text);
    if (!parsed.ok) throw new Error(text);
    return parsed.value;
  });

test('any evidence gives finite, ordered probabilities and a decision that follows from them', () => {
  fc.assert(
    fc.property(fc.option(measurement), fc.array(reading, { maxLength: 4 }), (photo, readings) => {
      const { threads, connections, decision } = conclude(photo, readings);
      for (const { probability } of [...threads, ...connections]) {
        expect(probability).toBeGreaterThanOrEqual(0);
        expect(probability).toBeLessThanOrEqual(1 + 1e-9);
      }
      const first = threads[0]!;
      if (decision.thread !== null) {
        expect(first.probability).toBeGreaterThanOrEqual(0.995);
        expect(first.system !== null && first.designation).toBe(decision.thread);
      }
      if (decision.connection !== null) {
        expect(connections[0]).toMatchObject(decision.connection);
        expect(connections[0]!.probability).toBeGreaterThanOrEqual(0.995);
        expect(decision.thread).not.toBeNull();
      }
      if (decision.state === 'unlisted') expect(first.system).toBeNull();
      if (decision.state === 'settled') expect(decision.thread).not.toBeNull();
      if (decision.ask) {
        expect(decision.state).toBe('needs-reading');
        expect(decision.ask.gainBits).toBeGreaterThan(0);
        expect(decision.ask.why).toMatch(/^[A-Z0-9].+\.$/);
      }
    }),
    { seed: 8, numRuns: 400 },
  );
});

test('the order of readings does not matter', () => {
  fc.assert(
    fc.property(fc.uniqueArray(reading, { maxLength: 3, selector: (r) => r.kind }), (readings) => {
      const [a, b] = [conclude(null, readings), conclude(null, readings.toReversed())];
      expect(a.threads[0]!.probability).toBeCloseTo(b.threads[0]!.probability, 9);
      expect(a.decision.thread).toBe(b.decision.thread);
    }),
    { seed: 9, numRuns: 100 },
  );
});

test('a left-hand thread speaks for one in no table', () => {
  const seen: MeasuredThread = {
    pitchMm: { value: 1.5, u: 0.005 },
    majorDiameterMm: { value: 17.85, u: 0.06 },
    correlation: 0.5,
    taper: { value: 0, u: 0.003 },
    flankAngleDeg: null,
    noseHalfAngleDeg: null,
    turns: 7,
    middleFromEndMm: null,
  };
  const plain = conclude(seen, []).threads[0]!.probability;
  const left = conclude({ ...seen, hand: 'left' }, []);
  const none = left.threads.find((t) => t.system === null)!.probability;
  expect(plain).toBeGreaterThan(0.999);
  expect(none).toBeGreaterThan(1e-4);
  expect(left.threads[0]!.probability).toBeLessThan(plain);
});
