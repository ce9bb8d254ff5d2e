import type { PosedCamera } from '../2-card-pose/camera';
import type { Part } from '../3-find/find-fitting';

/** What was found of a part, on the card, as the camera sees it from its foot: a frame in which `u` runs away from there
 *  and `v` sideways. Millimetres. */
export interface PartOutline {
  readonly near: number;
  readonly far: number;
  /** Half its width, and where its middle lies sideways. */
  readonly half: number;
  readonly middle: number;
  readonly at: (u: number, v: number) => readonly [number, number];
  /** Direction of u on the card, rad. */
  readonly away: readonly [number, number];
}

export function partOutline(
  { centre }: PosedCamera,
  { view, blob }: Pick<Part, 'view' | 'blob'>,
): PartOutline {
  const onCard = ([x, y]: readonly [number, number]) =>
    [view.originXMm + x / view.pxPerMm, view.originYMm + y / view.pxPerMm] as const;
  const [cx, cy] = onCard(blob.centroid);
  const reach = Math.max(1e-9, Math.hypot(cx - centre[0], cy - centre[1]));
  const [ax, ay] = [(cx - centre[0]) / reach, (cy - centre[1]) / reach];
  const seen = blob.hull.map((point) => {
    const [x, y] = onCard(point);
    return [(x - cx) * ax + (y - cy) * ay, (y - cy) * ax - (x - cx) * ay] as const;
  });
  const us = seen.map(([u]) => u);
  const vs = seen.map(([, v]) => v);
  const [left, right] = [Math.min(...vs), Math.max(...vs)];
  return {
    near: Math.min(...us),
    far: Math.max(...us),
    half: (right - left) / 2,
    middle: (right + left) / 2,
    at: (u, v) => [cx + u * ax - v * ay, cy + u * ay + v * ax],
    away: [ax, ay],
  };
}
