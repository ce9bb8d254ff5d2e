import { expect, test } from 'vitest';
import { connections } from '../../src/standards/connections/connections';
import { neverJoin } from '../../src/standards/never-join';

const row = (family: string, size: string, end: 'male' | 'female', form?: string) =>
  connections.find(
    (c) =>
      c.family === family &&
      c.size === size &&
      c.end === end &&
      (form === undefined || c.form === form),
  )!;
const near = new Map(
  connections.map((c) => [c.thread, c.thread === null ? [] : neverJoin(c).nearThreads]),
);

/** Pairs that every counter warns of (issue 12; common practice). */
const pairs: readonly (readonly [string, string])[] = [
  ['G5/8', '7/8-14 UNF'],
  ['G3/4', '1-14 UNS'],
  ['G3/4', '1 1/16-14 UNS'],
  ['M10x1', 'G1/8'],
  ['G1/8', '1/8 NPT'],
  ['M27x2', '1 1/16-12 UN'],
  ['M30x2', '1 3/16-12 UN'],
  ['M33x2', '1 5/16-12 UN'],
  ['M33x2', 'G1'],
  ['M42x2', '1 5/8-12 UN'],
  ['M42x2', 'G1 1/4'],
  ['M48x2', '1 7/8-12 UN'],
  ['M48x2', 'G1 1/2'],
  ['M14x1.5', '9/16-18 UNF'],
  ['M16x1.5', '5/8-18 UNF'],
  ['M20x1.5', '13/16-16 UN'],
  ['1 1/16-12 UN', '1 1/16-14 UNS'],
  ['M30x1.5', 'M30x2'],
  ['M36x1.5', 'M36x2'],
  ['M45x1.5', 'M45x2'],
  ['M52x1.5', 'M52x2'],
  ['1/2 NPT', 'R1/2'],
];

test('pairs that start to screw together are named, either way round', () => {
  for (const [a, b] of pairs) {
    expect(near.get(a), `${a} ${b}`).toContain(b);
    expect(near.get(b), `${b} ${a}`).toContain(a);
  }
});

test('a list that can be read: no thread has more than a dozen neighbours', () => {
  for (const [thread, names] of near) expect(names.length, thread ?? '').toBeLessThanOrEqual(12);
});

test('what a taper, a swivel and a flange must never be joined with', () => {
  expect(neverJoin(row('ISO 7-1', '1/2', 'male')).rules).toEqual(['npt-r', 'taper-in-g']);
  expect(neverJoin(row('ASME B1.20.1', '1/2', 'male')).rules).toEqual([
    'npt-r',
    'taper-in-g',
    'nptf-npt',
    'npsm-npt',
  ]);
  expect(neverJoin(row('ISO 1179', '1/2', 'female')).rules).toEqual(['taper-in-g']);
  expect(neverJoin(row('ASME B1.20.1', '1/2', 'female', 'NPSM swivel')).rules).toEqual([
    'npsm-npt',
  ]);
  expect(neverJoin(row('ISO 6162-1', '-12', 'male')).rules).toEqual(['flange-series']);
});

test('what also screws on is named; the true mate and daily practice are not', () => {
  const flare = neverJoin(row('ISO 8434-2', '-4', 'male')).sameThread;
  expect(flare).toEqual(expect.arrayContaining(['SAE J512 -4', 'ISO 11926 -4']));
  expect(flare).not.toContain('ISO 8434-2 -4');
  // A male end with a 60° cone in a G port, under a bonded washer (common practice).
  expect(neverJoin(row('ISO 8434-6', '1/2', 'male')).sameThread).not.toContain('ISO 1179 1/2');
  expect(neverJoin(row('ISO 8434-6', '1/2', 'male')).sameThread).toContain('JIS B 8363 1/2');
  // ISO 7-1: the parallel socket has the thread of G.
  expect(neverJoin(row('ISO 1179', '1/2', 'male')).sameThread).toContain('ISO 7-1 Rp1/2');
});
