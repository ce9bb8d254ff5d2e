import { sharpness } from './sharpness';

interface StillCamera {
  takePhoto(): Promise<Blob>;
}

/** A tap shakes the telephone, and its focus hunts: of a few stills the sharpest is kept. */
const most = { stills: 3, frames: 5 };
/** Nobody holds still for longer. */
const enoughMs = 1500;
const betweenFramesMs = 60;
/** The middle, where the fitting lies, at full resolution: blur of a few pixels shows nowhere else. */
const judgedPx = 1024;

/** Real stills where the browser takes them, which have more pixels than the video; else its frames. */
export async function bestStill(
  track: MediaStreamTrack,
  video: HTMLVideoElement,
): Promise<Blob | null> {
  const { ImageCapture: Capture } = globalThis as {
    ImageCapture?: new (track: MediaStreamTrack) => StillCamera;
  };
  const still = Capture ? await bestPhoto(new Capture(track)) : null;
  return still ?? bestFrame(video);
}

async function bestPhoto(camera: StillCamera): Promise<Blob | null> {
  const until = performance.now() + enoughMs;
  let best: { photo: Blob; sharp: number } | null = null;
  try {
    for (let i = 0; i < most.stills && (!best || performance.now() < until); i++) {
      const photo = await camera.takePhoto();
      const bitmap = await createImageBitmap(photo);
      const sharp = judged(bitmap);
      bitmap.close();
      if (!best || sharp > best.sharp) best = { photo, sharp };
    }
  } catch {
    // Some devices announce stills and fail: what there is, or a video frame, serves.
  }
  return best?.photo ?? null;
}

async function bestFrame(video: HTMLVideoElement): Promise<Blob | null> {
  if (!video.videoWidth) return null;
  let best: { bitmap: ImageBitmap; sharp: number } | null = null;
  for (let i = 0; i < most.frames; i++) {
    if (i > 0) await new Promise((done) => setTimeout(done, betweenFramesMs));
    const bitmap = await createImageBitmap(video);
    const sharp = judged(bitmap);
    if (best && sharp <= best.sharp) bitmap.close();
    else {
      best?.bitmap.close();
      best = { bitmap, sharp };
    }
  }
  if (!best) return null;
  const { bitmap } = best;
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
  canvas.getContext('2d')!.drawImage(bitmap, 0, 0);
  bitmap.close();
  return canvas.convertToBlob({ type: 'image/jpeg', quality: 0.95 });
}

function judged(bitmap: ImageBitmap): number {
  const width = Math.min(judgedPx, bitmap.width);
  const height = Math.min(judgedPx, bitmap.height);
  const context = new OffscreenCanvas(width, height).getContext('2d', {
    willReadFrequently: true,
  })!;
  context.drawImage(bitmap, (width - bitmap.width) / 2, (height - bitmap.height) / 2);
  return sharpness(context.getImageData(0, 0, width, height));
}
