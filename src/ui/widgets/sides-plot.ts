/** A plot of both sides of a thread along its axis: the left side above, the right side mirrored below
 *  it. The body between them is left out, as a drawing breaks a long part. */
export interface SidesLayout {
  readonly bandHeight: number;
  readonly gap: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** What is shown: from x0 to x1 along the axis, radii from r0 to r1, mm. */
export interface SidesRange {
  readonly x0: number;
  readonly x1: number;
  readonly r0: number;
  readonly r1: number;
}

export type PlotSide = 'left' | 'right';
export const plotSides = ['left', 'right'] as const;

const width = 640;

/** Where a millimetre lies in the plot. */
export function sidesPlot(layout: SidesLayout, range: () => SidesRange) {
  const { bandHeight, gap, left, right, top, bottom } = layout;
  const bandTop = (side: PlotSide) => (side === 'left' ? top : top + bandHeight + gap);
  return {
    width,
    height: top + 2 * bandHeight + gap + bottom,
    left,
    right: width - right,
    axisY: top + bandHeight + gap / 2,
    bandHeight,
    bandTop,
    range,
    x: (mm: number) => {
      const { x0, x1 } = range();
      return left + ((mm - x0) / (x1 - x0 || 1)) * (width - left - right);
    },
    y: (side: PlotSide, mm: number) => {
      const { r0, r1 } = range();
      const share = Math.min(1, Math.max(0, (mm - r0) / (r1 - r0)));
      return bandTop(side) + bandHeight * (side === 'left' ? 1 - share : share);
    },
  };
}

export type SidesPlot = ReturnType<typeof sidesPlot>;

/** Round values from one end to the other, at the finest step that makes no more than `most`. */
export function ticks(
  from: number,
  to: number,
  most: number,
  steps: readonly number[],
): readonly number[] {
  const step = steps.find((s) => (to - from) / s <= most) ?? steps.at(-1)!;
  const found: number[] = [];
  // Without the negative zero that rounding up leaves.
  for (let v = Math.ceil(from / step) * step + 0; v <= to + 1e-9; v += step) found.push(v);
  return found;
}
