import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parseReading } from '../../../src/journey/6-candidates/parse-reading';
import type { MeasuredThread } from '../../../src/journey/6-candidates/photo-likelihood';
import { type ConcludeOptions, conclude } from '../../../src/journey/7-next-reading/conclude';
import type { Conclusion } from '../../../src/journey/7-next-reading/decision';

function decide(photo: MeasuredThread | null, readings: string[], options?: ConcludeOptions) {
  const parsed = readings.map((text) => {
    const reading = parseReading(text);
    if (!reading.ok) throw new Error(text);
    return reading.value;
  });
  return conclude(photo, parsed, options);
}

/** A photo with 0.3 % for pitch alone and 0.3 % for the scale, unless told. */
function photo(
  pitchMm: number,
  majorMm: number,
  more: { taper?: number | null; nose?: number; flank?: number; scale?: number } = {},
): MeasuredThread {
  const scale = more.scale ?? 0.003;
  const [uPitch, uMajor] = [
    pitchMm * Math.hypot(0.003, scale),
    majorMm * Math.hypot(scale, 0.0015),
  ];
  const estimate = (value: number | null | undefined, u: number) =>
    value === null || value === undefined ? null : { value, u };
  return {
    pitchMm: { value: pitchMm, u: uPitch },
    majorDiameterMm: { value: majorMm, u: uMajor },
    correlation: (pitchMm * majorMm * scale ** 2) / (uPitch * uMajor),
    taper: estimate(more.taper === undefined ? 0 : more.taper, 0.004),
    flankAngleDeg: estimate(more.flank, 1),
    noseHalfAngleDeg: estimate(more.nose, 1),
    turns: 7,
    middleFromEndMm: null,
  };
}

const tpi = (n: number) => 25.4 / n;
const top = (c: Conclusion) => {
  const first = c.threads[0]!;
  return first.system === null ? null : first.designation;
};
const probabilityOf = (c: Conclusion, name: string) =>
  c.threads.find((t) => t.system !== null && t.designation === name)?.probability ?? 0;

test('common practice: a male end of 1 7/16 in and 12 tpi is the dash 16 face seal', () => {
  const rounded = decide(null, ['caliper-od=1 7/16in', 'pitch-gauge=12tpi']);
  expect(top(rounded)).toBe('1 7/16-12 UN');
  expect(rounded.connections[0]).toMatchObject({ family: 'ISO 8434-3', size: '-16' });
  expect(rounded.connections[0]!.probability).toBeGreaterThan(0.98);
  const decimal = decide(null, ['caliper-od=1.430in', 'pitch-gauge=12tpi']);
  expect(decimal.decision).toMatchObject({
    state: 'settled',
    thread: '1 7/16-12 UN',
    connection: { family: 'ISO 8434-3', size: '-16' },
  });
  expect(decimal.end).toBe('male');
});

test('common practice: a female end of 1 3/8 in across the crests and 12 tpi is the same', () => {
  const c = decide(null, ['caliper-id=1 3/8in', 'pitch-gauge=12tpi']);
  expect(top(c)).toBe('1 7/16-12 UN');
  expect(c.connections[0]).toMatchObject({ family: 'ISO 8434-3', size: '-16' });
  expect(c.end).toBe('female');
  expect(
    decide(null, ['caliper-id=1 3/8in', 'pitch-gauge=12tpi', 'seat=flat-face-o-ring']).decision,
  ).toMatchObject({ state: 'settled', connection: { family: 'ISO 8434-3', size: '-16' } });
});

test('trap: the small end of 3/8 NPT and 1/4 NPT against G and unified threads', () => {
  for (const [size, majorMm, rival] of [
    ['3/8', 16.9, 'G3/8'],
    ['1/4', 13.5, 'G1/4'],
  ] as const) {
    const unknown = decide(photo(tpi(18), majorMm, { taper: null }), []);
    expect(unknown.decision.thread).toBeNull();
    expect(probabilityOf(unknown, rival)).toBeLessThan(0.01);
    const tapered = decide(photo(tpi(18), majorMm, { taper: 0.062 }), []);
    expect(tapered.decision.thread).toBe(`${size} NPT`);
  }
  // Same pitch and almost the same diameter: R against G stays open without the taper.
  const open = decide(photo(tpi(19), 16.4, { taper: null }), []);
  expect(open.decision.thread).toBeNull();
  expect(probabilityOf(open, 'G3/8') + probabilityOf(open, 'R3/8')).toBeGreaterThan(0.99);
  expect(decide(photo(tpi(19), 16.4), []).decision.thread).toBe('G3/8');
});

test('trap: 1/2 NPT, R 1/2, G 1/2 and 13/16-16', () => {
  const tapered = decide(photo(tpi(14), 21, { taper: 0.0625 }), []);
  expect(tapered.decision).toMatchObject({ thread: null, ask: { reading: 'flank' } });
  expect(decide(photo(tpi(14), 20.8), []).decision.thread).toBe('G1/2');
  expect(decide(photo(tpi(16), 20.5), []).decision).toMatchObject({
    thread: '13/16-16 UN',
    connection: { family: 'ISO 8434-3', size: '-8' },
  });
});

