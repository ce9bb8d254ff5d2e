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
  let top = 1;
  let all = 0;
  for (let i = 0; i < n; i++) {
    if (both[i] > both[top]) top = i;
    all += both[i];
  }
  let share = 0;
  let mean = 0;
  let second = 0;
  let off = 0;
  let off2 = 0;
  for (let i = Math.max(0, top - 3); i <= Math.min(n - 1, top + 3); i++) {
    share += both[i];
    mean += both[i] * i;
    second += both[i] * i * i;
    off += aside[i];
    off2 += aside2[i];
  }
  mean /= share;
  off /= share;
  const uOff = Math.sqrt(Math.max(0, off2 / share - off * off));
  const spread = Math.sqrt(Math.max(0.04, second / share - mean * mean));
  const mm = ((mean + 0.5) / rowsPerRadius) * radiusMm;
  const high = -camera.centre[2];
  const slope = (hexRatio * mm) / (high + frame.origin[2]);
  const heightMm = (slope * high) / (1 + slope);
  return {
    halfWidthMm: heightMm / hexRatio,
    heightMm,
    uHeightMm: (heightMm * spread) / (mean + 0.5),
    share: share / all,
    ahead: belief.ahead,
    offsetMm: (off / rowsPerRadius) * radiusMm,
    uOffsetMm: Math.hypot(uOff / rowsPerRadius, uAside) * radiusMm,
  };
}
