import { createHash } from 'node:crypto';
import { nodeDecoders } from '../src/cli/node-decoders';
import { loadNodeVision } from '../src/cli/node-vision';
import {
  defaultOptions,
  type Identification,
  type MeasureOptions,
} from '../src/journey/identification';
import { identifyPhoto, type Tools } from '../src/journey/identify';

let loaded: Promise<Tools> | undefined;
const known = new Map<string, Promise<Identification>>();

/** What the journey says of a photo. Test files of one process share it (project `photos` in vite.config.ts): the same
 *  bytes, asked the same, are measured once. It is kept in memory alone, beside the code that measured it, so that it
 *  cannot outlive a change. Each caller has a copy of its own. */
export async function measured(
  bytes: Uint8Array,
  options: MeasureOptions = defaultOptions,
): Promise<Identification> {
  const key = createHash('sha256').update(bytes).update(JSON.stringify(options)).digest('hex');
  const answer = known.get(key) ?? measure(bytes, options);
  known.set(key, answer);
  return structuredClone(await answer);
}

async function measure(bytes: Uint8Array, options: MeasureOptions): Promise<Identification> {
  loaded ??= loadNodeVision().then((vision) => ({ vision, decoders: nodeDecoders }));
  return identifyPhoto(new AbortController().signal, bytes, options, await loaded, () => {});
}