test('trap: M27x2 against 1 1/16-12, 0.01 mm apart and 6 % in pitch', () => {
  expect(decide(photo(2, 26.8), []).decision.thread).toBe('M27x2');
  expect(decide(photo(tpi(12), 26.8), []).decision.thread).toBe('1 1/16-12 UN');
  const between = decide(photo(2.058, 26.8), []);
  expect(between.decision.thread).toBeNull();
});

test('trap: G 1 against 1 5/16-12', () => {
  expect(decide(photo(tpi(11), 33.1), []).decision.thread).toBe('G1');
  expect(decide(photo(tpi(12), 33.2), []).decision.thread).toBe('1 5/16-12 UN');
});

test('trap: M12x1.25 against 20 tpi asks for a diameter, not for a blade that fits both', () => {
  const c = decide(photo(1.26, 11.96, { scale: 0.008 }), []);
  expect(c.decision.thread).toBeNull();
  expect(top(c)).toBe('M12x1.25');
  expect(['caliper-od', 'seat', 'rule-od']).toContain(c.decision.ask?.reading);
  const gauged = decide(photo(1.26, 11.96, { scale: 0.008 }), ['caliper-od=11.85mm']);
  expect(probabilityOf(gauged, 'M12x1.25')).toBeGreaterThan(0.95);
  expect(probabilityOf(gauged, '1/2-20 UNF')).toBeLessThan(0.01);
});

test('trap: a worn 1 1/4-12 is not settled as the size below', () => {
  for (const majorMm of [31.4, 31.1, 30.9, 30.7]) {
    const { thread } = decide(photo(tpi(12), majorMm), []).decision;
    expect([null, '1 1/4-12 UNF']).toContain(thread);
  }
});

test('trap: G 5/8 and 7/8-14 share the pitch; between them nothing is settled', () => {
  expect(decide(photo(tpi(14), 22.75), []).decision.thread).toBe('G5/8');
  const worn = decide(photo(tpi(14), 22.4), []);
  expect(worn.decision.thread).toBeNull();
  expect(probabilityOf(worn, 'G5/8') + probabilityOf(worn, '7/8-14 UNF')).toBeGreaterThan(0.97);
  expect(decide(photo(tpi(14), 22.1), []).decision.thread).not.toBe('G5/8');
});

test('trap: metric 30° against 60° seats', () => {
  expect(decide(photo(1.5, 21.85), ['seat=cone-60']).connections[0]).toMatchObject({
    family: 'DIN 7631',
    size: 'M22',
  });
  expect(decide(photo(1.5, 21.85), ['seat=cone-30']).connections[0]).toMatchObject({
    family: 'JIS B 8363',
    size: 'M22',
  });
});

test('thread and connection are separate: 7/16-20 is certain long before its family', () => {
  const open = decide(photo(1.27, 11), []);
  expect(open.decision).toMatchObject({
    state: 'needs-reading',
    thread: '7/16-20 UNF',
    connection: null,
    ask: { reading: 'seat' },
  });
  expect(open.decision.ask?.why).toMatch(/37° cone fits only ISO 8434-2 -4/);
  expect(open.decision.ask?.fits.map((f) => f.value)).toEqual(
    expect.arrayContaining(['cone-37', 'cone-45', 'o-ring-at-hex']),
  );
  for (const [reading, family] of [
    ['seat-gauge=37', 'ISO 8434-2'],
    ['seat=cone-45 by gauge', 'SAE J512'],
    ['seat=o-ring-at-hex', 'ISO 11926'],
  ] as const) {
    expect(decide(photo(1.27, 11), [reading]).decision).toMatchObject({
      state: 'settled',
      connection: { family, size: '-4' },
    });
  }
});

test('a 24° cone of 12 mm light and 10 mm heavy series is told apart by its tube', () => {
  const cone = decide(photo(1.5, 17.85), ['seat=cone-24']);
  expect(cone.decision).toMatchObject({ connection: null, ask: { reading: 'tube-od' } });
  expect(
    decide(photo(1.5, 17.85), ['seat=cone-24', 'tube-od=10.0mm']).decision.connection,
  ).toMatchObject({ family: 'ISO 8434-1', size: '10S' });
});

