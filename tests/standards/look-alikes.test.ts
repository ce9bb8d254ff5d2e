import { expect, test } from 'vitest';
import { lookAlikes } from '../../src/standards/look-alikes';
import { threads } from '../../src/standards/threads';

const sharp = { pitch: 0.003, diameter: 0.003, scale: 0.003 };
const blurred = { pitch: 0.012, diameter: 0.012, scale: 0.015 };

const pair = (list: ReturnType<typeof lookAlikes>, a: string, b: string) =>
  list.find((threads) => threads.every((t) => [a, b].includes(t.designation)));

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
