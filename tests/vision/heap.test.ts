import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { loadNodeVision } from '../../src/cli/node-vision';
import { defaultOptions } from '../../src/journey/identification';
import { identifyPhoto } from '../../src/journey/identify';
import type { Vision } from '../../src/vision/vision';

type Call = () => unknown;

/** Notes every call, with its arguments, to make it again. */
function noted(vision: Vision, calls: Call[]): Vision {
  return new Proxy(vision, {
    get: (target, name: keyof Vision) => {
      const work = target[name] as (...args: unknown[]) => unknown;
      return (...args: unknown[]) => {
        calls.push(() => work.apply(target, args));
        return work.apply(target, args);
      };
    },
  });
}

// The wasm is the browser's. What a photo asks of OpenCV is asked again, without the arithmetic between.
test('the wasm heap does not grow over the OpenCV work of 200 photos', async () => {
  const vision = await loadNodeVision();
  const calls: Call[] = [];
  const photo = new Uint8Array(
    readFileSync(new URL('../../fixtures/photos/d05.jpg', import.meta.url)),
  );
  const tools = { vision: noted(vision, calls), decoders: nodeDecoders };
  const never = new AbortController().signal;
  const { outcome } = await identifyPhoto(never, photo, defaultOptions, tools, () => {});
  expect(outcome).toBe('measured');
  expect(calls.length).toBeGreaterThan(5);
  const before = vision.heapBytes();
  for (let round = 0; round < 200; round++) for (const call of calls) call();
  expect(vision.heapBytes()).toBe(before);
});
