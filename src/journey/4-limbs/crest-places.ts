import { type PosedCamera, rayThrough } from '../2-card-pose/camera';
import { grazing } from '../4-thread-signal/axis-frame';
import type { PhotoPoint } from '../overlay';
import { type TurnPhases, topOf, type WoundBody } from './turn-phases';

/** Places of one window's crests along a thread's axis, mm. */
export type CrestPlaces = Readonly<Record<keyof TurnPhases, number>>;

/** Where crests that were seen in a photo lie along an axis, through a camera. */
export function crestPlaces(
  camera: PosedCamera,
  body: WoundBody,
  { left, right, face }: TurnPhases,
): CrestPlaces {
  return {
    left: grazing(camera, body.frame, left.at).s,
    right: grazing(camera, body.frame, right.at).s,
    face: onTop(camera, body, face.at),
  };
}

/** Where along the axis a point of the photo lies on the line that the upper side has for its middle. */
function onTop(camera: PosedCamera, body: WoundBody, at: PhotoPoint): number {
  const { along } = body.frame;
  const [a, b] = [topOf(body, 0), topOf(body, 1)];
  const line = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const ray = rayThrough(camera, at);
  const c = camera.centre;
  // Foot of the common perpendicular, along the line.
  const between = [a[0] - c[0], a[1] - c[1], a[2] - c[2]];
  const dot = (p: ArrayLike<number>, q: ArrayLike<number>) =>
    p[0] * q[0] + p[1] * q[1] + p[2] * q[2];
  const [ll, lr, rr] = [dot(line, line), dot(line, ray), dot(ray, ray)];
  const s = (lr * dot(ray, between) - rr * dot(line, between)) / (ll * rr - lr * lr);
  const foot = line.map((v, i) => a[i] + s * v - body.frame.origin[i]);
  return dot(foot, along);
}
