import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { syntheticPhoto } from '../../../fixtures/synthetic/photo';
import { syntheticName } from '../../../fixtures/synthetic/scene';
import { type Truth, truthSchema } from './truth';

export interface Case {
  readonly truth: Truth;
  readonly bytes: Uint8Array;
}

/** `load` reads or makes the photo: dear for a synthetic one. */
export interface LazyCase {
  readonly name: string;
  readonly load: () => Promise<Case>;
}

/** Every `NAME.jpg` (or png, webp) of a folder with a `NAME.truth.json` beside it. */
export async function casesInFolder(folder: string): Promise<LazyCase[]> {
  const files = (await readdir(folder)).sort();
  return files.flatMap((photo) => {
    const name = /^(.*)\.(?:jpe?g|png|webp)$/i.exec(photo)?.[1];
    const truthFile = `${name}.truth.json`;
    if (name === undefined || !files.includes(truthFile)) return [];
    const load = async () => ({
      truth: truthSchema.parse(JSON.parse(await readFile(join(folder, truthFile), 'utf8'))),
      bytes: new Uint8Array(await readFile(join(folder, photo))),
    });
    return [{ name, load }];
  });
}

export function syntheticCases(seed: number, count: number): LazyCase[] {
  return Array.from({ length: count }, (_, index) => ({
    name: syntheticName(seed, index),
    load: async () => {
      const { truth, bytes } = await syntheticPhoto(seed, index);
      return { truth: truthSchema.parse(truth), bytes };
    },
  }));
}

/** Writes photos and truth so that `casesInFolder` finds them again. */
export async function saveCases(cases: readonly LazyCase[], folder: string): Promise<void> {
  await mkdir(folder, { recursive: true });
  for (const { name, load } of cases) {
    const { truth, bytes } = await load();
    await writeFile(join(folder, `${name}.jpg`), bytes);
    await writeFile(join(folder, `${name}.truth.json`), JSON.stringify(truth, null, 1));
  }
}
