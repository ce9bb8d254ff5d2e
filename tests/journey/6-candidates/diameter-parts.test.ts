import { expect, test } from 'vitest';
import {
  type MeasuredThread,
  photoShape,
} from '../../../src/journey/6-candidates/photo-likelihood';
import { weigh } from '../../../src/journey/6-candidates/weigh';

/** A photo of M22×1.5 (ISO 261: basic major 22 mm), invented numbers; beside it stand M20×1.5 and M24×1.5. */
const photo: MeasuredThread = {
  pitchMm: { value: 1.5, u: 0.004 },
  majorDiameterMm: { value: 21.9, u: 0.35 },
  correlation: 0.1,
  taper: null,
  flankAngleDeg: null,
  noseHalfAngleDeg: null,
  middleFromEndMm: null,
  turns: 9,
};
const sure = { share: 0.97, u: 0.06 };
const astray = { share: 0.03, u: 1.2 };

const shareOf = (measured: MeasuredThread, designation: string) => {
  const { threads, total } = weigh({ photo: measured, readings: [] }, {});
  const found = threads.find(({ hypothesis }) => hypothesis.thread.designation === designation);
  return (found?.weight ?? 0) / total;
};

test('a diameter that is mostly sure leaves its neighbours what its other part leaves', () => {
  const one = shareOf(photo, 'M24x1.5');
  const parted = shareOf({ ...photo, diameterParts: [sure, astray] }, 'M24x1.5');
  const less = shareOf({ ...photo, diameterParts: [{ ...sure, share: 1 }] }, 'M24x1.5');
  expect(parted).toBeLessThan(one);
  expect(less).toBeLessThan(parted);
  expect(shareOf({ ...photo, diameterParts: [sure, astray] }, 'M22x1.5')).toBeGreaterThan(0.95);
});

test('parts are weighed by their shares', () => {
  const at = (parts: MeasuredThread['diameterParts']) =>
    photoShape({ ...photo, diameterParts: parts }).likelihood(1.5, 22.4);
  const [all, none] = [at([{ ...sure, share: 1 }]), at([{ ...astray, share: 1 }])];
  expect(at([sure, astray])).toBeCloseTo(0.97 * all + 0.03 * none, 6);
});

test('a doubt about the period enters matching once: by the periods, not by the stated u too', () => {
  const otherPeriods = [{ ratio: 1.02, share: 0.3 }];
  const doubtful = 1.5 * 0.02 * Math.sqrt(0.3);
  const stated = { value: 1.5, u: Math.hypot(0.004, doubtful) };
  const own = photoShape({ ...photo, pitchMm: stated, otherPeriods });
  expect(own.pitchMm.u).toBeCloseTo(Math.hypot(0.004, 0.0004 * 1.5), 6);
});
