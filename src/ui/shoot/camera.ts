import { bestStill } from './best-still';

export interface Camera {
  readonly stream: MediaStream;
  /** The picture now, at most 1280 px wide, for guidance. Null until the camera delivers. */
  frame(video: HTMLVideoElement): ImageData | null;
  /** The sharpest of a few stills. */
  shoot(video: HTMLVideoElement): Promise<Blob | null>;
  readonly setTorch: ((on: boolean) => Promise<boolean>) | null;
  close(): void;
}

const guideWidth = 1280;

/** The rear camera at the highest resolution it offers. */
export async function openCamera(): Promise<Camera | 'no-camera' | 'denied'> {
  if (!navigator.mediaDevices?.getUserMedia) return 'no-camera';
  let stream: MediaStream;
  try {
    stream = await navigator.mediaDevices.getUserMedia({
      audio: false,
      video: {
        facingMode: { ideal: 'environment' },
        width: { ideal: 4096 },
        height: { ideal: 3072 },
      },
    });
  } catch (cause) {
    const denied = cause instanceof DOMException && cause.name === 'NotAllowedError';
    return denied ? 'denied' : 'no-camera';
  }
  const [track] = stream.getVideoTracks();
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('2d', { willReadFrequently: true })!;
  return {
    stream,
    frame(video) {
      const { videoWidth, videoHeight } = video;
      if (!videoWidth || !videoHeight) return null;
      const factor = Math.min(1, guideWidth / videoWidth);
      canvas.width = Math.round(videoWidth * factor);
      canvas.height = Math.round(videoHeight * factor);
      context.drawImage(video, 0, 0, canvas.width, canvas.height);
      return context.getImageData(0, 0, canvas.width, canvas.height);
    },
    shoot: (video) => bestStill(track, video),
    setTorch: torchOf(track),
    close() {
      for (const one of stream.getTracks()) one.stop();
    },
  };
}

function torchOf(track: MediaStreamTrack): Camera['setTorch'] {
  const able = track.getCapabilities?.() as { torch?: boolean } | undefined;
  if (!able?.torch) return null;
  return async (on) => {
    try {
      await track.applyConstraints({ advanced: [{ torch: on } as MediaTrackConstraintSet] });
      return true;
    } catch {
      return false;
    }
  };
}
