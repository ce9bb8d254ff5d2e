import { expect, test } from 'vitest';
import type { ThreadMeasurement } from '../../src/journey/5-measurement/thread-measurement';
import { conclude } from '../../src/journey/7-next-reading/conclude';
import { newSheet } from '../../src/journey/8-sheet/new-sheet';
import type { Shot } from '../../src/journey/8-sheet/sheet-schema';
import { findThread } from '../../src/standards/threads';
import { evidenceFor } from '../../src/ui/identification/evidence';
import { withShots } from '../../src/ui/work/with-shots';

const measured = (minorMm: number, end: 'male' | 'female' = 'female'): ThreadMeasurement => ({
  end,
  pitchMm: { value: 1.5, u: 0.01 },
  majorDiameterMm: { value: minorMm, u: 0.05 },
  correlation: 0.2,
  taper: null,
  flankAngleDeg: null,
  noseHalfAngleDeg: null,
  turns: 5,
  hand: null,
  starts: null,
  middleFromEndMm: null,
  budget: [{ source: 'height', pitchMm: 0.01, majorDiameterMm: 0.05 }],
});

const against = (minorMm: number) =>
  evidenceFor(
    {
      system: 'M',
      designation: 'M12x1.5',
      basicMajorMm: 12,
      pitchMm: 1.5,
      probability: 0.9,
    },
    measured(minorMm),
    findThread('M12x1.5'),
  ).map(({ speaks, text }) => `${speaks}: ${text}`);

/** ISO 965-1, M12×1.5 6H: minor diameter 10.376 to 10.676 mm (from memory). */
test('a minor diameter is held against the limits of the bore, not against the basic diameter', () => {
  expect(against(10.5)).toContain('for: minor diameter as its table gives it');
  expect(against(10.0).join()).toMatch(
    /against: minor diameter 0\.38 mm outside what its table gives/,
  );
  expect(against(11.2).join()).toMatch(
    /against: minor diameter 0\.52 mm outside what its table gives/,
  );
  for (const text of [...against(10.5), ...against(10), ...against(11.2)])
    expect(text).not.toMatch(/basic|male thread/);
});

const sheet = newSheet({
  title: '',
  shots: [],
  measurement: null,
  readings: [],
  conclusion: conclude(measured(10.5), []),
  appVersion: 'test',
  now: new Date(0),
});
const shot = (measurement: ThreadMeasurement) => ({ measurement }) as Shot;

test('two photos of a female end stay one of a female end', async () => {
  const both = await withShots(sheet, [shot(measured(10.5)), shot(measured(10.52))]);
  expect(both?.measurement?.end).toBe('female');
  expect(both?.conclusion.end).toBe('female');
});

test('a photo of a male end does not join one of a female end', async () => {
  expect(await withShots(sheet, [shot(measured(10.5)), shot(measured(10.5, 'male'))])).toBeNull();
});
