import { expect, test } from 'vitest';
import { parseReading } from '../../../src/journey/6-candidates/parse-reading';
import { conclude } from '../../../src/journey/7-next-reading/conclude';
import { conclusionSchema } from '../../../src/journey/7-next-reading/decision';
import { rowsOf } from '../../../src/standards/connections/find-rows';
import { assemblyKinds } from '../../../src/ui/result/assembly';

function decide(...readings: string[]) {
  return conclude(
    null,
    readings.map((text) => {
      const reading = parseReading(text);
      if (!reading.ok) throw new Error(text);
      return reading.value;
    }),
  );
}

test('a settled NPSM swivel is one: it seals on its 60° cone, not in the thread', () => {
  // Minor diameter of 1/2 NPSM, 0.746 in or a little more: ASME B1.20.1 (from memory).
  const { decision } = decide(
    'pitch-gauge=14tpi',
    'caliper-id=19.1mm',
    'caliper-id=19.2mm',
    'seat=cone-60',
    'flank=60',
    'flank=60',
    'taper=straight',
  );
  expect(decision.connection).toMatchObject({
    family: 'ASME B1.20.1',
    size: '1/2',
    end: 'female',
    endTypes: ['swivel-nut'],
    form: 'NPSM swivel',
  });
  const rows = rowsOf(decision.connection!, decision.thread);
  expect(rows.map((r) => [r.sealing, assemblyKinds(r, r.endTypes)])).toEqual([
    ['metal-cone', ['npsm']],
  ]);
});

test('a G stud with its O-ring at the hex keeps its form', () => {
  const { decision } = decide(
    'pitch-gauge=14tpi',
    'caliper-od=20.85mm',
    'seat=o-ring-at-hex',
    'taper=straight',
  );
  expect(decision.connection).toMatchObject({
    family: 'ISO 1179',
    end: 'male',
    endTypes: ['stud'],
    form: 'G or H',
  });
});

test('a G stud with a flat face leaves ring or edge open', () => {
  const { decision } = decide(
    'pitch-gauge=14tpi',
    'caliper-od=20.85mm',
    'seat=flat-washer-face',
    'taper=straight',
  );
  expect(decision.connection).toMatchObject({ endTypes: ['stud'], form: null });
  const rows = rowsOf(decision.connection!, decision.thread);
  expect(rows.map((r) => r.form)).toEqual(expect.arrayContaining(['E', 'B']));
});

test('a left-hand thread is carried with the conclusion, and back out of a sheet', () => {
  const seen = conclude(
    {
      pitchMm: { value: 1.5, u: 0.004 },
      majorDiameterMm: { value: 17.85, u: 0.05 },
      correlation: 0.5,
      taper: null,
      flankAngleDeg: null,
      noseHalfAngleDeg: null,
      turns: 7,
      middleFromEndMm: null,
      hand: 'left',
    },
    [],
  );
  expect(seen.hand).toBe('left');
  expect(conclusionSchema.parse(seen).hand).toBe('left');
});
