import * as portable from '../../quantity/portable-math';
import type { OutlinePoint, Side } from '../4-thread-signal/outline-edges';
import { index, type OutlineParameters } from './outline-parameters';
import { contourAt, toothContour } from './tooth';

export interface OutlineSetting {
  readonly middleS: number;
  readonly pitchMm: number;
  readonly radiusMm: number;
  readonly blurMm: number;
  /** +1 or −1: which way the helix climbs, as the sign of its slope on the left side. */
  readonly handed: 1 | -1;
  readonly rangeMm: number;
  /** Of the crests' corners, pitches. */
  readonly rounding: number;
}

/** The outline of one thread, seen on both sides: radius as a function of place and parameters. */
export interface OutlineModel {
  /** (t ± λ), whose square times R/p is the slant of tooth.ts. */
  readonly tilt: (side: Side, slope: number) => number;
  /** Contours of the tooth at a few slants between which `toothAt` interpolates. */
  readonly contoursOf: (p: OutlineParameters) => readonly Float64Array[];
  readonly toothAt: (contours: readonly Float64Array[], tilt: number, phase: number) => number;
  /** Position along the axis turned by the parameter `turn`. */
  readonly along: (p: OutlineParameters, side: Side, s: number) => number;
  readonly phaseOf: (p: OutlineParameters, side: Side, s: number) => number;
  readonly lineAt: (p: OutlineParameters, side: Side, s: number) => number;
  readonly at: (p: OutlineParameters) => (side: Side, s: number, slope: number) => number;
}

const slantNodes = 5;

export function outlineModel(
  points: readonly OutlinePoint[],
  { middleS, pitchMm, radiusMm, blurMm, handed, rangeMm, rounding }: OutlineSetting,
): OutlineModel {
  const apart = 0.5 + (handed * portable.asin(radiusMm / rangeMm)) / Math.PI;
  const lead = pitchMm / (2 * Math.PI * radiusMm);
  const tilt = (side: Side, slope: number) =>
    Math.abs(slope + (side === 'left' ? 1 : -1) * handed * lead);
  const tilts = points.map((q) => tilt(q.side, q.slope));
  // Of no outline any slant will do: that of a view from straight above.
  const low = points.length > 0 ? Math.min(...tilts) : lead;
  const high = Math.max(...tilts, low + 0.01);
  const contoursOf = (p: OutlineParameters) =>
    Array.from({ length: slantNodes }, (_, k) => {
      const t = low + ((high - low) * k) / (slantNodes - 1);
      return toothContour(
        {
          flat: Math.max(rounding > 0 ? 0 : 0.01, Math.min(0.6, p[index.flat])),
          rounding,
          depth: Math.max(0.2, Math.min(0.95, p[index.depth])),
          blur: (blurMm * portable.exp(p[index.lnBlur])) / p[index.pitch],
          halfAngleRad: Math.max(0.2, Math.min(0.9, p[index.halfAngle])),
        },
        Math.max(1e-6, (p[index.radius] / p[index.pitch]) * t * t),
      );
    });
  const toothAt = (contours: readonly Float64Array[], tilted: number, phase: number) => {
    const at = ((tilted - low) / (high - low)) * (slantNodes - 1);
    const k = Math.max(0, Math.min(slantNodes - 2, Math.floor(at)));
    const f = Math.max(0, Math.min(1, at - k));
    return contourAt(contours[k], phase) * (1 - f) + contourAt(contours[k + 1], phase) * f;
  };
  // What lies to the left of a turned axis moves on along it, what lies to its right moves back.
  const along = (p: OutlineParameters, side: Side, s: number) =>
    s + (side === 'left' ? p[index.turn] : -p[index.turn]) * p[index.radius];
  const phaseOf = (p: OutlineParameters, side: Side, s: number) =>
    (along(p, side, s) - p[index.crestS]) / p[index.pitch] + (side === 'left' ? 0 : apart);
  const lineAt = (p: OutlineParameters, side: Side, s: number) => {
    const t = s - middleS;
    return (
      p[index.radius] +
      p[index.halfTaper] * t +
      (side === 'left' ? 1 : -1) * (p[index.offset] + p[index.turn] * t)
    );
  };
  return {
    tilt,
    contoursOf,
    toothAt,
    along,
    phaseOf,
    lineAt,
    at: (p) => {
      const contours = contoursOf(p);
      return (side, s, slope) =>
        lineAt(p, side, s) +
        p[index.pitch] * toothAt(contours, tilt(side, slope), phaseOf(p, side, s));
    },
  };
}
