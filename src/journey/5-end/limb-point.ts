import type { PosedCamera } from '../2-card-pose/camera';
import { type AxisFrame, grazing, photoAt } from '../4-thread-signal/axis-frame';
import type { PhotoPoint } from '../overlay';

/** Where the camera sees the limb of a body of revolution: the photo point whose viewing ray grazes it. `s` and `r` are
 *  grazing coordinates (axis-frame.ts), mm, `r` positive on the left: of a cylinder its own place and radius. */
export function limbPoint(
  camera: PosedCamera,
  frame: AxisFrame,
  at: { readonly s: number; readonly r: number },
): PhotoPoint {
  let { s, r } = at;
  // The ray that grazes crosses the axis' plane a little further out, by 1/cos of its lean: each round leaves a
  // hundredth of what was missing.
  for (let round = 0; round < rounds; round++) {
    const met = grazing(camera, frame, photoAt(camera, frame, s, r));
    s += at.s - met.s;
    r += at.r - met.r;
  }
  return photoAt(camera, frame, s, r);
}

const rounds = 6;
