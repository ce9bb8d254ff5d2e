import { expect, it } from 'vitest';
import { otherEndOf } from '../../src/cli/accuracy/truth';
import { madeTruth } from './made-truth';

/** Where a photo's second thread lies decides which measurement it is scored by. */

const other = {
  designation: 'M16x1.5',
  system: 'M',
  basic_major_mm: 16,
  pitch_mm: 1.5,
  taper: 0,
  thread_len_mm: 12,
  crest_major_at_start_mm: 15.9,
  crest_major_at_end_mm: 15.9,
};

const truthWith = (its?: object, own: object = {}) =>
  madeTruth({ axis_rear: [40, 0, 12], ...own, other: its });

it("an adaptor's other end begins at the rear of the same axis", () => {
  const end = otherEndOf(truthWith(other));
  expect(end?.axis_p0).toEqual([40, 0, 12]);
  expect(end?.axis_p1).toEqual([28, 0, 12]);
});

it("an elbow's other end lies where its leg does", () => {
  const leg = { axis_p0: [40, 30, 12], axis_p1: [40, 18, 12] };
  const end = otherEndOf(truthWith({ ...other, ...leg }));
  expect(end?.designation).toBe('M16x1.5');
  expect(end?.axis_p0).toEqual(leg.axis_p0);
  expect(end?.axis_p1).toEqual(leg.axis_p1);
});

it('a plain leg is no other end', () => {
  expect(otherEndOf(truthWith())).toBeNull();
});

it('the ring and the collar of the first end are not the other one’s', () => {
  const stud = { nose: 'plain', family: 'ISO 6149 stud', size: 'M18', stud_oring: 2.2 };
  const end = otherEndOf(truthWith(other, stud));
  expect(end?.stud_oring).toBeUndefined();
  expect(end?.family).toBeUndefined();
  expect(otherEndOf(truthWith(other, { collar: true }))?.collar).toBeUndefined();
});
