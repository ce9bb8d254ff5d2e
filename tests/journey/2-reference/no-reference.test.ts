import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, expect, it } from 'vitest';
import { nodeDecoders } from '../../../src/cli/node-decoders';
import { loadNodeVision } from '../../../src/cli/node-vision';
import type { Photo } from '../../../src/journey/1-photo/photo';
import { readPhoto } from '../../../src/journey/1-photo/read-photo';
import { findReference } from '../../../src/journey/2-reference/find-reference';
import type { GreyImage } from '../../../src/vision/grey-image';
import type { Vision } from '../../../src/vision/vision';
import { fullSweep } from '../../full-sweep';

/** Parts of renders that hold no whole card and no whole sheet: fittings on paper, on black and on tables, with
 *  straight borders, halves of cards and shadows beside them. */
const fixtures = new URL('../../../fixtures/', import.meta.url);
const print = { x: 1, y: 1, u: 0.002 };

type Part = readonly [left: number, top: number, width: number, height: number];
const insideTheRing: readonly Part[] = [
  [0.27, 0.27, 0.46, 0.46],
  [0.3, 0.2, 0.45, 0.6],
  [0.2, 0.3, 0.5, 0.4],
];
const halves: readonly Part[] = [
  [0, 0, 0.5, 1],
  [0.5, 0, 0.5, 1],
  [0, 0, 1, 0.5],
  [0, 0.5, 1, 0.5],
];

/** Every photo and every part is seen, not each part of each photo: one in `every`, another one in the next photo.
 *  The full sweep sees them all. */
const isSeen = (photo: number, part: number, every: number) =>
  fullSweep || (photo + part) % every === 0;

let vision: Vision;
beforeAll(async () => {
  vision = await loadNodeVision();
});

it.each([
  ['photos/', insideTheRing, 3, fullSweep ? 36 : 12],
  ['references/', halves, 2, fullSweep ? 12 : 6],
] as const)(
  'no part of %s is taken for a reference',
  async (folder, parts, every, count) => {
    const taken: string[] = [];
    let seen = 0;
    const folderUrl = new URL(folder, fixtures);
    const names = readdirSync(folderUrl).filter((file) => file.endsWith('.jpg'));
    for (const [index, name] of names.sort().entries()) {
      const photo = await photoOf(new URL(name, folderUrl));
      for (const part of parts.filter((_, k) => isSeen(index, k, every))) {
        seen++;
        const found = findReference(partOf(photo, part), vision, print, {
          kind: 'auto',
          corners: null,
        });
        // A few of the printed card's markers are enough for it, and it would be right.
        if (found.ok && found.value.kind !== 'card') taken.push(`${name} ${part}`);
      }
    }
    expect(taken).toEqual([]);
    expect(seen).toBe(count);
  },
  120_000,
);

async function photoOf(url: URL): Promise<Photo> {
  const bytes = new Uint8Array(readFileSync(url));
  const photo = await readPhoto(new AbortController().signal, bytes, nodeDecoders);
  if (!photo.ok) throw new Error(photo.reason);
  return photo.value;
}

function partOf(photo: Photo, [left, top, w, h]: Part): Photo {
  const { width: W, height: H, data } = photo.grey;
  const [x0, y0, width, height] = [left * W, top * H, w * W, h * H].map(Math.floor) as [
    number,
    number,
    number,
    number,
  ];
  const out = new Uint8Array(width * height);
  for (let y = 0; y < height; y++)
    out.set(data.subarray((y0 + y) * W + x0, (y0 + y) * W + x0 + width), y * width);
  const grey: GreyImage = { width, height, data: out };
  return { ...photo, grey, f35Mm: null, originalSize: grey };
}
