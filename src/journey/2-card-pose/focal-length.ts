import * as portable from '../../quantity/portable-math';
import { diagonal35Mm } from '../1-photo/photo';
import { isWholeFrame } from '../frame-shape';
import { cameraFrom, type LensPrior } from './camera-parameters';
import type { CameraFit } from './fit-camera';

/** Stated whole millimetres and rounded marketing values are good to about 3 % (design, section 3): taken as
 *  bounds, any place between them as likely (JCGM 100:2008, 4.3.7). */
const uLnExif = 0.03 / Math.sqrt(3);
/** Phones from 13 to 120 mm equivalent, most near 26 or 50. */
const typicalF35Mm = 38;
const uLnTypical = 0.5;
/** What phones shoot near things with: the main lens mostly, its middle at half the angle of view, a tele lens, or
 *  something else (common practice; shares by judgement). Equivalent focal lengths, their spread as of ln f. */
const usualLenses = [
  { f35Mm: 25.5, uLn: 0.07, share: 0.65 },
  { f35Mm: 50, uLn: 0.06, share: 0.15 },
  { f35Mm: 74, uLn: 0.1, share: 0.15 },
  { f35Mm: typicalF35Mm, uLn: uLnTypical, share: 0.05 },
] as const;
/** At which distance people hold a phone: 15 to 60 cm for most (common practice). */
const uLnDistance = 0.45;
/** How often a crop or zoom has changed the angle of view behind EXIF's back: seldom (common practice:
 *  taken for 2 %), so that only a card which clearly says otherwise is believed. */
const wrongStatements = 0.02;

/** Of the lens's centre from the middle of a whole frame, over its long side. */
const uCentre = 0.003;

/** The frame that a photo was cut from, px: 4:3, as most phones shoot, one side kept; and how far its middle may
 *  lie from the photo's, rectangular (JCGM 100:2008, 4.3.7). */
function wholeFrame(width: number, height: number): { diagonalPx: number; uCentrePx: number } {
  const [long, short] = [Math.max(width, height), Math.min(width, height)];
  const ratio = long / short;
  const whole = { diagonalPx: Math.hypot(long, short), uCentrePx: uCentre * long };
  if (isWholeFrame(width, height)) return whole;
  const [a, b] = ratio > 4 / 3 ? [long, 0.75 * long] : [(4 / 3) * short, short];
  const lost = a - long + (b - short);
  return {
    diagonalPx: Math.hypot(a, b),
    uCentrePx: Math.hypot(uCentre * a, lost / 2 / Math.sqrt(3)),
  };
}

/** One lens that the photo may have been taken with, and how likely it was before the photo is looked at. */
export interface PossibleLens {
  readonly prior: LensPrior;
  readonly share: number;
}

/** What is believed of a camera's focal length before its photo is looked at: as EXIF states it, and from
 *  what phones have and how far from the reference they are held. The photo's scale ties the two of
 *  these together: f = px per mm · distance. `usual`: lens by lens. */
export function lensPriors(
  { width, height }: { readonly width: number; readonly height: number },
  f35Mm: number | null,
  pxPerMm: number,
  usualDistanceMm: number,
): {
  readonly stated: LensPrior | null;
  readonly open: LensPrior;
  readonly usual: readonly PossibleLens[];
} {
  const { diagonalPx, uCentrePx } = wholeFrame(width, height);
  const lens = (fPx: number, uLnF: number): LensPrior => ({
    fPx,
    uLnF,
    cx: (width - 1) / 2,
    cy: (height - 1) / 2,
    uCentrePx,
    uK1: 0.05,
  });
  const perF35 = diagonalPx / diagonal35Mm;
  const lnHeld = portable.log(pxPerMm * usualDistanceMm);
  const held = (f35Mm: number, uLn: number): LensPrior => {
    const [a, b] = [1 / uLn ** 2, 1 / uLnDistance ** 2];
    const lnF = (a * portable.log(perF35 * f35Mm) + b * lnHeld) / (a + b);
    return lens(portable.exp(lnF), 1 / Math.sqrt(a + b));
  };
  return {
    stated: f35Mm === null ? null : lens(perF35 * f35Mm, uLnExif),
    open: held(typicalF35Mm, uLnTypical),
    usual: usualLenses.map(({ f35Mm: usual, uLn, share }) => {
      const u = Math.hypot(uLn, uLnDistance);
      const z = (portable.log(perF35 * usual) - lnHeld) / u;
      return { prior: held(usual, uLn), share: (share / u) * portable.exp(-0.5 * z * z) };
    }),
  };
}

