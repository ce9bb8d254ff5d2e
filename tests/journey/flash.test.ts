import { readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { loadNodeVision } from '../../src/cli/node-vision';
import {
  defaultOptions,
  type Measured,
  type MeasureOptions,
} from '../../src/journey/identification';
import { identifyPhoto } from '../../src/journey/identify';
import type { Vision } from '../../src/vision/vision';
import { makeExif, makePng, withExif, withoutExif } from './1-photo/make-files';
import { drawScrew, m8, marksOf } from './drawn-screw';

let vision: Vision;
beforeAll(async () => {
  vision = await loadNodeVision();
});

async function measured(
  bytes: Uint8Array,
  ruler: MeasureOptions['ruler'] = null,
): Promise<Measured> {
  const answer = await identifyPhoto(
    new AbortController().signal,
    bytes,
    { ...defaultOptions, ruler },
    { vision, decoders: nodeDecoders },
    () => {},
  );
  if (answer.outcome === 'refused') throw new Error(answer.refusal.advice);
  return answer;
}

const byLight = new Map<string, Promise<Measured>>();

/** Path-traced renders with their focal length and another word on the flash, each measured once. */
function lit(name: string, f35Mm: number, flash: number): Promise<Measured> {
  const key = `${name} ${f35Mm} ${flash}`;
  const known = byLight.get(key);
  if (known) return known;
  const bytes = readFileSync(new URL(`../../fixtures/photos/${name}.jpg`, import.meta.url));
  const photo = withExif(withoutExif(new Uint8Array(bytes)), makeExif({ f35Mm, flash }));
  const answer = measured(photo);
  byLight.set(key, answer);
  return answer;
}

test.each([
  ['d11', 27, 0x19, 'light', true],
  ['d11', 27, 0x18, 'light', false],
  ['d05', 77, 0x19, 'dark', false],
] as const)(
  '%s (%i mm), Flash %i, %s field: noted is %s',
  async (name, f35, flash, field, noted) => {
    const { reference, notes } = await lit(name, f35, flash);
    expect(reference.field).toBe(field);
    expect(notes.includes('flash-fired')).toBe(noted);
  },
  60_000,
);

test('on paper, a flash widens what the diameter may be', async () => {
  const [dark, bright] = [await lit('d11', 27, 0x18), await lit('d11', 27, 0x19)];
  const [without, within] = [dark, bright].map((m) => m.measurement.majorDiameterMm);
  expect(within.value).toBe(without.value);
  // 14 mm from lens to lamp, 166 mm up, the axis 15 mm high or more: over half a millimetre.
  expect(within.u).toBeGreaterThan(without.u + 0.3);
}, 60_000);

test.each([
  [1, ['ruler-without-pose', 'no-focal-length', 'flash-fired']],
  [0, ['ruler-without-pose', 'no-focal-length']],
])(
  'beside a rule on a light table, Flash %i',
  async (flash, notes) => {
    const image = drawScrew(m8, (grey, px) => vision.blur(grey, px));
    const answer = await measured(makePng(image, { exif: makeExif({ flash }) }), marksOf(m8));
    expect(answer.notes).toEqual(notes);
  },
  60_000,
);
