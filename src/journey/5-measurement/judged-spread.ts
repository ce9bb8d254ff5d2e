import type { Field } from '../../scale-card/geometry';
import type { LocalSpread } from './local-spread';
import { covarianceOf, type FitParameter } from './outline-parameters';
import { raggedMm, robustScatter } from './outline-scatter';
import { sidesApart } from './sides-apart';
import type { ThreadSolution } from './thread-solution';

/** Standard uncertainties, from what renders and drawn photos of known geometry leave over; no bench has
 *  been asked. */
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
};

/** What the outline alone, beside a rule, leaves to doubt. `shadowMm`: what a lamp's shadow may add to the
 *  diameter; `shadowed`: root of the probability that it does. */
export function judgedSpread(
  solution: ThreadSolution,
  field: Field,
  rangeMm: number,
  shadow: { readonly mm: number; readonly shadowed: number },
): LocalSpread {
  const { fit, zone, mmPerPx } = solution;
  const { pitchMm } = fit;
  const lengthMm = zone.toS - zone.fromS;
  const u = (of: FitParameter) => Math.sqrt(covarianceOf(fit, of));
  // An outline that does not keep to the model has said little about where its crests are.
  const ragged = 2 * raggedMm(fit.scatterMm, pitchMm);
  // Nor has a side most of whose points are elsewhere: then one side carries the diameter, and what
  // the other shows may be a shadow's edge.
  const doubt = Math.max(0, 1 - sideAgreement(solution) / expectedAgreement);
  const biasMm = allowances.edgeBiasPx[field] * (1 + 2 * (1 - fit.flankBalance)) * mmPerPx;
  const nearer = (allowances.nearness * Math.sqrt(2 * fit.crestRadiusMm * biasMm)) / rangeMm;
  const apart = sidesApart(solution);
  const hazy = hazySideMm(solution);
  return {
    rows: [
      { source: 'edge-noise', pitchMm: u('pitch'), majorDiameterMm: 2 * u('radius') },
      {
        source: 'edge-bias',
        pitchMm: nearer * pitchMm,
        majorDiameterMm: Math.hypot(2 * biasMm, shadow.shadowed * shadow.mm),
      },
      {
        source: 'thread-form',
        pitchMm: Math.hypot(allowances.pitchRelative, apart / 2) * pitchMm,
        majorDiameterMm: Math.hypot(
          2 * solution.uFormMm,
          allowances.formOfPitch * pitchMm,
          ragged,
          doubt * pitchMm,
          missingSide(solution) * pitchMm,
          hazy,
          apart > 0 ? 0.5 * pitchMm : 0,
        ),
      },
    ],
    uTaper: Math.hypot(
      2 * u('halfTaper'),
      allowances.taper,
      Math.hypot(2 * biasMm, ragged, hazy, 0.5 * doubt * pitchMm) / lengthMm,
    ),
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
