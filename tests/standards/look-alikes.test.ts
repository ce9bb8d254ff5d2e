import { expect, test } from 'vitest';
import { connections } from '../../src/standards/connections/connections';
import { lookAlikes, sharedThreads } from '../../src/standards/look-alikes';
import { threads } from '../../src/standards/threads';

const sharp = { pitch: 0.003, diameter: 0.003, scale: 0.003 };
const blurred = { pitch: 0.012, diameter: 0.012, scale: 0.015 };

const pair = (list: ReturnType<typeof lookAlikes>, a: string, b: string) =>
  list.find((l) => l.threads.every((t) => [a, b].includes(t.designation)));

test('pairs that a blurred photo confuses, and a sharp one does not', () => {
  const [wide, narrow] = [lookAlikes(threads, blurred), lookAlikes(threads, sharp)];
  expect(narrow.length).toBeLessThan(wide.length / 3);
  for (const [a, b] of [
    ['M27x2', '1 1/16-12 UN'],
    ['7/8-14 UNF', 'G5/8'],
    ['M12x1.25', '1/2-20 UNF'],
  ] as const)
    expect(pair(wide, a, b), `${a} ${b}`).toBeDefined();
  expect(pair(narrow, 'M27x2', '1 1/16-12 UN')).toBeUndefined();
});

test('what tells them apart', () => {
  const wide = lookAlikes(threads, blurred);
  expect(pair(wide, 'M27x2', '1 1/16-12 UN')).toMatchObject({
    separatedBy: ['pitch-gauge'],
    crestGapMm: 0,
  });
  // 6 % in pitch (2.1167 mm against 2 mm).
  expect(Math.abs(pair(wide, 'M27x2', '1 1/16-12 UN')!.pitchDifference)).toBeCloseTo(0.058, 2);
  expect(pair(wide, 'G3/8', 'R3/8')?.separatedBy).toEqual(['taper']);
  expect(pair(wide, 'R1/2', '1/2 NPT')?.separatedBy).toEqual(['flank']);
  expect(pair(wide, '7/8-14 UNF', 'G5/8')?.separatedBy).toEqual(expect.arrayContaining(['flank']));
  // The caliper settles M12x1.25 against 1/2-20; a blade hardly does.
  expect(pair(wide, 'M12x1.25', '1/2-20 UNF')?.separatedBy).toEqual(['caliper-od']);
});

test('one thread, several families: told apart by the seat, or by the tube', () => {
  const male = sharedThreads(connections, 'male');
  const find = (a: string, b: string) =>
    male.find(({ connections: c }) => c.every((x) => [a, b].includes(`${x.family} ${x.size}`)))
      ?.separatedBy;
  expect(find('ISO 8434-2 -4', 'SAE J512 -4')).toBe('seat');
  expect(find('ISO 8434-2 -4', 'ISO 11926 -4')).toBe('seat');
  expect(find('ISO 8434-1 12L', 'ISO 8434-1 10S')).toBe('tube-od');
  expect(male.every(({ separatedBy }) => separatedBy !== null)).toBe(true);
});
