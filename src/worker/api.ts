import { toGrey } from '../journey/1-photo/decode-colour';
import type { RectangleKind } from '../journey/2-reference/rectangles';
import { type Guidance, judgeFrame, type SeenFrame } from '../journey/guidance';
import type { GuidedEnd } from '../journey/guided-tilt';
import type { Identification, MeasureOptions, OnStage } from '../journey/identification';
import { identifyPhoto } from '../journey/identify';
import type { Vision } from '../vision/vision';
import { heicAsJpeg } from './heic-as-jpeg';
import { workerDecoders } from './worker-decoders';
import { loadWorkerVision } from './worker-vision';

let loading: Promise<Vision> | null = null;

/** OpenCV, once it has arrived; after a failed fetch it is tried anew. */
function vision(): Promise<Vision> {
  loading ??= loadWorkerVision().catch((error: unknown) => {
    loading = null;
    throw error;
  });
  return loading;
}

// Begun at once, so that it arrives while the person still chooses a photo. The first call that
// needs it reports a failure; until then it is nobody's.
vision().catch(() => {});

/** A frame of the live view; its pixels are transferred, not copied. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly rgba: ArrayBuffer;
}

let before: SeenFrame | null = null;

/** What the worker does for the page. The page's side is typed by this object. */
export const api = {
  /** Resolves when OpenCV is compiled and ready. */
  async ready(_signal: AbortSignal, _onStage: OnStage): Promise<void> {
    await vision();
  },

  async identify(
    signal: AbortSignal,
    onStage: OnStage,
    photo: Blob,
    options: MeasureOptions,
  ): Promise<Identification> {
    const [bytes, loaded] = await Promise.all([photo.arrayBuffer(), vision()]);
    const tools = { vision: loaded, decoders: workerDecoders };
    return identifyPhoto(signal, new Uint8Array(bytes), options, tools, onStage);
  },

  /** Judges one frame of the live view against the one before it. */
  async guide(
    _signal: AbortSignal,
    _onStage: OnStage,
    frame: Frame,
    outline: RectangleKind | null,
    end: GuidedEnd,
  ): Promise<Guidance> {
    const rgba = new Uint8ClampedArray(frame.rgba);
    const grey = toGrey({ ...frame, data: rgba });
    const { guidance, seen } = judgeFrame(grey, before, await vision(), outline, end);
    before = seen;
    return guidance;
  },

  /** A HEIC photo as browsers can show it; null for any other, and when it is damaged. */
  async showable(_signal: AbortSignal, _onStage: OnStage, photo: Blob): Promise<Blob | null> {
    return heicAsJpeg(new Uint8Array(await photo.arrayBuffer()), workerDecoders);
  },
};

export type Api = typeof api;
