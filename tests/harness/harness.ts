import {
  defaultOptions,
  type Identification,
  type StageName,
} from '../../src/journey/identification';
import { MeasuringWorker } from '../../src/worker/client';

/** The worker without the page around it, so that tests and measurements in a real browser see
 *  all digits of an answer. */
const worker = new MeasuringWorker();
const never = new AbortController().signal;

function toBlob(base64: string): Blob {
  return new Blob([Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))]);
}

export const harness = {
  ready: () => worker.call('ready', never, () => {}),

  identify: (base64: string): Promise<Identification> =>
    worker.identify(never, toBlob(base64), defaultOptions, () => {}),

  /** Wall time of each round as the page sees it, ms, and what the worker says of its stages. */
  async time(base64: string, rounds: number) {
    const photo = toBlob(base64);
    const results: { totalMs: number; stagesMs: Readonly<Record<string, number>> }[] = [];
    for (let i = 0; i < rounds; i++) {
      const start = performance.now();
      const { timingsMs } = await worker.identify(never, photo, defaultOptions, () => {});
      results.push({ totalMs: performance.now() - start, stagesMs: timingsMs });
    }
    return results;
  },

  /** Milliseconds for each of some frames of the live view, as the camera page sends them. */
  async timeGuidance(base64: string, rounds: number): Promise<number[]> {
    const image = await createImageBitmap(toBlob(base64));
    const width = 1280;
    const height = Math.round((width * image.height) / image.width);
    const canvas = document.createElement('canvas');
    Object.assign(canvas, { width, height });
    const context = canvas.getContext('2d', { willReadFrequently: true })!;
    const times: number[] = [];
    for (let i = 0; i < rounds; i++) {
      const start = performance.now();
      context.drawImage(image, 0, 0, width, height);
      await worker.guide(never, context.getImageData(0, 0, width, height));
      times.push(performance.now() - start);
    }
    return times;
  },

  /** Aborts as soon as the given stage begins; how the call ended. */
  async cancelAt(base64: string, stage: StageName): Promise<string> {
    const abort = new AbortController();
    return worker
      .identify(abort.signal, toBlob(base64), defaultOptions, (begun) => {
        if (begun === stage) abort.abort();
      })
      .then(
        (answer) => answer.outcome,
        (error: Error) => error.name,
      );
  },

  /** How a call ends that the worker does not survive. */
  identifyOrError: (base64: string): Promise<string> =>
    harness.identify(base64).then(
      (answer) => answer.outcome,
      (error: Error) => error.name,
    ),
};

declare global {
  interface Window {
    harness: typeof harness;
  }
}
window.harness = harness;
