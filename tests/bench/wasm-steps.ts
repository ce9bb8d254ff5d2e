import { readFileSync } from 'node:fs';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { loadNodeVision } from '../../src/cli/node-vision';
import { decodeJpeg } from '../../src/journey/1-photo/decode-jpeg';
import { readJpegHeader } from '../../src/journey/1-photo/image-header';
import type { GreyImage } from '../../src/vision/grey-image';
import { median } from './photos';

/** As find-card.ts and fitting-blob.ts have them; the view is the card's window at 5 px per mm. */
const searchPx = 1200;
const viewWidth = 710;
const viewHeight = 470;
const closeRadiusPx = 13;

/** V8 compiles wasm a second time, better, while it already runs: that takes a few photos. */
export const warmUps = 5;

/** The OpenCV steps of the journey alone, as native_steps.py does them; copies to and from the
 *  wasm heap are counted, the orientation is left as it is. Median milliseconds by step. */
export async function wasmSteps(path: string, rounds: number): Promise<Record<string, number>> {
  const vision = await loadNodeVision();
  const jpeg = await nodeDecoders.jpeg();
  const bytes = new Uint8Array(readFileSync(path));
  const all: Record<string, number>[] = [];
  for (let i = 0; i < warmUps + rounds; i++) {
    const times: Record<string, number> = {};
    const timed = <T>(name: string, work: () => T): T => {
      const start = performance.now();
      const result = work();
      times[name] = performance.now() - start;
      return result;
    };
    const grey = timed('decode', () => decodeJpeg(jpeg, bytes, readJpegHeader(bytes)!)!);
    const scale = searchPx / Math.max(grey.width, grey.height);
    const [width, height] = [Math.round(grey.width * scale), Math.round(grey.height * scale)];
    const small = timed('resize', () => vision.resize(grey, width, height));
    timed('markers', () => vision.detectMarkers(small));
    // Stands in for the card's window laid square, which is own sampling, not OpenCV.
    const view = vision.resize(grey, viewWidth, viewHeight);
    timed('blur wide', () => vision.blur(view, 5));
    const fine = timed('blur fine', () => vision.blur(view, 0.8));
    const edges = steepPixels(fine);
    timed('components', () => vision.components(edges, 1));
    const closed = timed('close', () => vision.close(edges, closeRadiusPx));
    timed('of closed', () => vision.components(closed, 100));
    if (i >= warmUps) all.push(times);
  }
  const names = Object.keys(all[0]);
  return Object.fromEntries(names.map((name) => [name, median(all.map((times) => times[name]))]));
}

/** A step of more than 8 grey levels over two pixels, across or down. */
function steepPixels({ width, height, data }: GreyImage): GreyImage {
  const steep = new Uint8Array(data.length);
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      const across = Math.abs(data[i + 1] - data[i - 1]);
      const down = Math.abs(data[i + width] - data[i - width]);
      if (across > 8 || down > 8) steep[i] = 255;
    }
  }
  return { width, height, data: steep };
}
