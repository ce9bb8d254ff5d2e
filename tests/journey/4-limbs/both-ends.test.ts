import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { identificationJson } from '../../../src/cli/identification-json';
import { measured } from '../../measured';

const fixtures = new URL('../../../fixtures/', import.meta.url);

async function endsOf(path: string) {
  const bytes = new Uint8Array(readFileSync(new URL(path, fixtures)));
  const answer = await measured(bytes);
  const { ends } = identificationJson(path, answer) as {
    ends: {
      thread: { pitchMm: { value: number; u: number } };
      threads: { designation: string }[];
      decision: { state: string };
      where: [number, number];
    }[];
  };
  return ends;
}

/** A rendered photo: G1/2 on one end, M16x1.5 on the other (its truth file). */
test('an adaptor gives both its ends, each with its own thread and place', async () => {
  const truth = JSON.parse(readFileSync(new URL('ends/gz003.truth.json', fixtures), 'utf8'));
  const ends = await endsOf('ends/gz003.jpg');
  expect(ends).toHaveLength(2);
  for (const { designation, pitch_mm } of [truth, truth.other]) {
    const end = ends.find(({ threads }) => threads[0]?.designation === designation);
    if (!end) throw new Error(`no end leads with ${designation}`);
    const { value, u } = end.thread.pitchMm;
    expect(Math.abs(value / pitch_mm - 1)).toBeLessThan(0.01);
    expect(Math.abs(value - pitch_mm)).toBeLessThan(3 * u);
  }
  const [a, b] = ends.map(({ where }) => where);
  expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeGreaterThan(100);
}, 60_000);

test('a part with one thread has one end, the same as the answer itself', async () => {
  const ends = await endsOf('photos/d11.jpg');
  expect(ends).toHaveLength(1);
  expect(ends[0].threads[0].designation).toBe('M26x1.5');
}, 60_000);
