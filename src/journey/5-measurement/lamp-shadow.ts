import { ascending, middleValue, quantile } from '../../quantity/order';
import * as portable from '../../quantity/portable-math';
import type { AxisFrame } from '../4-thread-signal/axis-frame';
import type { OutlinePoint, OutlineView } from '../4-thread-signal/outline-edges';
import { type CrestCut, crestCuts } from './crest-cuts';
import type { ThreadFit } from './fit-thread';
import { flanksOf } from './flanks';

/** How wide a shadow a lamp beside the lens throws: it adjoins the metal, and passes for it. A phone's
 *  lens and lamp are about 14 mm apart (common practice). */
export function lampShadowMm(heightMm: number, cameraHeightMm: number): number {
  return (14 * heightMm) / (cameraHeightMm - heightMm);
}

/** Of photos on paper, so many before anything is known of the light. */
const unseen = 0.15;

/** Probability that such a shadow adjoins one side of a thread on paper, by Bayes from how the sides
 *  differ. Where metal is as dark as the shadow, and the shadow falls square to the axis, they do not. */
export function lampShadow(
  view: OutlineView,
  frame: AxisFrame,
  points: readonly OutlinePoint[],
  fit: ThreadFit,
): number {
  if (view.field === 'dark') return 0;
  const widthMm = lampShadowMm(-frame.origin[2], -view.camera.centre[2]);
  const odds =
    (unseen / (1 - unseen)) *
    outOfStep(points, fit, widthMm, view.mmPerPx) *
    darkBand(view, frame, points, fit);
  return odds / (1 + odds);
}

/** How far apart the sides stand beside such a shadow, in its width; and beside none, px. */
const apartIn = { shadow: 0.05, lightPx: 0.08 };

/** How much more likely than without a shadow it is that one side's teeth stand so far out of step with
 *  the other's, or are so much wider: it moves a side's outline along the axis too, and fills its roots. */
function outOfStep(
  points: readonly OutlinePoint[],
  fit: ThreadFit,
  widthMm: number,
  mmPerPx: number,
): number {
  const [left, right] = (['left', 'right'] as const).map((side) => {
    const flanks = flanksOf(points, fit, side);
    const [down, up] = [0, 1].map((odd) =>
      meanOf(flanks.filter(({ index }) => Math.abs(index % 2) === odd).map((f) => f.shiftMm)),
    );
    return {
      shift: (down.mean + up.mean) / 2,
      halfWidth: (down.mean - up.mean) / 2,
      variance: (down.variance + up.variance) / 4,
    };
  });
  const square = (left.shift - right.shift) ** 2 + (left.halfWidth - right.halfWidth) ** 2;
  const without = left.variance + right.variance + (apartIn.lightPx * mmPerPx) ** 2;
  if (!Number.isFinite(without)) return 1;
  const beside = without + (apartIn.shadow * widthMm) ** 2;
  // Two Gaussians of two dimensions each.
  return (without / beside) * portable.exp((square / without - square / beside) / 2);
}

/** Middle of what most agree on, and its variance. */
function meanOf(values: readonly number[]): { readonly mean: number; readonly variance: number } {
  if (values.length < 3) return { mean: 0, variance: Number.POSITIVE_INFINITY };
  const mean = middleValue(values);
  const spread = 1.4826 * middleValue(values.map((v) => Math.abs(v - mean)));
  return { mean, variance: (1.57 * spread * spread) / values.length };
}

/** Depths, px inside the outline, between which a band of shadow is sought, and beyond it the metal. */
const band = { from: 1, to: 10, metal: 8 };
const stepPx = 0.5;
const inside = (band.to + band.metal) / stepPx;
/** By how much darker the band is on one side than on the other, in the light of the paper: from telling
 *  nothing to telling as much as it may; and how steady its depth is at least, px between quartiles. */
const darker = { from: 0.06, to: 0.1 };
const steadyPx = 2;
const mostTelling = 30;

/** How much more likely a shadow makes it that on one side's crests a dark band lies between paper and
 *  metal, and none on the other's. */
function darkBand(
  view: OutlineView,
  frame: AxisFrame,
  points: readonly OutlinePoint[],
  fit: ThreadFit,
): number {
  const cuts = crestCuts(view, frame, points, fit, {
    leastWeight: 0.4,
    phaseWithin: 0.12,
    stepPx,
    inside,
    length: inside + 4 / stepPx + 1,
  });
  const [less, more] = (['left', 'right'] as const)
    .map((side) => bandOn(cuts.filter(({ point }) => point.side === side)))
    .sort((a, b) => a.darker - b.darker);
  if (!(more.spreadPx <= steadyPx)) return 1;
  const apart = more.darker - less.darker;
  const share = (apart - darker.from) / (darker.to - darker.from);
  return 1 + (mostTelling - 1) * Math.max(0, Math.min(1, share));
}

function bandOn(cuts: readonly CrestCut[]): {
  readonly darker: number;
  readonly spreadPx: number;
} {
  if (cuts.length < 8) return { darker: 0, spreadPx: Number.POSITIVE_INFINITY };
  const seen = cuts.map(({ profile }) => {
    const at = (depthPx: number) => profile[inside - depthPx / stepPx];
    const paper = (at(-4) + at(-3.5) + at(-3)) / 3;
    let dark = band.from;
    for (let d = band.from; d < band.to; d += stepPx) if (at(d) < at(dark)) dark = d;
    let metal = dark;
    for (let d = dark; d < dark + band.metal; d += stepPx) if (at(d) > at(metal)) metal = d;
    let edge = dark;
    while (edge < metal && at(edge) < (at(dark) + at(metal)) / 2) edge += stepPx;
    return { deep: (at(metal) - at(dark)) / paper, edge };
  });
  const edges = ascending(seen.map(({ edge }) => edge));
  return {
    darker: middleValue(seen.map(({ deep }) => deep)),
    spreadPx: quantile(edges, 0.75) - quantile(edges, 0.25),
  };
}
