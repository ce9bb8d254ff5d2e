import { expect, test } from 'vitest';
import { parseReading } from '../../../src/journey/6-candidates/parse-reading';
import type { MeasuredThread } from '../../../src/journey/6-candidates/photo-likelihood';
import type { AskableKind } from '../../../src/journey/6-candidates/reading-choices';
import { type ConcludeOptions, conclude } from '../../../src/journey/7-next-reading/conclude';
import { connections } from '../../../src/standards/connections/connections';

/** Situations at a counter, as an experienced hand would go on (issue 12; common practice). The
 *  bench has a caliper, a rule and a pitch gauge, unless said. */
function at(readings: string, options: ConcludeOptions = {}, photo: MeasuredThread | null = null) {
  const parsed = readings.split(';').flatMap((text) => {
    if (text.trim() === '') return [];
    const reading = parseReading(text.trim());
    if (!reading.ok) throw new Error(text);
    return [reading.value];
  });
  return conclude(photo, parsed, options);
}

const asked = (readings: string, options?: ConcludeOptions) =>
  at(readings, options).decision.ask?.reading ?? null;

const seen = (pitchMm: number, majorMm: number, more: Partial<MeasuredThread> = {}) => ({
  pitchMm: { value: pitchMm, u: 0.003 * pitchMm },
  majorDiameterMm: { value: majorMm, u: 0.003 * majorMm },
  correlation: 0.5,
  taper: { value: 0, u: 0.003 },
  flankAngleDeg: null,
  noseHalfAngleDeg: null,
  turns: 7,
  middleFromEndMm: null,
  ...more,
});

test('diameter first, then pitch, then the rest', () => {
  for (const start of ['caliper-od=15.85mm', 'caliper-od=22mm', 'caliper-id=20.5mm'])
    expect(asked(start), start).toBe('pitch-gauge');
  expect(['caliper-od', 'caliper-id']).toContain(asked('pitch-gauge=14tpi'));
});

test('never a rule after a caliper, nor beside one', () => {
  for (const more of [
    '',
    ';pitch-gauge=1.5mm',
    ';pitch-gauge=14tpi;taper=straight',
    ';seat=none',
  ]) {
    expect(asked(`caliper-od=20.8mm${more}`)).not.toBe('rule-od');
    expect(asked(`caliper-id=20.5mm${more}`)).not.toBe('rule-od');
  }
  expect(asked('pitch-gauge=1.5mm')).not.toBe('rule-od');
  expect(asked('pitch-gauge=1.5mm;cannot-tell=caliper-od;cannot-tell=caliper-id')).toBe('rule-od');
});

test('never the tube of a stud or a port', () => {
  for (const start of [
    'caliper-od=18.9mm;pitch-gauge=16tpi;end-type=stud',
    'caliper-id=17.5mm;pitch-gauge=16tpi;end-type=port',
    'caliper-od=21.85mm;pitch-gauge=1.5mm;end-type=stud',
    'caliper-od=18.9mm;pitch-gauge=16tpi;seat=o-ring-at-hex',
  ])
    expect(asked(start), start).not.toBe('tube-od');
});

test('it stops when thread and seat agree', () => {
  for (const [readings, family, size] of [
    ['caliper-od=18.9mm;pitch-gauge=16tpi;seat=o-ring-at-hex', 'ISO 11926', '-8'],
    ['caliper-od=17.3mm;pitch-gauge=16tpi;seat=flat-face-o-ring', 'ISO 8434-3', '-6'],
    ['caliper-id=20.5mm;pitch-gauge=1.5mm;seat=flat-washer-face', 'ISO 9974', 'M22'],
    ['caliper-od=1 7/16in;pitch-gauge=12tpi;seat=flat-face-o-ring', 'ISO 8434-3', '-16'],
    ['caliper-od=13.0mm;pitch-gauge=19tpi;taper=straight;seat=cone-60', 'ISO 8434-6', '1/4'],
  ] as const) {
    const { decision, contradictions } = at(readings);
    expect(decision, readings).toMatchObject({ state: 'settled', connection: { family, size } });
    expect(contradictions).toEqual([]);
  }
});

test('20.8 mm and 14 to the inch: taper first', () => {
  expect(asked('caliper-od=20.8mm;pitch-gauge=14tpi')).toBe('taper');
});

test('tapered, 21.0 mm, 14 to the inch: 55° or 60°, or the form of the crests', () => {
  const tapered = 'caliper-od=21.0mm;pitch-gauge=14tpi;taper=tapered';
  expect(asked(tapered)).toBe('flank');
  expect(asked(tapered, { atHand: ['caliper'] })).toBe('crest-form');
  expect(asked(`${tapered};cannot-tell=flank`)).toBe('crest-form');
});

