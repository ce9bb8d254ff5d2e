import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';
import type { PosedCamera } from '../2-card-pose/camera';
import type { AxisFrame, Extent } from '../4-thread-signal/axis-frame';
import { hexOf } from './hex-network';
import { hexPatch, rowsPerRadius } from './hex-patch';

/** The hex beside a thread, and with it the axis' height: a hex on its flat shows its corners at the
 *  axis' height, h = (√3/2)·half-width. */
export interface HexSeen {
  /** Half across corners in the axis plane at its height, mm. */
  readonly halfWidthMm: number;
  readonly heightMm: number;
  readonly uHeightMm: number;
  /** Probability of the peak against all other widths. */
  readonly share: number;
  /** Probability that it lies towards greater s. */
  readonly ahead: number;
  /** How far to the left of the axis its middle lies, mm; hex and thread are turned about one axis. */
  readonly offsetMm: number;
  readonly uOffsetMm: number;
}

export const hexRatio = Math.sqrt(3) / 2;
/** How far the middle may lie beside the axis, rows; and how well the two tell it beyond their own spread, of the
 *  radius. */
const mostAside = 6;
const usuallyAside = 2.5;
const uAside = 0.03;

/** Across flats as most fittings have it, mm over the thread's diameter, and how widely that spreads, ln; one hex in a
 *  hundred is of any size (common practice and judgement, from spanner sizes of stud ends: M22 27, G1/2 27, 3/4 24). */
const usualFlats = { perDiameter: 1.1, overMm: 3, u: 0.22, any: 0.01 };

/** How usual a hex is beside a thread, up to a constant. */
export function usualHex(acrossFlatsMm: number, diameterMm: number): number {
  const { perDiameter, overMm, u, any } = usualFlats;
  const z = portable.log(acrossFlatsMm / (perDiameter * diameterMm + overMm)) / u;
  return any + portable.exp(-0.5 * z * z);
}

export function hexHeight(
  grey: GreyImage,
  camera: PosedCamera,
  frame: AxisFrame,
  zone: Extent,
  radiusMm: number,
): HexSeen {
  const belief = hexOf(hexPatch(grey, camera, frame, zone, radiusMm));
  const n = belief.left.length;
  // The axis may lie a little beside the middle.
  const both = new Float64Array(n);
  const aside = new Float64Array(n);
  const aside2 = new Float64Array(n);
  for (let d = -mostAside; d <= mostAside; d++) {
    const usual = portable.exp(-0.5 * (d / usuallyAside) ** 2);
    for (let i = 0; i < n; i++) {
      const l = belief.left[i + d] ?? 0;
      const r = belief.right[i - d] ?? 0;
      const p = usual * (0.97 * l + 0.03 / n) * (0.97 * r + 0.03 / n);
      both[i] += p;
      aside[i] += p * d;
      aside2[i] += p * d * d;
    }
  }
  const high = -camera.centre[2];
  const heightAt = (row: number): number => {
    const slope = (hexRatio * ((row + 0.5) / rowsPerRadius) * radiusMm) / (high + frame.origin[2]);
    return (slope * high) / (1 + slope);
  };
  const likely = both.map((p, i) => p * usualHex(2 * heightAt(i), 2 * radiusMm));
  let top = 1;
  let all = 0;
  for (let i = 0; i < n; i++) {
    if (likely[i] > likely[top]) top = i;
    all += likely[i];
  }
  let share = 0;
  let near = 0;
  let mean = 0;
  let second = 0;
  let off = 0;
  let off2 = 0;
  for (let i = Math.max(0, top - 3); i <= Math.min(n - 1, top + 3); i++) {
    share += both[i];
    near += likely[i];
    mean += both[i] * i;
    second += both[i] * i * i;
    off += aside[i];
    off2 += aside2[i];
  }
  mean /= share;
  off /= share;
  const uOff = Math.sqrt(Math.max(0, off2 / share - off * off));
  const spread = Math.sqrt(Math.max(0.04, second / share - mean * mean));
  const heightMm = heightAt(mean);
  return {
    halfWidthMm: heightMm / hexRatio,
    heightMm,
    uHeightMm: (heightMm * spread) / (mean + 0.5),
    share: near / all,
    ahead: belief.ahead,
    offsetMm: (off / rowsPerRadius) * radiusMm,
    uOffsetMm: Math.hypot(uOff / rowsPerRadius, uAside) * radiusMm,
  };
}
