import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { measured as measuredOnce } from '../measured';

const fixtures = new URL('../../fixtures/', import.meta.url);

async function measured(name: string) {
  const answer = await measuredOnce(new Uint8Array(readFileSync(new URL(name, fixtures))));
  if (answer.outcome !== 'measured') throw new Error(answer.refusal.reason);
  return answer;
}

/** The same render as JPEG and, coded anew in tiles and turned by its container, as telephones keep it. */
test('a photo in tiles is measured as the JPEG that it was made of', async () => {
  const [jpeg, tiles] = [await measured('photos/d26.jpg'), await measured('heif/d26-tiles.heic')];
  for (const key of ['pitchMm', 'majorDiameterMm'] as const) {
    const [one, other] = [jpeg.measurement[key], tiles.measurement[key]];
    expect(Math.abs(other.value - one.value)).toBeLessThan(0.25 * one.u);
    expect(Math.abs(other.u / one.u - 1)).toBeLessThan(0.1);
  }
  const [thread, other] = [jpeg, tiles].map(({ conclusion }) => conclusion.threads[0]!);
  expect(other).toMatchObject({ system: 'UN', designation: '3/4-16 UNF' });
  expect(thread).toMatchObject({ system: 'UN', designation: '3/4-16 UNF' });
  expect(other.probability).toBeGreaterThan(0.99);
  // The focal length came along: without it one of them would say so.
  expect(tiles.notes).toEqual(jpeg.notes);
}, 60_000);
