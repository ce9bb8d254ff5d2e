import * as portable from '../../quantity/portable-math';
import type { Blob } from './fitting-blob';
import type { RippleGroup } from './ripple-groups';
import { roughAxes } from './rough-axis';
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

/** Mirror lines of the part's edges, and middles of what ripples. */
export function candidateLines(
  view: WindowView,
  blob: Blob | null,
  groups: readonly RippleGroup[],
  groupsPxPerMm: number,
): Line[] {
  const lines: Line[] = [];
  if (blob)
    for (const axis of roughAxes(blob)) {
      const x = view.originXMm + axis.through[0] / view.pxPerMm;
      const y = view.originYMm + axis.through[1] / view.pxPerMm;
      lines.push(onBlob(view, blob, x, y, axis.angleRad));
    }
  for (const group of groups) {
    const x = view.originXMm + group.x / groupsPxPerMm;
    const y = view.originYMm + group.y / groupsPxPerMm;
    if (lines.some((l) => near(l, x, y, group.angleRad))) continue;
    const reach = 2 * (group.alongPx / groupsPxPerMm) + 12;
    lines.push({
      x,
      y,
      angleRad: group.angleRad,
      fromMm: -reach,
      toMm: reach,
      halfWidthMm: 2.2 * (group.acrossPx / groupsPxPerMm) + 8,
      uAngleRad: 0.045,
      uOffsetMm: 2.5,
    });
  }
  return lines;
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
  return (
    Math.abs(portable.sin(angleRad - line.angleRad)) < sameRad && Math.abs(off) < sameMm
  );
}
