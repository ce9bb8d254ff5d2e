import type { PosedCamera } from '../2-card-pose/camera';
import { type AxisFrame, axisThrough, photoAt } from './axis-frame';

/** The axis moved sideways by `offsetMm` at `middleS` and turned by `turn` there, at its height. */
export function recentred(
  camera: PosedCamera,
  frame: AxisFrame,
  middleS: number,
  offsetMm: number,
  turn: number,
): AxisFrame {
  const at = (s: number) => photoAt(camera, frame, s, offsetMm + turn * (s - middleS));
  return anchored(
    axisThrough(camera, at(middleS - 20), at(middleS + 20), -frame.origin[2]),
    middleS - 20,
  );
}

/** The axis that looks the same in the photo from `zone.fromS` to `zone.toS`, at another height. */
export function atHeight(
  camera: PosedCamera,
  frame: AxisFrame,
  heightMm: number,
  zone: { readonly fromS: number; readonly toS: number },
): AxisFrame {
  const from = photoAt(camera, frame, zone.fromS, 0);
  const to = photoAt(camera, frame, zone.toS, 0);
  return anchored(axisThrough(camera, from, to, heightMm), zone.fromS);
}

/** Moves the origin back along the axis so that it has s = `s` where it had 0. */
function anchored(frame: AxisFrame, s: number): AxisFrame {
  const { origin: o, along: d } = frame;
  return { ...frame, origin: [o[0] - s * d[0], o[1] - s * d[1], o[2] - s * d[2]] };
}

export function mmPerPxAt(
  camera: PosedCamera,
  frame: AxisFrame,
  zone: { readonly fromS: number; readonly toS: number },
): number {
  const a = photoAt(camera, frame, zone.fromS, 0);
  const b = photoAt(camera, frame, zone.toS, 0);
  return (zone.toS - zone.fromS) / Math.hypot(a[0] - b[0], a[1] - b[1]);
}
