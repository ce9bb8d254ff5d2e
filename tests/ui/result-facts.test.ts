import { expect, test } from 'vitest';
import { parseReading } from '../../src/journey/6-candidates/parse-reading';
import { conclude } from '../../src/journey/7-next-reading/conclude';
import { newSheet } from '../../src/journey/8-sheet/new-sheet';
import { findThread } from '../../src/standards/threads';
import { loadTables } from '../../src/ui/identification/table-rows';
import { pitchWords, sizeWords } from '../../src/ui/identification/thread-words';
import { pitchBoth } from '../../src/ui/language/format';
import { resultFacts } from '../../src/ui/result/result-facts';

const tables = await loadTables();

/** What the result of these readings says, by the name of each fact. */
function factsOf(...texts: string[]): Record<string, readonly string[]> {
  const readings = texts.map((text) => {
    const reading = parseReading(text);
    if (!reading.ok) throw new Error(text);
    return reading.value;
  });
  const conclusion = conclude(null, readings);
  const sheet = newSheet({
    ...{ title: '', shots: [], measurement: null, readings, conclusion },
    ...{ appVersion: 'test', now: new Date(0) },
  });
  const found = resultFacts(sheet, tables);
  if (!found) throw new Error('nothing is settled');
  return Object.fromEntries(found.facts.map(({ name, lines }) => [name, lines]));
}

// The order line that issue 12 gives as its example, as far as the bench has seen it.
test('an O-ring stud is ordered by standard, size, thread with class, gender and ring', () => {
  const facts = factsOf('caliper-od=18.9mm', 'pitch-gauge=16tpi', 'seat=o-ring-at-hex');
  expect(facts['To order by']?.[0]).toBe(
    'Stud end ISO 11926, size -8 (3/4-16 UNF-2A), male, O-ring AS568-908, NBR 90',
  );
  expect(facts['To order by']?.[1]).toMatch(/material/);
  expect(facts['Also called']?.[0]).toContain('ORB');
  expect(facts['Never join with']?.[0]).toContain('ISO 8434-2 -8 (JIC)');
});

test('no working pressure is given, and that is said, with what governs', () => {
  const facts = factsOf('caliper-od=18.9mm', 'pitch-gauge=16tpi', 'seat=o-ring-at-hex');
  const [line] = facts['Working pressure']!;
  expect(line).toMatch(/lowest of all parts governs/);
  expect(line).not.toMatch(/\d/);
});

test('an end that shows no seat does not claim to seal on its thread', () => {
  // SAE J512 compression -5: 1/2-24, tube 5/16 in (from memory).
  const facts = factsOf('caliper-id=11.62mm', 'pitch-gauge=24tpi', 'tube-od=7.94mm', 'seat=none');
  expect(facts.Connection?.[0]).toBe('SAE J512 compression -5');
  expect(facts.Seat).toEqual(['—']);
});

test('of the forms of a G stud, those that the look rules out are not told', () => {
  const facts = factsOf(
    'caliper-od=20.85mm',
    'pitch-gauge=14tpi',
    'taper=straight',
    'seat=flat-washer-face',
  );
  const orders = facts['To order by']!.join('\n');
  // ISO 1179-2 and -4, DIN 3852-2 (from memory of their titles).
  expect(orders).toMatch(/ISO 1179-2.*form E/);
  expect(orders).toMatch(/ISO 1179-4.*form B/);
  expect(orders).toMatch(/DIN 3852-2.*form A/);
  expect(orders).not.toMatch(/form G/);
});

// ASME B1.1 and ISO 228-1 call a pitch by threads per inch, ISO 261 in millimetres.
test("a pitch is told in the thread's own unit first", () => {
  expect(pitchWords(findThread('3/4-16 UNF')!)).toBe('16 tpi (1.5875 mm)');
  expect(pitchWords(findThread('1 NPT')!)).toBe('11.5 tpi (2.2087 mm)');
  expect(pitchWords(findThread('M22x1.5')!)).toBe('1.5 mm');
  expect(sizeWords(findThread('3/4-16 UNF')!)).toContain('0.75 in (19.05 mm)');
  expect(sizeWords(findThread('G1/2')!)).toMatch(/20\.955 mm \(0\.825 in\) · .* 14 tpi/);
  expect(pitchBoth({ value: 1.5875, u: 0.001 }, true)).toBe(
    '16.000 ± 0.020 tpi (1.5875 ± 0.0020 mm)',
  );
  expect(pitchBoth({ value: 1.5875, u: 0.001 }, false)).toMatch(/^1\.5875 ± 0\.0020 mm \(16\.000/);
});
