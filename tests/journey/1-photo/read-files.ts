import { readFileSync } from 'node:fs';
import { nodeDecoders } from '../../../src/cli/node-decoders';
import type { Decoders, Photo } from '../../../src/journey/1-photo/photo';
import { readPhoto } from '../../../src/journey/1-photo/read-photo';

/** A file of fixtures/. */
export const fixture = (name: string) =>
  new Uint8Array(readFileSync(new URL(`../../../fixtures/${name}`, import.meta.url)));

export const never = new AbortController().signal;

export const read = (bytes: Uint8Array, decoders: Decoders = nodeDecoders) =>
  readPhoto(never, bytes, decoders);

/** Of a file that must not be refused. */
export async function accepted(bytes: Uint8Array): Promise<Photo> {
  const result = await read(bytes);
  if (!result.ok) throw new Error(`refused: ${result.reason}`);
  return result.value;
}