test('38.1 mm with a flat face: head thickness and bolts, not a pitch gauge', () => {
  const head = 'caliper-od=38.1mm;seat=flat-face-o-ring';
  expect(asked(head)).toBe('flange-thickness');
  expect(asked(`${head};cannot-tell=flange-thickness`)).toBe('bolt-spacing');
  expect(at(`${head};flange-thickness=6.7mm`).decision).toMatchObject({
    state: 'settled',
    thread: null,
    connection: { family: 'ISO 6162-1', size: '-12', endTypes: ['flange-head'] },
  });
  expect(at('caliper-od=41.3mm;bolt-spacing=50.8mm').decision.connection).toMatchObject({
    family: 'ISO 6162-2',
  });
});

test('without a seat gauge a male cone is measured, a female one stays open', () => {
  const male = 'caliper-od=12.6mm;pitch-gauge=20tpi;seat=cone-37;end-type=fixed';
  expect(asked(male)).toBe('cone-size');
  // A half difference of 2.15 mm over 2.85 mm stands at 37.0°, over 2.15 mm at 45°.
  expect(at(`${male};cone-size=10.8-6.5 over 2.85mm`).decision.connection).toMatchObject({
    family: 'ISO 8434-2',
    size: '-5',
  });
  expect(at(`${male};cone-size=10.8-6.5 over 2.15mm`).decision.connection).toMatchObject({
    family: 'SAE J512',
    size: '-5',
  });
  // That a cone was measured says nothing for threads in no table.
  const none = (readings: string) =>
    at(readings).threads.find((t) => t.system === null)?.probability ?? 0;
  expect(none(`${male};cone-size=10.8-6.5 over 2.85mm`)).toBeLessThanOrEqual(none(male));
  const all = { atHand: ['caliper', 'seat-gauge'] } as const;
  expect(asked('caliper-od=12.6mm;pitch-gauge=20tpi;seat=cone-37', all)).toBe('seat-gauge');
  const female = 'caliper-id=11.5mm;pitch-gauge=20tpi;seat=cone-37;end-type=swivel-nut';
  expect(asked(female)).not.toBe('cone-size');
});

test('a cone by eye leaves 30°, 37° and 45° open; a gauge or the photo settles', () => {
  const thread = 'caliper-od=11.0mm;pitch-gauge=20tpi';
  const byEye = at(`${thread};seat=cone-45;tube-od=none;cannot-tell=cone-size`).decision;
  expect(byEye).toMatchObject({
    thread: '7/16-20 UNF',
    connection: null,
    ask: null,
    missing: { reading: 'seat-gauge', tools: ['seat-gauge'] },
  });
  expect(asked(`${thread};seat=cone-45;tube-od=none`, { atHand: ['seat-gauge'] })).toBe(
    'seat-gauge',
  );
  for (const gauge of ['seat-gauge=45', 'seat=cone-45 by gauge'])
    expect(at(`${thread};${gauge}`).decision.connection).toMatchObject({ family: 'SAE J512' });
  const nose = seen(1.27, 11, { noseHalfAngleDeg: { value: 44.9, u: 0.6 } });
  expect(at('seat=cone-45', {}, nose).decision.connection).toMatchObject({ family: 'SAE J512' });
  // The eye may call it by its neighbour's name: no contradiction.
  expect(at('seat=cone-37', {}, nose).contradictions).toEqual([]);
});

test('a question with one outcome, or with a tool that is not at hand, is none', () => {
  for (const row of connections.filter((_, i) => i % 7 === 0)) {
    for (const readings of ['', 'seat=none']) {
      const options = { atHand: ['rule'] } as const;
      const { ask } = at(`rule-od=${row.thread ? 22 : 38}mm;${readings}`, options).decision;
      expect(['caliper-od', 'caliper-id', 'pitch-gauge', 'flank', 'seat-gauge']).not.toContain(
        ask?.reading,
      );
      if (ask && ask.fits.length > 0) expect(ask.fits.length, ask.why).toBeGreaterThan(1);
    }
  }
});

