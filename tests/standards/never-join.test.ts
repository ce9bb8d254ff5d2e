import { expect, test } from 'vitest';
import { connections } from '../../src/standards/connections/connections';
import { confusions, screwsOnButMustNot } from '../../src/standards/look-alikes';
import { findThread, threads } from '../../src/standards/threads';

const confused = confusions(threads, connections);
const full = (short: string) =>
  findThread(short)?.designation ??
  threads.find((t) => t.designation.startsWith(`${short} `))?.designation ??
  short;

/** Pairs that the trade warns of (common practice, from memory). */
test.each([
  ['1/2 NPT', 'R1/2'],
  ['R1/2', 'G1/2'],
  ['1/2 NPT', 'G1/2'],
  ['1/2 NPT', '1/2 NPTF'],
  ['1/2 NPSM', '1/2 NPT'],
  ['G5/8', '7/8-14'],
  ['G3/4', '1-14'],
  ['G3/4', '1 1/16-14'],
  ['M10x1', 'G1/8'],
  ['G1/8', '1/8 NPT'],
  ['M10x1', '1/8 NPT'],
  ['M27x2', '1 1/16-12'],
  ['M30x2', '1 3/16-12'],
  ['M33x2', '1 5/16-12'],
  ['M33x2', 'G1'],
  ['1 5/16-12', 'G1'],
  ['M42x2', '1 5/8-12'],
  ['M42x2', 'G1 1/4'],
  ['M48x2', '1 7/8-12'],
  ['M48x2', 'G1 1/2'],
  ['M14x1.5', '9/16-18'],
  ['M16x1.5', '5/8-18'],
  ['M20x1.5', '13/16-16'],
  ['1 1/16-12', '1 1/16-14'],
  ['M30x1.5', 'M30x2'],
  ['M36x1.5', 'M36x2'],
  ['M45x1.5', 'M45x2'],
  ['M52x1.5', 'M52x2'],
])('%s and %s warn of each other', (a, b) => {
  expect(confused.get(full(a))).toContain(full(b));
  expect(confused.get(full(b))).toContain(full(a));
});

test('threads that nobody takes for each other are not warned of', () => {
  expect(confused.get('M22x1.5')).not.toContain('M33x2');
  expect(confused.get('G1/4')).not.toContain('G3/8');
});

const row = (family: string, size: string, end: 'male' | 'female') =>
  connections.find((c) => c.family === family && c.size === size && c.end === end)!;

test('a flange head never goes under clamps of the other pressure series', () => {
  const never = screwsOnButMustNot(row('ISO 6162-1', '-16', 'male'), connections);
  expect(never.map((c) => `${c.family} ${c.size}`)).toEqual(['ISO 6162-2 -16']);
});

test('common practice: a male G end with a 60° cone may go into a G port under a bonded washer', () => {
  const never = screwsOnButMustNot(row('ISO 8434-6', '1/2', 'male'), connections);
  expect(never.some((c) => c.family === 'ISO 1179')).toBe(false);
  const port = screwsOnButMustNot(row('ISO 1179', '1/2', 'female'), connections);
  expect(port.some((c) => c.family === 'ISO 8434-6')).toBe(false);
  expect(port.some((c) => c.family === 'JIS B 8363')).toBe(true);
});
