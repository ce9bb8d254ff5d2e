import { expect, test } from 'vitest';
import { findThread } from '../../src/standards/threads';
import { diameterName } from '../../src/ui/identification/diameter-name';
import { evidenceFor } from '../../src/ui/identification/evidence';
import { exampleMeasurement } from '../journey/8-sheet/example';

const thread = findThread('M10x1')!;
const candidate = { ...thread, system: 'M' as const, probability: 0.9 };

/** ISO 965-1, M10×1 6H: minor diameter 8.917 to 9.153 mm; M10×1 6g has its crests at 9.794 to 9.974 mm (both
 *  from memory). */
const measured = (end: 'male' | 'female', diameterMm: number) => ({
  ...exampleMeasurement,
  end,
  pitchMm: { value: 1, u: 0.002 },
  majorDiameterMm: { value: diameterMm, u: 0.02 },
});
const said = (end: 'male' | 'female', diameterMm: number) =>
  evidenceFor(candidate, measured(end, diameterMm), thread).filter(({ text }) =>
    text.includes('diameter'),
  );

test('of a female end the minor diameter is compared, and called so', () => {
  expect(said('female', 9.03)).toEqual([
    { speaks: 'for', text: 'minor diameter as its table gives it' },
  ]);
  expect(said('female', 9.9)).toEqual([
    { speaks: 'against', text: expect.stringMatching(/^minor diameter 0\.\d\d mm outside/) },
  ]);
  expect(diameterName(measured('female', 9.03))).toBe('Minor diameter');
});

test('of a male end the major diameter', () => {
  expect(said('male', 9.9)).toEqual([
    { speaks: 'for', text: '0.10 mm under the basic diameter, as made parts are' },
  ]);
  expect(said('male', 9.03)[0]!.speaks).toBe('against');
  expect(diameterName(measured('male', 9.9))).toBe('Major diameter');
});

test('what the teeth look like speaks for the thread that has them, and a taper that is only seen too', () => {
  const shown = {
    ...exampleMeasurement,
    taper: null,
    threadShows: {
      profile: { '60': 0.05, '55': 0.9, npt: 0.05 },
      taper: { straight: 0.02, tapered: 0.98 },
    },
  };
  const about = (designation: string) => {
    const row = findThread(designation)!;
    const listed = { ...row, probability: 0.5 };
    return evidenceFor(listed, shown, row).filter(({ text }) => /teeth|grows/.test(text));
  };
  expect(about('R3/4').map(({ speaks }) => speaks)).toEqual(['for', 'for']);
  expect(about('3/4 NPT').map(({ speaks }) => speaks)).toEqual(['against', 'for']);
  expect(about('G3/4').map(({ speaks }) => speaks)).toEqual(['for', 'against']);
});