test('a diameter that no thread has: the nearest, how far off, and measured once more', () => {
  const { nearest, decision } = at('caliper-od=14.4mm;pitch-gauge=1.5mm');
  expect(nearest).toMatchObject({ thread: 'M14x1.5', end: 'male' });
  expect(nearest!.offMm).toBeCloseTo(0.43, 1);
  expect(decision).toMatchObject({ thread: null, ask: { reading: 'caliper-od' } });
  expect(at('caliper-od=13.9mm;pitch-gauge=1.5mm').nearest).toBeNull();
  // Worn by a third of a millimetre is no misfit.
  expect(at('caliper-od=13.5mm;pitch-gauge=1.5mm').nearest).toBeNull();
  expect(at('caliper-id=12.1mm;pitch-gauge=1.5mm').nearest).toMatchObject({ end: 'female' });
});

test('without a pitch gauge, turns are counted over a length', () => {
  const options = { atHand: ['caliper', 'rule'] } as const;
  expect(asked('caliper-od=18.9mm', options)).toBe('turns-over');
  const counted = at('caliper-od=18.9mm;turns-over=8 in 12.7mm;seat=o-ring-at-hex', options);
  expect(counted.decision).toMatchObject({ state: 'settled', thread: '3/4-16 UNF' });
  // One turn too many, and the diameter still holds it.
  expect(at('caliper-od=18.9mm;turns-over=9 in 12.7mm', options).decision.thread).not.toBe(
    '3/4-18 UNS',
  );
});

test('any question can be answered with "I cannot tell", and is not asked again', () => {
  const declined: AskableKind[] = [];
  let readings = 'caliper-od=20.8mm';
  for (let i = 0; i < 20; i++) {
    const kind = asked(readings);
    if (kind === null) break;
    expect(declined).not.toContain(kind);
    declined.push(kind);
    readings += `;cannot-tell=${kind}`;
  }
  expect(declined.length).toBeGreaterThan(3);
  expect(asked(readings)).toBeNull();
  const before = at('caliper-od=20.8mm');
  const after = at('caliper-od=20.8mm;cannot-tell=seat');
  expect(after.threads).toEqual(before.threads);
});

test('that a swivel takes no tube says nothing against it', () => {
  const cone = 'caliper-id=16.5mm;pitch-gauge=1.5mm;seat=cone-24';
  const { contradictions, connections: open } = at(`${cone};tube-od=none`);
  expect(contradictions).toEqual([]);
  expect(open[0]).toMatchObject({ family: 'ISO 8434-1' });
  const gauged = 'caliper-id=9.9mm;pitch-gauge=20tpi;seat-gauge=37';
  expect(at(`${gauged};tube-od=none`).decision.connection).toMatchObject({ family: 'ISO 8434-2' });
});

test('a 45° swivel and an inverted port on one thread are told by the seat or the make', () => {
  const thread = 'caliper-id=11.5mm;pitch-gauge=20tpi';
  expect(at(`${thread};seat=cone-inverted`).decision.connection).toMatchObject({
    family: 'SAE J512 inverted',
    size: '-5',
  });
  expect(at(`${thread};seat-gauge=45;end-type=swivel-nut`).decision.connection).toMatchObject({
    family: 'SAE J512',
    size: '-5',
  });
});

test('a left-hand thread is named so, and no ordinary part before someone has looked', () => {
  const left = seen(1.5, 17.85, { hand: 'left' });
  const first = at('', {}, left);
  expect(first.hand).toBe('left');
  expect(first.decision).toMatchObject({ state: 'needs-reading', ask: { reading: 'hand' } });
  expect(first.threads[0]).toMatchObject({ designation: 'M18x1.5 LH' });
  const looked = at('hand=left;seat=cone-24;tube-od=12.0mm', {}, left);
  expect(looked.decision).toMatchObject({ state: 'settled', thread: 'M18x1.5 LH' });
  expect(at('hand=right', {}, left)).toMatchObject({ hand: 'right' });
  expect(at('hand=right', {}, left).threads[0]).toMatchObject({ designation: 'M18x1.5' });
  const marked = at('caliper-od=17.85mm;pitch-gauge=1.5mm;marking=left-hand');
  expect(marked.threads[0]).toMatchObject({ designation: 'M18x1.5 LH' });
  expect(at('', {}, seen(1.5, 17.85, { hand: 'right' })).hand).toBe('right');
});

test('NPTF is told by its mark alone', () => {
  const taper = 'caliper-od=13.6mm;pitch-gauge=18tpi;taper=tapered;seat=none';
  expect(at(taper).decision.connection).toMatchObject({ family: 'ASME B1.20.1', size: '1/4' });
  expect(at(`${taper};marking=nptf`).decision.connection).toMatchObject({ family: 'SAE J476' });
});

