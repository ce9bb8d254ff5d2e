import { budgetBySource, propagate } from '../../quantity/propagate';
import type { Field } from '../../scale-card/geometry';
import { cameraParameters } from '../2-card-pose/camera-parameters';
import type { PosedCard } from '../2-card-pose/pose-from-markers';
import { lampShadowMm } from './lamp-shadow';
import { learntSpread } from './learnt-spread';
import { partsOf } from './local-spread';
import { covarianceOf } from './outline-parameters';
import { raggedMm } from './outline-scatter';
import { sharedGeometry } from './shared-geometry';
import type { BudgetRow, ThreadMeasurement } from './thread-measurement';
import type { ThreadSolution } from './thread-solution';

/** Relative uncertainty of the card's print. An unchecked print is taken to be within ±0.5 %, and
 *  nearer to true more likely: triangular, u = 0.5 %/√6 (JCGM 100:2008, 4.3.9). */
export const uncheckedPrint = 0.005 / Math.sqrt(6);

/** Straight and 1:16 lie 1/16 apart: beyond a quarter of it, the middle between them lies within 2 u. */
export const unresolvedTaper = 1 / 64;

/** What no residual shows. Standard uncertainties, from what renders and drawn photos of known geometry
 *  leave over; no bench has been asked. */
const allowances = {
  /** Sag of the card under the fitting, mm of height. */
  cardSagMm: 0.08,
  /** Axis out of parallel with the card, rad: burrs, a chamfered flat. */
  axisTiltRad: 0.006,
};

export interface Lighting {
  readonly field: Field;
  readonly flashFired: boolean;
}

/** Joint uncertainty of pitch, diameter and taper: one propagation through the geometry for what all
 *  of the photo shares, added once, and the outline fit's own covariance. */
export function withUncertainty(
  card: PosedCard,
  solution: ThreadSolution,
  { field, flashFired }: Lighting,
  uPrint: number,
): Omit<ThreadMeasurement, 'noseHalfAngleDeg'> {
  const { fit, resting, zone, middleS } = solution;
  const shared = sharedGeometry(card, solution);
  const pitchMm = fit.pitchMm;
  const majorMm = 2 * fit.crestRadiusMm;
  const lengthMm = zone.toS - zone.fromS;
  // Inputs: camera (correlated), height, sag, tilt of the axis, print scale.
  const n = cameraParameters + 4;
  const inputs = new Float64Array(n);
  const sigma = new Float64Array(n * n);
  for (let i = 0; i < cameraParameters; i++) {
    inputs[i] = card.parameters[i];
    for (let j = 0; j < cameraParameters; j++)
      sigma[i * n + j] = card.covariance[i * cameraParameters + j];
  }
  const [iHeight, iSag, iTilt, iPrint] = [0, 1, 2, 3].map((i) => cameraParameters + i);
  sigma[iHeight * n + iHeight] = resting.uMm ** 2;
  sigma[iSag * n + iSag] = allowances.cardSagMm ** 2;
  sigma[iTilt * n + iTilt] = allowances.axisTiltRad ** 2;
  sigma[iPrint * n + iPrint] = uPrint ** 2;
  const result = propagate(
    (x) => {
      const seen = shared(x.subarray(0, cameraParameters), x[iHeight] + x[iSag], x[iTilt]);
      const print = 1 + x[iPrint];
      return [
        pitchMm * seen.length * print,
        majorMm * seen.diameter * print,
        2 * fit.halfTaper + (seen.taper - 2 * fit.halfTaper),
      ];
    },
    inputs,
    sigma,
  );
  const shadowMm = lampShadowMm(resting.heightMm, -card.camera.centre[2]) / Math.SQRT2;
  // On black there are no shadows. Limbs tell one from metal, and their spread says how well; of a flash EXIF says.
  const flash = field === 'light' && flashFired ? 1 : 0;
  const local = learntSpread(solution, flash * shadowMm);
  const named = budgetBySource(result, sigma, [
    { name: 'focal-length', inputs: Array.from({ length: cameraParameters }, (_, i) => i) },
    { name: 'height', inputs: [iHeight] },
    { name: 'card-bow', inputs: [iSag] },
    { name: 'tilt', inputs: [iTilt] },
    { name: 'print-scale', inputs: [iPrint] },
  ] as const);
  const budget: BudgetRow[] = [
    ...local.rows,
    ...named.map(({ name, u }) => ({ source: name, pitchMm: u[0], majorDiameterMm: u[1] })),
  ];
  const total = (pick: (row: BudgetRow) => number) => Math.hypot(...budget.map(pick));
  const uPitch = total((row) => row.pitchMm);
  const uMajor = total((row) => row.majorDiameterMm);
  const besideDiameter = Math.hypot(
    ...named.map(({ u }) => u[1]),
    2 * solution.uFormMm,
    flash * shadowMm,
  );
  const covariance = 2 * covarianceOf(fit, 'pitch', 'radius') + result.covariance[1];
  const turns = lengthMm / pitchMm;
  const besideTaper = Math.sqrt(result.covariance[8]);
  const uTaper = Math.hypot(besideTaper, local.uTaper);
  const angle = (2 * fit.halfAngleRad * 180) / Math.PI;
  const uAngle = Math.hypot((2 * Math.sqrt(covarianceOf(fit, 'halfAngle')) * 180) / Math.PI, 0.5);
  return {
    pitchMm: { value: pitchMm, u: uPitch },
    majorDiameterMm: { value: majorMm, u: uMajor },
    diameterParts: partsOf(local.parts.diameter, besideDiameter),
    correlation: Math.max(-0.999, Math.min(0.999, covariance / (uPitch * uMajor))),
    taper: uTaper < unresolvedTaper ? { value: 2 * fit.halfTaper, u: uTaper } : null,
    taperParts: partsOf(local.parts.taper, besideTaper),
    flankAngleDeg: uAngle < 3 && fit.freeAngle ? { value: angle, u: uAngle } : null,
    turns,
    hand: solution.hand,
    starts: raggedMm(fit.scatterMm, pitchMm) === 0 ? 1 : null,
    middleFromEndMm: middleS - firstCrest(solution),
    budget,
    otherPeriods: solution.known.others,
  };
}

/** Crest positions on the left side lie at crestS + k·p; the first one inside the zone. */
function firstCrest({ fit, zone }: ThreadSolution): number {
  return fit.crestS + Math.ceil((zone.fromS - fit.crestS) / fit.pitchMm) * fit.pitchMm;
}
