import { expect, test } from 'vitest';
import { parseReading } from '../../../src/journey/6-candidates/parse-reading';
import { conclude } from '../../../src/journey/7-next-reading/conclude';
import { conclusionSchema } from '../../../src/journey/8-sheet/sheet-schema';
import { connections } from '../../../src/standards/connections/connections';
import { rowsOf } from '../../../src/standards/connections/find-connection';
import { assemblyKind } from '../../../src/ui/result/assembly';

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
    endType: 'swivel-nut',
    form: 'NPSM swivel',
  });
  const rows = rowsOf({ ...decision.connection!, thread: decision.thread }, connections);
  expect(rows.map((r) => [r.sealing, assemblyKind(r)])).toEqual([['metal-cone', 'cone-swivel']]);
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
    endType: 'stud',
    form: 'G or H',
    seat: 'o-ring-at-hex',
  });
});

test('a G stud with a flat face leaves ring or edge open, and says how both go together', () => {
  const { decision } = decide(
    'pitch-gauge=14tpi',
    'caliper-od=20.85mm',
    'seat=flat-washer-face',
    'taper=straight',
  );
  expect(decision.connection).toMatchObject({ endType: 'stud', form: null });
  const rows = rowsOf({ ...decision.connection!, thread: decision.thread }, connections);
  expect(rows.map((r) => r.form)).toEqual(['E', 'B']);
  expect(new Set(rows.map(assemblyKind))).toEqual(new Set(['face-ring']));
});

test('a left-hand thread is carried with the decision, and back out of a sheet', () => {
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
  expect(seen.decision.hand).toBe('left');
  expect(conclusionSchema.parse(seen).decision.hand).toBe('left');
});

test('that a hose swivel takes no tube does not speak against its cone', () => {
  for (const [seat, family, size] of [
    ['cone-37', 'ISO 8434-2', '-8'],
    ['cone-24', 'ISO 8434-1', '12S'],
  ] as const) {
    const row = connections.find(
      (c) => c.family === family && c.size === size && c.end === 'female',
    )!;
    const [pitch, id] = row.thread!.startsWith('M') ? ['1.5mm', '18.4mm'] : ['16tpi', '17.4mm'];
    const answer = decide(
      `pitch-gauge=${pitch}`,
      `caliper-id=${id}`,
      `seat=${seat}`,
      'tube-od=none',
    );
    expect(answer.contradictions).toEqual([]);
    expect(answer.connections.some((c) => c.family === family && c.size === size)).toBe(true);
    expect(answer.connections[0]).toMatchObject({ family });
  }
});
