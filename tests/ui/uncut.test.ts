import { expect, test } from 'vitest';
import { uncut } from '../../src/ui/work/uncut';

const caliper = (text: string, mm = 18.9) =>
  ({ kind: 'caliper-od', mm, u: 0.05, text }) as unknown as Parameters<
    typeof uncut
  >[0]['readings'][number];

const here = {
  title: 'Boom cylinder, left',
  remarks: 'Two of them, the second leaks',
  readings: [caliper('18.9 mm, at the last turn')],
};

test('words that an answer had no room for stay as they were', () => {
  expect(uncut(here, { title: 'Boom', remarks: '', readings: [caliper('18.9 mm')] })).toEqual(here);
});

test('words that were changed elsewhere are taken, and a reading that was taken away stays away', () => {
  const arrived = { title: 'Arm cylinder', remarks: 'Three', readings: [] };
  expect(uncut(here, arrived)).toEqual(arrived);
  const other = { ...here, readings: [caliper('18.9 mm', 18.7)] };
  expect(uncut(here, other).readings).toEqual(other.readings);
});