test('L and S marks tell the series; the hex is weak evidence', () => {
  const cone = 'caliper-od=17.85mm;pitch-gauge=1.5mm;seat=cone-24';
  const of = (readings: string) =>
    at(readings)
      .connections.slice(0, 2)
      .map((c) => c.size);
  expect(of(`${cone};marking=heavy`)[0]).toBe('10S');
  expect(of(`${cone};marking=light`)[0]).toBe('12L');
  const plain = at('caliper-od=17.85mm').threads[0]!.probability;
  const hexed = at('caliper-od=17.85mm;hex=22mm').threads[0]!.probability;
  expect(Math.abs(hexed - plain)).toBeGreaterThan(0);
  expect(Math.abs(hexed - plain)).toBeLessThan(0.2);
});

test('region and trade tip the scales only when they are given, and settle nothing', () => {
  const cone = 'caliper-od=11.0mm;pitch-gauge=20tpi;seat=cone-37';
  const share = (options: ConcludeOptions) =>
    at(cone, options).connections.find((c) => c.family === 'SAE J512')!.probability;
  expect(share({ trade: 'automotive' })).toBeGreaterThan(share({}));
  expect(share({ region: 'anywhere', trade: 'any' })).toBe(share({}));
  expect(at(cone, { trade: 'automotive' }).decision.connection).toBeNull();
});

test('female ends get female questions', () => {
  const { end, decision } = at('caliper-id=19.0mm;pitch-gauge=14tpi');
  expect(end).toBe('female');
  expect(decision.ask?.reading).toBe('seat');
});

test('37° by eye against 44.9° on the photo does not settle 37°', () => {
  const nose = seen(1.27, 11, { noseHalfAngleDeg: { value: 44.9, u: 0.8 } });
  const { decision, connections: open } = at('seat=cone-37', {}, nose);
  expect(decision.connection?.family).not.toBe('ISO 8434-2');
  expect(open[0]).toMatchObject({ family: 'SAE J512', size: '-4' });
});

// Nose by the geometry of the 24° cone: it ends where the tube's bore begins (ISO 8434-1).
test('a hose end without a tube tells its series by the nose', () => {
  const hose = 'caliper-id=16.5mm;pitch-gauge=1.5mm;seat=cone-24;tube-od=none';
  expect(asked(hose)).toBe('nose-od');
  expect(at(`${hose};nose-od=11.7mm`).decision.connection).toMatchObject({ size: '12L' });
  expect(at(`${hose};nose-od=9.8mm`).decision.connection).toMatchObject({ size: '10S' });
  expect(asked(`${hose};cannot-tell=nose-od`)).toBe('marking');
  // The tube itself says it better.
  expect(asked('caliper-id=16.5mm;pitch-gauge=1.5mm;seat=cone-24')).toBe('tube-od');
});

test('a seat gauge is asked for after a look has seen a cone', () => {
  const thread = 'caliper-od=11.0mm;pitch-gauge=20tpi';
  const all = { atHand: ['caliper', 'pitch-gauge', 'seat-gauge'] } as const;
  expect(asked(thread, all)).toBe('seat');
  expect(asked(`${thread};seat=cone-37`, all)).toBe('seat-gauge');
  expect(asked(`${thread};seat=o-ring-at-hex`, all)).not.toBe('seat-gauge');
  expect(asked(`${thread};cannot-tell=seat`, all)).toBe('seat-gauge');
});

// DIN 158, ISO 15171 (issue 12, point 10).
test('a metric taper is no straight stud, and M16x2 no other thread', () => {
  const taper = at('caliper-od=9.9mm;pitch-gauge=1mm;taper=tapered;seat=none;flank=60');
  expect(taper.threads[0]).toMatchObject({ designation: 'M10x1 keg' });
  expect(taper.connections[0]).toMatchObject({ family: 'DIN 3852-1', size: 'M10', form: 'C' });
  const straight = at('caliper-od=9.9mm;pitch-gauge=1mm;taper=straight;seat=o-ring-at-hex');
  expect(straight.decision.connection).toMatchObject({ family: 'ISO 6149', size: 'M10' });
  const point = at('caliper-od=15.8mm;pitch-gauge=2mm');
  expect(point.nearest).toBeNull();
  expect(point.connections[0]).toMatchObject({ family: 'ISO 15171' });
});

test('a listed thread that no connection uses is not called a wrong size of another', () => {
  const plain = at('caliper-od=15.85mm;pitch-gauge=1mm');
  expect(plain.nearest).toBeNull();
  expect(plain.threads[0]).toMatchObject({ designation: 'M16x1' });
});
