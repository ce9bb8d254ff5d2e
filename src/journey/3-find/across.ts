import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';
import type { PosedCamera, Vec3 } from '../2-card-pose/camera';
import { type AxisFrame, onAxisPlane } from '../4-thread-signal/axis-frame';
import { straighten } from '../4-thread-signal/straightened';

/** How strongly each line along an axis ripples, by its distance from the axis. */
export interface RippleProfile {
  readonly fromR: number;
  readonly stepMm: number;
  /** Amplitude of the wave and its double, logarithm of light. */
  readonly amplitude: Float64Array;
}

const darkLight = 0.01;

/** Amplitude of a wave of period `periodMm`, and of the wave twice as fine, along lines at −reach…reach. */
export function rippleProfile(
  grey: GreyImage,
  camera: PosedCamera,
  frame: AxisFrame,
  zone: { readonly fromS: number; readonly toS: number },
  periodMm: number,
  reachMm: number,
  stepMm: number,
  inside: (point: Vec3) => boolean,
): RippleProfile {
  const view = straighten(grey, camera, frame, { ...zone, fromR: -reachMm, toR: reachMm }, stepMm);
  const { columns, rows, values } = view;
  const waves = [1, 2].map((k) => {
    const c = new Float64Array(columns);
    const s = new Float64Array(columns);
    for (let i = 0; i < columns; i++) {
      const w = portable.sin((Math.PI * (i + 0.5)) / columns) ** 2;
      const a = (2 * Math.PI * k * i * stepMm) / periodMm;
      c[i] = w * portable.cos(a);
      s[i] = w * portable.sin(a);
    }
    return { c, s };
  });
  const scale = 255;
  const amplitude = new Float64Array(rows);
  const row = new Float64Array(columns);
  const middleS = (zone.fromS + zone.toS) / 2;
  for (let j = 0; j < rows; j++) {
    if (!inside(onAxisPlane(frame, middleS, view.fromR + j * stepMm))) continue;
    let mean = 0;
    for (let i = 0; i < columns; i++) {
      row[i] = portable.log(values[j * columns + i] / scale + darkLight);
      mean += row[i];
    }
    mean /= columns;
    if (!Number.isFinite(mean)) continue;
    let sum = 0;
    for (const { c, s } of waves) {
      let a = 0;
      let b = 0;
      for (let i = 0; i < columns; i++) {
        a += c[i] * (row[i] - mean);
        b += s[i] * (row[i] - mean);
      }
      sum += a * a + b * b;
    }
    amplitude[j] = (4 * Math.sqrt(sum)) / columns;
  }
  return { fromR: view.fromR, stepMm, amplitude };
}

/** Over this multiple of what lies far outside, and this share of what is usual inside, a line ripples. */
const overFloor = 4;
const ofUsual = 0.12;
/** Dark stretches of a thread that are bridged, as a share of the width so far. */
const bridged = 0.15;

/** Outermost lines that ripple, to the right (negative) and left of the axis, mm. */
export function rippleReach({ amplitude, fromR, stepMm }: RippleProfile): [number, number] | null {
  const n = amplitude.length;
  const sorted = [...amplitude].sort((a, b) => a - b);
  const floor = sorted[Math.floor(0.15 * n)];
  let mass = 0;
  for (let j = 0; j < n; j++) mass += Math.max(0, amplitude[j] - 2 * floor);
  if (!(mass > 0)) return null;
  let sum = 0;
  let low = 0;
  let high = n - 1;
  for (let j = 0; j < n; j++) {
    const before = sum;
    sum += Math.max(0, amplitude[j] - 2 * floor);
    if (before < 0.25 * mass && sum >= 0.25 * mass) low = j;
    if (before < 0.75 * mass && sum >= 0.75 * mass) high = j;
  }
  const inside = [...amplitude.slice(low, high + 1)].sort((a, b) => a - b);
  const level = Math.max(overFloor * floor, ofUsual * inside[inside.length >> 1]);
  const walk = (from: number, hop: 1 | -1): number => {
    let reached = from;
    for (let j = from; j >= 0 && j < n; j += hop) {
      const width = Math.abs(reached - (low + high) / 2) * 2;
      if (Math.abs(j - reached) > Math.max(3, bridged * width)) break;
      if (amplitude[j] > level) reached = j;
    }
    return reached;
  };
  return [fromR + stepMm * walk(low, -1), fromR + stepMm * walk(high, 1)];
}
