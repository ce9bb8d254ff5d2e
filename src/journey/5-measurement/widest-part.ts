import { ascending } from '../../quantity/order';
import { atHeight, type PosedCamera } from '../2-card-pose/camera';
import type { AxisFrame } from '../4-thread-signal/axis-frame';
import { type OutlineView, outlineEdges } from '../4-thread-signal/outline-edges';
import type { ThreadPlace } from '../4-thread-signal/thread-place';
import type { PhotoPoint } from '../overlay';

export interface Resting {
  readonly on: 'hex' | 'round' | 'unknown';
  /** Of the axis over the card. */
  readonly heightMm: number;
  readonly uMm: number;
}

/** Half-width across the widest part from edges on both sides, robustly, in the axis plane.
 *  A hex corner lies in that plane, so that is where its ray is stopped: the distance between ray and
 *  axis is smaller by the cosine of the view's lean across the axis, 6 % at 20°. A round, straight
 *  from above, grazes a little below the ray's crossing, 1 part in 10³. */
export function widestHalfWidth(
  view: OutlineView,
  frame: AxisFrame,
  place: ThreadPlace,
): { readonly mm: number; readonly uMm: number } | null {
  const { widest } = place;
  const { camera, mmPerPx } = view;
  const trim = Math.min(1.2, (widest.toS - widest.fromS) * 0.2);
  const zone = { fromS: widest.fromS + trim, toS: widest.toS - trim };
  if (zone.toS - zone.fromS < 1) return null;
  const band = () => ({ fromR: 0.86 * widest.halfWidthMm, toR: 1.06 * widest.halfWidthMm + 0.4 });
  const sides = (['left', 'right'] as const).map((side) => {
    const points = outlineEdges(view, frame, { side, zone, band });
    if (points.length < 12) return null;
    // Chamfers and shadows fall on either side of the corner's line: its densest radius counts.
    const r = points.map((p) => acrossAxis(camera, frame, p.photo));
    return mode(r, 1.5 * mmPerPx);
  });
  const [left, right] = sides;
  if (!left || !right) return null;
  // The axis is known from the thread: sides that disagree are not both the hex. The one whose edge
  // is straighter is believed, and less.
  if (Math.abs(left.at - right.at) > 4 * mmPerPx) {
    const straight = left.share > right.share ? left : right;
    return { mm: straight.at, uMm: Math.hypot(mmPerPx, 0.25 * Math.abs(left.at - right.at)) };
  }
  return {
    mm: (left.at + right.at) / 2,
    uMm: Math.hypot(0.4 * mmPerPx, 0.35 * Math.abs(left.at - right.at)),
  };
}

/** Distance from the axis at which a viewing ray crosses the level plane through it, mm. */
function acrossAxis(camera: PosedCamera, { origin, left }: AxisFrame, photo: PhotoPoint): number {
  const [x, y] = atHeight(camera, photo, -origin[2]);
  return Math.abs((x - origin[0]) * left[0] + (y - origin[1]) * left[1]);
}

function mode(values: number[], window: number): { at: number; share: number } {
  const sorted = ascending(values);
  let best = 0;
  let at = sorted[0];
  let j = 0;
  for (let i = 0; i < sorted.length; i++) {
    while (sorted[i] - sorted[j] > window) j++;
    if (i - j + 1 > best) {
      best = i - j + 1;
      at = sorted[(i + j) >> 1];
    }
  }
  return { at, share: best / values.length };
}
