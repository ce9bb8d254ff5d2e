import { expect, test } from 'vitest';
import { parseReading } from '../../../src/journey/6-candidates/parse-reading';
import type { MeasuredThread } from '../../../src/journey/6-candidates/photo-likelihood';
import { type ConcludeOptions, conclude } from '../../../src/journey/7-next-reading/conclude';

/** What an experienced hand would ask next, or would not (common practice). */
function decide(
  readings: string[],
  options: ConcludeOptions = {},
  photo: MeasuredThread | null = null,
) {
  return conclude(
    photo,
    readings.map((text) => {
      const reading = parseReading(text);
      if (!reading.ok) throw new Error(text);
      return reading.value;
    }),
    options,
  );
}

const asked = (readings: string[], options?: ConcludeOptions) =>
  decide(readings, options).decision.ask?.reading ?? null;

test('no rule after a caliper', () => {
  for (const mm of [9.7, 13.1, 16.5, 20.8, 21.9, 26.3, 33.2, 41.8]) {
    expect(asked([`caliper-od=${mm}mm`])).not.toBe('rule-od');
    expect(asked([`caliper-od=${mm}mm`, 'pitch-gauge=1.5mm'])).not.toBe('rule-od');
  }
});

test('no tube of what is a stud or a port', () => {
  for (const end of ['caliper-od=15.8mm', 'caliper-od=21.8mm', 'caliper-od=26.8mm'])
    for (const seat of ['o-ring-at-hex', 'flat-washer-face'])
      expect(asked([end, 'pitch-gauge=1.5mm', `seat=${seat}`])).not.toBe('tube-od');
});

test('thread and seat agree: no more questions', () => {
  for (const readings of [
    ['pitch-gauge=16tpi', 'caliper-od=17.3mm', 'seat=flat-face-o-ring'],
    ['pitch-gauge=16tpi', 'caliper-od=18.9mm', 'seat=cone-37'],
    ['pitch-gauge=16tpi', 'caliper-od=18.9mm', 'seat=o-ring-at-hex'],
    ['pitch-gauge=14tpi', 'caliper-od=20.85mm', 'taper=straight', 'seat=o-ring-at-hex'],
  ])
    expect(decide(readings).decision, readings.join(' ')).toMatchObject({
      state: 'settled',
      ask: null,
    });
});

test('20.8 mm and 14 to the inch: straight or tapered comes first', () => {
  expect(asked(['caliper-od=20.8mm', 'pitch-gauge=14tpi'])).toBe('taper');
});

test('tapered, 21.0 mm and 14 to the inch: the thread angle', () => {
  expect(asked(['caliper-od=21.0mm', 'pitch-gauge=14tpi', 'taper=tapered'])).toBe('flank');
});

test('a cone of 37° by eye stays open, and the seat gauge is asked for if there is one', () => {
  const thread = ['pitch-gauge=20tpi', 'caliper-od=11.0mm'];
  const byEye = decide([...thread, 'seat=cone-37 by-eye']);
  expect(byEye.decision).toMatchObject({ thread: '7/16-20 UNF', connection: null });
  expect(byEye.decision.ask?.reading).toBe('seat');
  expect(byEye.contradictions).toEqual([]);
  const families = byEye.connections.filter((c) => c.probability > 0.05).map((c) => c.family);
  expect(families).toEqual(expect.arrayContaining(['ISO 8434-2', 'SAE J512']));
  const gauged = decide([...thread, 'seat=cone-37 by-eye', 'seat=cone-45']);
  expect(gauged.decision.connection).toMatchObject({ family: 'SAE J512', size: '-4' });
  expect(gauged.contradictions).toEqual([]);
});

test('37° by eye against 44.9° on the photo does not settle 37°', () => {
  const photo: MeasuredThread = {
    pitchMm: { value: 1.27, u: 0.004 },
    majorDiameterMm: { value: 11, u: 0.03 },
    correlation: 0.5,
    taper: null,
    flankAngleDeg: null,
    noseHalfAngleDeg: { value: 44.9, u: 0.8 },
    turns: 7,
    middleFromEndMm: null,
  };
  const { decision, connections } = decide(['seat=cone-37 by-eye'], {}, photo);
  expect(decision.connection?.family).not.toBe('ISO 8434-2');
  expect(connections[0]).toMatchObject({ family: 'SAE J512', size: '-4' });
});

test('an unticked tool is never asked for', () => {
  const tools = ['caliper', 'pitch-gauge', 'rule'] as const;
  for (const mm of [11, 17.3, 20.8, 21.9, 26.8, 33.2])
    for (const pitch of ['1.5mm', '14tpi', '12tpi']) {
      const readings = [`caliper-od=${mm}mm`, `pitch-gauge=${pitch}`, 'taper=tapered'];
      expect(asked(readings, { atHand: tools })).not.toBe('flank');
      expect(asked([readings[0]!], { atHand: ['caliper'] })).not.toBe('pitch-gauge');
    }
});
