import type { RectangleKind } from '../../journey/2-reference/rectangles';
import type { ThreadMeasurement } from '../../journey/5-measurement/thread-measurement';
import type { Reading } from '../../journey/6-candidates/reading';
import type { Conclusion } from '../../journey/7-next-reading/decision';
import type { Tool } from '../../journey/7-next-reading/tools';
import type { Guidance } from '../../journey/guidance';
import type { GuidedEnd } from '../../journey/guided-tilt';
import type { Identification, MeasureOptions, OnStage } from '../../journey/identification';
import { MeasuringWorker, WorkerDied } from '../../worker/client';
import { priorChoice } from './prior-choice';

export { WorkerDied };

let worker: MeasuringWorker | null = null;

/** Starts on first use, or when a screen expects a photo soon: OpenCV then loads meanwhile. */
function warmUp(): MeasuringWorker {
  worker ??= new MeasuringWorker();
  return worker;
}

export async function measurePhoto(
  signal: AbortSignal,
  photo: Blob,
  options: MeasureOptions,
  onStage: OnStage,
): Promise<Identification> {
  return warmUp().identify(signal, photo, options, onStage);
}

/** A HEIC photo as a JPEG for the screen; null for any other. */
export function heicAsJpeg(photo: Blob): Promise<Blob | null> {
  return warmUp().call('showable', new AbortController().signal, () => {}, photo);
}

/** Stages 6 and 7 need no photo and no OpenCV: they run in the page, and their tables load on first use. */
export async function conclude(
  measurement: ThreadMeasurement | null,
  readings: readonly Reading[],
  atHand: readonly Tool[],
): Promise<Conclusion> {
  const core = await import('../../journey/7-next-reading/conclude');
  return core.conclude(measurement, readings, { atHand, ...priorChoice() });
}

/** Judges one frame of the live view. */
export function guideFrame(
  signal: AbortSignal,
  frame: ImageData,
  outline: RectangleKind | null,
  end: GuidedEnd,
): Promise<Guidance> {
  return warmUp().guide(signal, frame, outline, end);
}

/** Lets the screen stand first; then the worker and OpenCV arrive while a photo is being chosen. */
export function warmUpSoon(): void {
  const start = () => void warmUp();
  if ('requestIdleCallback' in globalThis) requestIdleCallback(start, { timeout: 3000 });
  else setTimeout(start, 1500);
}