/** Whether the card, asked alone, might find another focal length than the one stated. Were the fit
 *  linear, its own answer would lie from the stated one by z = Δ/√(u² − v), Δ and v the shift and
 *  variance with the statement (J. Hausman, Econometrica 46, 1978). At z = 2 the statement still has
 *  its weight, most photos are far from it, and the fit without it is the longest of all. */
export function mayContradict({ parameters, covariance }: CameraFit): boolean {
  const variance = Math.max(0, uLnExif * uLnExif - covariance[0]);
  return Math.abs(parameters[0]) > 2 * Math.sqrt(variance);
}

/** Probability that the focal length is the stated one and not any other, from the evidence of two fits at
 *  one scale, one told of it and one not (Laplace: MacKay, Information Theory, 2003, ch. 28, from
 *  memory). All that differs between them is what is believed of ln f. */
export function weightOfStatement(told: CameraFit, alone: CameraFit): number {
  const share = ({ covariance, prior }: CameraFit) => Math.sqrt(covariance[0]) / prior.uLnF;
  const odds =
    (((wrongStatements / (1 - wrongStatements)) * share(alone)) / share(told)) *
    portable.exp(Math.min(told.cost - alone.cost, 700));
  return 1 / (1 + odds);
}

/** The likeliest of the lenses that a photo may have been taken with, by what was believed of each before and the
 *  evidence of a fit with it, all at one scale; its covariance is about it, of what all of them find possible. */
export function overLenses(
  lenses: readonly PossibleLens[],
  fitWith: (prior: LensPrior) => CameraFit,
): CameraFit {
  const fits = lenses.map(({ prior }) => fitWith(prior));
  const least = Math.min(...fits.map(({ cost }) => cost));
  const weights = fits.map(
    ({ cost, covariance, prior }, i) =>
      ((lenses[i].share * Math.sqrt(covariance[0])) / prior.uLnF) * portable.exp(least - cost),
  );
  const all = weights.reduce((sum, w) => sum + w, 0);
  const top = fits[weights.indexOf(Math.max(...weights))];
  const n = top.parameters.length;
  const covariance = new Float64Array(n * n);
  fits.forEach((fit, k) => {
    const apart = fit.parameters.map((v, i) => v - top.parameters[i]);
    apart[0] += portable.log(fit.prior.fPx / top.prior.fPx);
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++)
        covariance[i * n + j] +=
          (weights[k] / all) * (fit.covariance[i * n + j] + apart[i] * apart[j]);
  });
  return {
    ...top,
    covariance,
    lenses: fits.map((fit, i) => ({ fit, share: weights[i] / all })),
  };
}

/** The likelier of two fits; where neither is nine times as likely as the other, their mean and the
 *  covariance about it, differing opinions included, with the likelier one's print, bow and residuals.
 *  Beyond that a mean would be drawn from the right place by a far one that hardly counts. */
export function mixed(told: CameraFit, alone: CameraFit, weight: number): CameraFit {
  if (weight > 0.9) return told;
  if (weight < 0.1) return alone;
  const likelier = weight >= 0.5 ? told : alone;
  const n = told.parameters.length;
  const other = alone.parameters.slice();
  other[0] += portable.log(alone.prior.fPx / told.prior.fPx);
  const parameters = told.parameters.map((v, i) => weight * v + (1 - weight) * other[i]);
  const apart = told.parameters.map((v, i) => v - other[i]);
  const covariance = told.covariance.map(
    (v, i) =>
      weight * v +
      (1 - weight) * alone.covariance[i] +
      weight * (1 - weight) * apart[Math.floor(i / n)] * apart[i % n],
  );
  return {
    ...likelier,
    prior: told.prior,
    parameters,
    covariance,
    camera: cameraFrom(parameters, told.prior),
  };
}
