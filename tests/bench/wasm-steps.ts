import { readFileSync } from 'node:fs';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { loadNodeVision } from '../../src/cli/node-vision';
import { decodeJpeg } from '../../src/journey/1-photo/decode-jpeg';
import { readJpegHeader } from '../../src/journey/1-photo/image-header';
import { median } from './photos';

/** The OpenCV steps of the journey alone, as native_steps.py does them; copies to and from the
 *  wasm heap are counted, the orientation is left as it is. Median milliseconds by step. */
export async function wasmSteps(path: string, rounds: number): Promise<Record<string, number>> {
  const vision = await loadNodeVision();
  const jpeg = await nodeDecoders.jpeg();
  const bytes = new Uint8Array(readFileSync(path));
  const all: Record<string, number>[] = [];
  for (let i = 0; i <= rounds; i++) {
    const times: Record<string, number> = {};
    const timed = <T>(name: string, work: () => T): T => {
      const start = performance.now();
      const result = work();
      times[name] = performance.now() - start;
      return result;
    };
    const grey = timed('decode', () => decodeJpeg(jpeg, bytes, readJpegHeader(bytes)!)!);
    const scale = 1000 / Math.max(grey.width, grey.height);
    const [width, height] = [Math.round(grey.width * scale), Math.round(grey.height * scale)];
    const small = timed('resize', () => vision.resize(grey, width, height));
    timed('markers', () => vision.detectMarkers(small));
    timed('blur', () => vision.blur(small, 1.5));
    const level = timed('otsu', () => vision.otsu(small));
    const mask = { ...small, data: small.data.map((value) => (value > level ? 255 : 0)) };
    timed('open', () => vision.open(mask, 3));
    timed('components', () => vision.components(mask, 1));
    timed('contours', () => vision.contours(mask));
    if (i > 0) all.push(times);
  }
  const names = Object.keys(all[0]);
  return Object.fromEntries(names.map((name) => [name, median(all.map((times) => times[name]))]));
}
