import * as portable from '../../quantity/portable-math';
import type { Seat } from './reading-choices';

/** From the axis to the surface of a cone measured across both ends and along its axis. */
export function coneAngleDeg(wideMm: number, narrowMm: number, overMm: number): number {
  return (180 / Math.PI) * portable.atan2((wideMm - narrowMm) / 2, overMm);
}

/** One standard uncertainty of each diameter and of the length along the axis, mm: edges are broken,
 *  and a caliper's rod is held by eye (judgement). */
const acrossU = 0.1;
const alongU = 0.15;

/** One standard uncertainty of the angle, degrees, by the law of propagation (JCGM 100, 5.1.2). */
export function coneAngleU(wideMm: number, narrowMm: number, overMm: number): number {
  const half = (wideMm - narrowMm) / 2;
  const square = half ** 2 + overMm ** 2;
  const fromHalf = (overMm / square) * (acrossU / Math.SQRT2);
  const fromLength = (half / square) * alongU;
  return (180 / Math.PI) * Math.hypot(fromHalf, fromLength);
}

/** Cones that stand out from a male end, by their angle to the axis. */
const outside: Partial<Record<Seat, number>> = { 'cone-30': 30, 'cone-37': 37, 'cone-45': 45 };

/** Half angle of the cone that this seat shows ahead of its thread; null: it shows none. */
export const outwardConeDeg = (seat: Seat): number | null => outside[seat] ?? null;

/** Of an angle that is none of these, per degree. */
export const anyConeAngle = 1 / 90;

/** Density per degree of an angle got by measuring such a cone. */
export function coneAngleDensity(deg: number, u: number, shown: Seat, misread: number): number {
  const made = outside[shown];
  if (made === undefined) return misread * anyConeAngle;
  const z = (deg - made) / u;
  const bell = portable.exp(-0.5 * z * z) / (u * Math.sqrt(2 * Math.PI));
  return (1 - misread) * bell + misread * anyConeAngle;
}
