import { expect, test } from 'vitest';
import type { MeasuredThread } from '../../../src/journey/6-candidates/photo-likelihood';
import { weigh } from '../../../src/journey/6-candidates/weigh';

/** A photo of 7/16-20 (basic major 11.1125 mm, pitch 1.27 mm: ASME B1.1) whose ridges shine twice a pitch. */
const halved: MeasuredThread = {
  pitchMm: { value: 0.635, u: 0.002 },
  majorDiameterMm: { value: 11.02, u: 0.04 },
  correlation: 0.5,
  taper: null,
  flankAngleDeg: null,
  noseHalfAngleDeg: null,
  middleFromEndMm: null,
  turns: 12,
};

const shareOf = (photo: MeasuredThread) => {
  const { threads, total } = weigh({ photo, readings: [] }, {});
  const found = threads.find(({ hypothesis }) => /^7\/16-20/.test(hypothesis.thread.designation));
  return (found?.weight ?? 0) / total;
};

test('a thread of a period that the photo leaves possible is weighed, however far it is from the stated one', () => {
  expect(shareOf(halved)).toBe(0);
  const left = shareOf({ ...halved, otherPeriods: [{ ratio: 2, share: 0.04 }] });
  expect(left).toBeGreaterThan(0.3);
  const more = shareOf({ ...halved, otherPeriods: [{ ratio: 2, share: 0.3 }] });
  expect(more).toBeGreaterThan(left);
});
