import type { Estimate } from '../../quantity/estimate';
import { budgetBySource, propagate } from '../../quantity/propagate';
import type { Field } from '../../scale-card/geometry';
import { cameraParameters } from '../2-card-pose/fit-camera';
import type { PosedCard } from '../2-card-pose/pose-from-markers';
import { fitParameters } from './fit-thread';
import { lampShadowMm } from './lamp-shadow';
import { learntShares, spreadMm, type Traces } from './learnt-spread';
import { raggedMm, robustScatter } from './outline-scatter';
import { sharedGeometry } from './shared-geometry';
import { sidesApart } from './sides-apart';
import type { BudgetRow, OtherPeriod, ThreadMeasurement } from './thread-measurement';
import type { ThreadSolution } from './thread-solution';

/** Relative uncertainty of the card's print. An unchecked print is taken to be within ±0.5 %, and
 *  nearer to true more likely: triangular, u = 0.5 %/√6 (JCGM 100:2008, 4.3.9). */
export const uncheckedPrint = 0.005 / Math.sqrt(6);

/** Straight and 1:16 lie 0.0625 apart: beyond a sixth of it a taper is not resolved. */
const unresolvedTaper = 0.01;

/** What no residual shows. Standard uncertainties, from what renders and drawn photos of known geometry
 *  leave over; no bench has been asked. */
const allowances = {
  /** Position of an outline against rim light, tone curve and sharpening, px per side. On black,
   *  metal fades towards its rim. */
  edgeBiasPx: { light: 0.1, dark: 0.25 },
  /** Form of crests, dents, the helix against its section: share of a pitch on diameter; relative
   *  on pitch. */
  formOfPitch: 0.012,
  pitchRelative: 0.0005,
  /** What is seen δ inside the outline lies √(2Rδ) nearer to the camera, and moves along the thread as
   *  the view turns: share of that nearness which the period shows. */
  nearness: 0.15,
  /** Lead-in and run-out that count as crests, on taper. */
  taper: 0.003,
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
  const { fit, resting, zone, mmPerPx, middleS } = solution;
  const k = fitParameters.length;
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
  const of = (i: number, j: number) => fit.covariance[i * k + j];
  const edge = {
    pitch: Math.sqrt(of(0, 0)),
    major: 2 * Math.sqrt(of(2, 2)),
    both: 2 * of(0, 2),
    taper: 2 * Math.sqrt(of(3, 3)),
  };
  // An outline that does not keep to the model has said little about where its crests are.
  const ragged = 2 * raggedMm(fit.scatterMm, pitchMm);
  // Nor has a side most of whose points are elsewhere: then one side carries the diameter, and what
  // the other shows may be a shadow's edge.
  const doubt = Math.max(0, 1 - sideAgreement(solution) / expectedAgreement);
  const biasMm = allowances.edgeBiasPx[field] * (1 + 2 * (1 - fit.flankBalance)) * mmPerPx;
  const bias = 2 * biasMm;
  const rangeMm = solution.frame.origin[2] - card.camera.centre[2];
  const nearer = (allowances.nearness * Math.sqrt(2 * fit.crestRadiusMm * biasMm)) / rangeMm;
  const apart = sidesApart(solution);
  // A shadow or none, in any direction: the root mean square of what it may add.
  const shadowed = field === 'dark' ? 0 : flashFired ? 1 : Math.sqrt(solution.lampShadow);
  const shadowMm = lampShadowMm(resting.heightMm, -card.camera.centre[2]) / Math.SQRT2;
  const hazy = hazySideMm(solution);
  const learnt = learntOf(solution);
  const form = Math.hypot(
    2 * solution.uFormMm,
    ...(learnt
      ? [2 * learnt.radiusMm]
      : [
          allowances.formOfPitch * pitchMm,
          ragged,
          doubt * pitchMm,
          missingSide(solution) * pitchMm,
          hazy,
          apart > 0 ? 0.5 * pitchMm : 0,
        ]),
  );
  const named = budgetBySource(result, sigma, [
    { name: 'focal-length', inputs: Array.from({ length: cameraParameters }, (_, i) => i) },
    { name: 'height', inputs: [iHeight] },
    { name: 'card-bow', inputs: [iSag] },
    { name: 'tilt', inputs: [iTilt] },
    { name: 'print-scale', inputs: [iPrint] },
  ] as const);
  const budget: BudgetRow[] = [
    ...(learnt
      ? // The outline's noise is one of the traces that the allowances weigh.
        [{ source: 'thread-form' as const, pitchMm: learnt.pitchMm, majorDiameterMm: form }]
      : [
          {
            source: 'edge-noise' as const,
            pitchMm: edge.pitch,
            majorDiameterMm: edge.major,
          },
          {
            source: 'edge-bias' as const,
            pitchMm: nearer * pitchMm,
            majorDiameterMm: Math.hypot(bias, shadowed * shadowMm),
          },
          {
            source: 'thread-form' as const,
            pitchMm: Math.hypot(allowances.pitchRelative, apart / 2) * pitchMm,
            majorDiameterMm: form,
          },
        ]),
    ...named.map(({ name, u }) => ({ source: name, pitchMm: u[0], majorDiameterMm: u[1] })),
  ];
  const total = (pick: (row: BudgetRow) => number) => Math.hypot(...budget.map(pick));
  const uPitch = total((row) => row.pitchMm);
  const uMajor = total((row) => row.majorDiameterMm);
  const covariance = edge.both + result.covariance[1];
  const turns = lengthMm / pitchMm;
  const uTaper = Math.hypot(
    edge.taper,
    Math.sqrt(result.covariance[8]),
    allowances.taper,
    // Sides drawn inwards or outwards at one end only.
    ...(learnt
      ? [(2 * learnt.radiusMm) / lengthMm]
      : [bias / lengthMm, ragged / lengthMm, hazy / lengthMm, (0.5 * doubt * pitchMm) / lengthMm]),
  );
  const angle = (2 * fit.halfAngleRad * 180) / Math.PI;
  const uAngle = Math.hypot((2 * Math.sqrt(of(9, 9)) * 180) / Math.PI, 0.5);
  return {
    pitchMm: { value: pitchMm, u: uPitch },
    majorDiameterMm: { value: majorMm, u: uMajor },
    correlation: Math.max(-0.999, Math.min(0.999, covariance / (uPitch * uMajor))),
    taper: uTaper < unresolvedTaper ? { value: 2 * fit.halfTaper, u: uTaper } : null,
    flankAngleDeg: uAngle < 3 && fit.freeAngle ? { value: angle, u: uAngle } : null,
    turns,
    hand: solution.hand,
    starts: ragged === 0 ? 1 : null,
    middleFromEndMm: middleS - firstCrest(solution),
    budget,
    ...(solution.known && { otherPeriods: solution.known.others }),
  };
}

