import * as portable from '../../quantity/portable-math';
import type { Blob } from './fitting-blob';
import type { RippleGroup } from './ripple-groups';
import type { RoughAxis } from './rough-axis';
import type { WindowView } from './window-view';

/** A line over the reference's plane that may be an axis, and where along and beside it to look; mm in
 *  that plane. */
export interface Line {
  readonly x: number;
  readonly y: number;
  readonly angleRad: number;
  /** From (x, y) along the line. */
  readonly fromMm: number;
  readonly toMm: number;
  readonly halfWidthMm: number;
  /** How far an axis may be off the line: a mirror line by its shadow, what ripples by its light. */
  readonly uAngleRad: number;
  readonly uOffsetMm: number;
}

/** Lines nearer than these are one. */
const sameRad = 0.06;
const sameMm = 2;

/** Mirror lines of the part's edges. */
export function mirrorLines(view: WindowView, blob: Blob, axes: readonly RoughAxis[]): Line[] {
  return axes.map(({ through, angleRad }) =>
    onBlob(
      view,
      blob,
      view.originXMm + through[0] / view.pxPerMm,
      view.originYMm + through[1] / view.pxPerMm,
      angleRad,
    ),
  );
}

/** Middles of what ripples, where no line runs already. */
export function rippleLines(
  view: WindowView,
  groups: readonly RippleGroup[],
  lines: readonly Line[],
): Line[] {
  return groups.flatMap((group) => {
    const x = view.originXMm + group.x / view.pxPerMm;
    const y = view.originYMm + group.y / view.pxPerMm;
    if (lines.some((l) => near(l, x, y, group.angleRad))) return [];
    const reach = 2 * (group.alongPx / view.pxPerMm) + 12;
    return [
      {
        x,
        y,
        angleRad: group.angleRad,
        fromMm: -reach,
        toMm: reach,
        halfWidthMm: 2.2 * (group.acrossPx / view.pxPerMm) + 8,
        uAngleRad: 0.045,
        uOffsetMm: 2.5,
      },
    ];
  });
}

function onBlob(view: WindowView, blob: Blob, x: number, y: number, angleRad: number): Line {
  const c = portable.cos(angleRad);
  const s = portable.sin(angleRad);
  const at = blob.hull.map(([i, j]) => [
    view.originXMm + i / view.pxPerMm - x,
    view.originYMm + j / view.pxPerMm - y,
  ]);
  const along = at.map(([dx, dy]) => dx * c + dy * s);
  const across = at.map(([dx, dy]) => Math.abs(dy * c - dx * s));
  return {
    x,
    y,
    angleRad,
    fromMm: Math.min(...along),
    toMm: Math.max(...along),
    halfWidthMm: Math.max(...across) + 1,
    uAngleRad: 0.02,
    uOffsetMm: 1.5,
  };
}

function near(line: Line, x: number, y: number, angleRad: number): boolean {
  const c = portable.cos(line.angleRad);
  const s = portable.sin(line.angleRad);
  const off = (y - line.y) * c - (x - line.x) * s;
  return Math.abs(portable.sin(angleRad - line.angleRad)) < sameRad && Math.abs(off) < sameMm;
}
