import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { readPhoto } from '../../src/journey/1-photo/read-photo';
import { markers } from '../../src/scale-card/geometry';
import { errorsOf, identifyByRuler, never, type Ruler, vision } from './by-ruler';

/** The card's top row of markers as a rule, on path-traced renders: 15 to 20 mm of axis height from 150 mm
 *  away, up to 19° of tilt. Harder than a screw beside a rule, and no photographs. */
test('renders: the top row of the card as the rule', async () => {
  const names = 'd01 d02 d05 d09 d11 d13 d15 d16 d17 d20 d21 d26'.split(' ');
  const all = [];
  for (const name of names) {
    const url = (kind: string) => new URL(`../../fixtures/photos/${name}.${kind}`, import.meta.url);
    const bytes = new Uint8Array(readFileSync(url('jpg')));
    const truth = JSON.parse(readFileSync(url('truth.json'), 'utf8'));
    const result = await identifyByRuler(bytes, await topRow(bytes));
    if (result.outcome === 'refused') continue;
    const majorMm = (truth.crest_major_at_start_mm + truth.crest_major_at_end_mm) / 2;
    all.push({ name, ...errorsOf(result, truth.pitch_mm, majorMm) });
  }
  expect(all.length).toBeGreaterThanOrEqual(11);
  const covered = all.filter(
    ({ pitch, major }) => Math.abs(pitch) < 1.96 && Math.abs(major) < 1.96,
  );
  expect(covered.length / all.length).toBeGreaterThan(0.9);
  for (const { name, pitch, major } of all)
    expect(Math.max(Math.abs(pitch), Math.abs(major)), name).toBeLessThan(3);
  const close = all.filter(({ ratio }) => Math.abs(ratio) < 0.02);
  expect(close.length / all.length).toBeGreaterThan(0.8);
  for (const { name, uPitch, uMajor } of all)
    expect(Math.min(uPitch, uMajor), name).toBeGreaterThan(0.01);
}, 120_000);

async function topRow(bytes: Uint8Array): Promise<Ruler> {
  const photo = await readPhoto(never, bytes, nodeDecoders);
  if (!photo.ok) throw new Error(photo.reason);
  const { grey } = photo.value;
  const factor = Math.min(1, 1600 / Math.max(grey.width, grey.height));
  const image = vision.resize(
    grey,
    Math.round(grey.width * factor),
    Math.round(grey.height * factor),
  );
  const seen = vision
    .detectMarkers(image)
    .markers.filter(({ id }) => id <= 10)
    .sort((a, b) => a.id - b.id);
  const middle = (corners: readonly (readonly [number, number])[]) =>
    [0, 1].map(
      (k) => (corners.reduce((sum, corner) => sum + corner[k], 0) / 4 + 0.5) / factor - 0.5,
    ) as [number, number];
  const [first, last] = [seen[0], seen[seen.length - 1]];
  return {
    from: middle(first.corners),
    to: middle(last.corners),
    mm: markers[last.id].xMm - markers[first.id].xMm,
  };
}
