import { mmPerInch } from '../../quantity/length';
import type { ORing } from './connection';

/** Inside diameter and section in inches, from SAE AS568 (from memory; nominal values). */
const as568: Record<string, readonly [number, number]> = {
  '011': [0.301, 0.07],
  '012': [0.364, 0.07],
  '014': [0.489, 0.07],
  '016': [0.614, 0.07],
  '018': [0.739, 0.07],
  '021': [0.926, 0.07],
  '025': [1.176, 0.07],
  '029': [1.489, 0.07],
  '210': [0.734, 0.139],
  '214': [0.984, 0.139],
  '219': [1.296, 0.139],
  '222': [1.484, 0.139],
  '225': [1.859, 0.139],
  '228': [2.234, 0.139],
  '232': [2.734, 0.139],
  '237': [3.359, 0.139],
  '902': [0.239, 0.064],
  '903': [0.301, 0.064],
  '904': [0.351, 0.072],
  '905': [0.414, 0.072],
  '906': [0.468, 0.078],
  '908': [0.644, 0.087],
  '910': [0.755, 0.097],
  '912': [0.924, 0.116],
  '914': [1.047, 0.116],
  '916': [1.171, 0.116],
  '920': [1.475, 0.118],
  '924': [1.72, 0.118],
  '932': [2.337, 0.118],
};

export function as568Ring(dash: string, hardnessShoreA: number): ORing {
  const size = as568[dash];
  if (!size) throw new Error(`No AS568-${dash} in the table`);
  return {
    designation: `AS568-${dash}`,
    innerDiameterMm: size[0] * mmPerInch,
    sectionMm: size[1] * mmPerInch,
    hardnessShoreA,
  };
}

/** A ring that its connection standard gives in millimetres. */
export function metricRing(innerDiameterMm: number, sectionMm: number, hardness: number): ORing {
  return {
    designation: `${innerDiameterMm} x ${sectionMm}`,
    innerDiameterMm,
    sectionMm,
    hardnessShoreA: hardness,
  };
}