/** What the traces of a seated thread amount to, by the calibration; null beside a rule. */
function learntOf({ known, fit, mmPerPx }: ThreadSolution) {
  if (!known) return null;
  const { pitch, radius } = tracesOf({ known, fit, mmPerPx });
  return {
    pitchMm: Math.hypot(spreadMm(pitch, learntShares.pitch), doubted(known.others) * fit.pitchMm),
    radiusMm: spreadMm(radius, learntShares.radius),
  };
}

/** Spread of the pitch, relative, by other periods, once they are too likely to lie outside a 95 %
 *  interval; less likely ones are left to the matching. */
function doubted(others: readonly OtherPeriod[]): number {
  const all = others.reduce((sum, { share }) => sum + share, 0);
  if (all < 0.05) return 0;
  return Math.sqrt(others.reduce((sum, { ratio, share }) => sum + share * (ratio - 1) ** 2, 0));
}

/** Traces of pitch and crest radius. */
export function tracesOf({
  known,
  fit,
  mmPerPx,
}: Pick<ThreadSolution, 'fit' | 'mmPerPx'> & {
  readonly known: NonNullable<ThreadSolution['known']>;
}): { readonly pitch: Traces; readonly radius: Traces } {
  const u = (k: number) => Math.sqrt(fit.covariance[k * fitParameters.length + k]);
  const traces = (value: number, fitMm: number, of: Estimate): Traces => ({
    fitMm,
    apartMm: Math.max(0, Math.abs(value - of.value) - of.u),
    knownMm: of.u,
    pitchMm: fit.pitchMm,
    pixelMm: mmPerPx,
  });
  return {
    pitch: traces(fit.pitchMm, u(0), known.pitch),
    radius: traces(fit.crestRadiusMm, u(2), known.radius),
  };
}

/** Mean weight of points whose scatter is as stated, less a margin: 0.8 for a Gaussian. */
const expectedAgreement = 0.62;

/** Of a side that shows an edge on few of its cuts, what little is seen may be highlights inside it, the
 *  more so when it does not keep to the thread closely either. 0…1. */
function missingSide({ points, fit, zone, mmPerPx }: ThreadSolution): number {
  const cuts = (zone.toS - zone.fromS) / (0.5 * mmPerPx);
  const left = points.filter(({ side }) => side === 'left').length;
  const seen = Math.min(left, points.length - left) / cuts;
  const loose = (fit.scatterMm / fit.pitchMm - 0.03) / 0.05;
  return Math.max(0, 1 - seen / 0.4) * Math.max(0.3, Math.min(1, loose));
}

/** A side whose points keep far less closely to the thread than the other's, as in shadow, may show
 *  something else: by how much its crests may be elsewhere, mm. */
function hazySideMm({ points, fit }: ThreadSolution): number {
  const [less, more] = (['left', 'right'] as const)
    .map((side) => {
      const own = points.filter((q) => q.side === side);
      return robustScatter(own.map((q) => q.r - fit.modelAt(side, q.s, q.slope)));
    })
    .sort((a, b) => a - b);
  return 3.5 * Math.max(0, more - 2 * less);
}

/** Mean weight of the points on the side that keeps less to the fit. */
function sideAgreement({ points, fit }: ThreadSolution): number {
  const means = (['left', 'right'] as const).map((side) => {
    const own = points.flatMap((q, i) => (q.side === side ? [fit.weights[i]] : []));
    return own.length < 10 ? 0 : own.reduce((a, b) => a + b, 0) / own.length;
  });
  return Math.min(...means);
}

/** Crest positions on the left side lie at crestS + k·p; the first one inside the zone. */
function firstCrest({ fit, zone }: ThreadSolution): number {
  return fit.crestS + Math.ceil((zone.fromS - fit.crestS) / fit.pitchMm) * fit.pitchMm;
}