test('a reading that contradicts the photo is flagged and settles nothing until a third agrees', () => {
  const seen = photo(tpi(16), 17.3);
  const against = decide(seen, ['pitch-gauge=1.5mm']);
  expect(against.contradictions).toEqual([
    { source: 'reading', index: 0, text: 'pitch-gauge=1.5mm' },
  ]);
  expect(against.decision).toMatchObject({
    state: 'needs-reading',
    thread: null,
    connection: null,
  });
  // Nearly every thread is straight: that bears nothing out.
  expect(decide(seen, ['pitch-gauge=1.5mm', 'taper=straight']).decision.thread).toBeNull();
  const third = decide(seen, ['pitch-gauge=1.5mm', 'caliper-od=17.3mm']);
  expect(third.contradictions).toHaveLength(1);
  expect(third.decision.thread).toBe('11/16-16 UN');
});

test('a seat that no connection of the thread has settles nothing', () => {
  const c = decide(photo(tpi(12), 36.3), ['seat=cone-24']);
  expect(c.decision).toMatchObject({ thread: null, connection: null });
  expect(c.contradictions).toHaveLength(1);
});

test('a thread in no table is not called by its nearest neighbour', () => {
  for (const [pitchMm, majorMm] of [
    [1.75, 19.85],
    [tpi(11), 25.3],
    [1.5, 22.85],
    [2.5, 26.8],
    [1.63, 30.3],
  ] as const) {
    const c = decide(photo(pitchMm, majorMm), []);
    expect(c.decision.thread).toBeNull();
    expect(c.decision.connection).toBeNull();
  }
  expect(decide(photo(tpi(11), 25.3), []).decision.state).toBe('unlisted');
});

test('a 4 u error does not settle a wrong thread', () => {
  // 7/8-14 measured too wide by 4 u of the scale lands on G 5/8.
  const scale = 0.007;
  const c = decide(photo(tpi(14) * (1 + 4 * scale), 22.1 * (1 + 4 * scale), { scale }), []);
  expect([null, '7/8-14 UNF']).toContain(c.decision.thread);
});

test('no prior settles anything alone', () => {
  const blind = photo(1.6, 20);
  const nothing = {
    ...blind,
    pitchMm: { value: 1.6, u: 1 },
    majorDiameterMm: { value: 20, u: 15 },
  };
  for (const region of ['north-america', 'europe', 'east-asia'] as const) {
    for (const trade of ['mobile-hydraulics', 'automotive'] as const) {
      expect(decide(nothing, [], { region, trade }).decision.thread).toBeNull();
      // The family of a settled thread stays open, wherever it is found.
      expect(decide(photo(1.27, 11), [], { region, trade }).decision.connection).toBeNull();
    }
  }
});

test('only what is at hand is asked for', () => {
  const seen = photo(1.26, 11.96, { scale: 0.008 });
  expect(['seat', 'taper']).toContain(decide(seen, [], { atHand: [] }).decision.ask?.reading);
  const withRule = decide(seen, ['seat=none', 'taper=straight'], { atHand: ['rule'] });
  expect(withRule.decision.ask?.reading).toBe('rule-od');
});

test('probabilities are sorted, in range, and those of threads add up to 1', () => {
  for (const c of [decide(null, []), decide(photo(1.5, 17.85), ['seat=cone-24'])]) {
    const sum = c.threads.reduce((total, t) => total + t.probability, 0);
    expect(sum).toBeLessThanOrEqual(1 + 1e-9);
    for (const list of [c.threads, c.connections]) {
      const values = list.map((x) => x.probability);
      expect(values).toEqual(values.toSorted((a, b) => b - a));
    }
  }
  const sharp = decide(photo(1.5, 17.85), []);
  expect(sharp.threads.reduce((total, t) => total + t.probability, 0)).toBeCloseTo(1, 3);
});

/** The families and sizes of the rendered test photos (path-traced, no photographs) by our names. */
const families: Record<string, string> = {
  ORFS: 'ISO 8434-3',
  '37 flare': 'ISO 8434-2',
  '45 flare': 'SAE J512',
  'O-ring stud': 'ISO 11926',
  '24 cone': 'ISO 8434-1',
  'ISO 6149 stud': 'ISO 6149',
  BSPP: 'ISO 1179',
  BSPT: 'ISO 7-1',
  NPT: 'ASME B1.20.1',
};

test('every part of the rendered photos, measured to 0.1 %, has its thread first and its connection listed', () => {
  const folder = join(import.meta.dirname, '../../../fixtures/photos');
  const names = readdirSync(folder).filter((name) => name.endsWith('.truth.json'));
  expect(names.length).toBeGreaterThan(5);
  for (const name of names) {
    const truth = JSON.parse(readFileSync(join(folder, name), 'utf8'));
    const major = (truth.crest_major_at_start_mm + truth.crest_major_at_end_mm) / 2;
    const seen = photo(truth.pitch_mm, major, {
      taper: truth.taper,
      flank: truth.form === '55' ? 55 : 60,
      scale: 0.001,
    });
    const c = decide(seen, []);
    expect(top(c)?.replace(/ UN.*/, ''), name).toBe(truth.designation);
    expect(c.connections, name).toContainEqual(
      expect.objectContaining({ family: families[truth.family], size: truth.size }),
    );
  }
});
