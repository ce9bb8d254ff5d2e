import { runOutMm, type Thread } from '../../standards/thread';
import { atPlace, type DiameterDensity } from './diameter-density';
import { endLikelihood } from './end-seen';
import { headLikelihood } from './flange-heads';
import { type Hypothesis, hypotheses, type Use } from './hypotheses';
import {
  flankLikelihood,
  looksLikelihood,
  type MeasuredThread,
  type PhotoShape,
  photoShape,
  taperLikelihood,
  windingLikelihood,
} from './photo-likelihood';
import type { PriorOptions } from './priors';
import type { Reading } from './reading';
import {
  lengthOnPart,
  type ReadingModel,
  readingModels,
  sameLengthOnPart,
  speaksOfUse,
  threadFactor,
  useFactor,
} from './reading-likelihood';
import { type Unlisted, weighUnlisted } from './unlisted';

export interface Evidence {
  readonly photo: MeasuredThread | null;
  readonly readings: readonly Reading[];
}

export interface WeighedUse {
  readonly use: Use;
  readonly likelihood: number;
  readonly weight: number;
}

export interface WeighedThread {
  readonly hypothesis: Hypothesis;
  /** prior × likelihood, summed over its uses. */
  readonly weight: number;
  readonly uses: readonly WeighedUse[];
}

/** Unnormalised: divide by `total`. */
export interface Weighed {
  readonly threads: readonly WeighedThread[];
  /** Ends without a thread. */
  readonly heads: readonly WeighedUse[];
  readonly unlisted: Unlisted;
  readonly total: number;
}

/** Threads further than this from the measured pitch, both in its standard uncertainties and as a
 *  share of it, weigh less than 1e-8 of a thread that fits. */
const far = { pitchU: 40, share: 0.08 } as const;

/** Bayes' rule over all listed threads, their uses, and 'none of these'.
 *  `misread`: index of a reading to be taken as misread, to see how much better that explains. */
export function weigh(
  evidence: Evidence,
  options: PriorOptions,
  misread: number | null = null,
): Weighed {
  const shape = evidence.photo ? photoShape(evidence.photo) : null;
  const turns = evidence.photo?.turns ?? 6;
  const models = readingModels(evidence.readings, turns, misread);
  const lengths = models.filter((m) => m.lengthEnd !== null);
  const ofUse = models.filter(speaksOfUse);
  const threads: WeighedThread[] = [];
  let total = 0;
  const listed = hypotheses(options);
  for (const hypothesis of listed.threads) {
    const likelihood = threadLikelihood(hypothesis, evidence.photo, shape, models, lengths);
    if (likelihood <= 0) continue;
    let weight = 0;
    // Of a thread that no listed connection uses, nothing is known of its ends.
    const otherwise = hypothesis.uses.length > 1 ? 'other' : null;
    const uses = hypothesis.uses.map((use) => {
      let own = likelihood;
      own *= endLikelihood(evidence, use.connection ?? otherwise);
      for (const model of ofUse) own *= useFactor(model, use.connection);
      weight += own * use.prior;
      return { use, likelihood: own, weight: own * use.prior };
    });
    total += weight;
    threads.push({ hypothesis, weight, uses });
  }
  const heads = evidence.photo
    ? []
    : listed.heads.map((use) => {
        const likelihood = headLikelihood(use.connection, models);
        return { use, likelihood, weight: likelihood * use.prior };
      });
  for (const { weight } of heads) total += weight;
  const unlisted = weighUnlisted(evidence.photo, shape, models);
  threads.sort((x, y) => y.weight - x.weight);
  return { threads, heads, unlisted, total: total + unlisted.weight };
}

function threadLikelihood(
  { thread, end, density }: Hypothesis,
  photo: MeasuredThread | null,
  shape: PhotoShape | null,
  models: readonly ReadingModel[],
  lengths: readonly ReadingModel[],
): number {
  let factor = 1;
  if (!shape || !photo) {
    for (const model of models) factor *= threadFactor(model, thread, end);
    const place = densityAtPlace(thread, end, density, null);
    return factor * overDensity(place, lengths, end, null, thread.pitchMm);
  }
  if (end !== (photo.end ?? 'male')) return 0;
  if (isFar(thread.pitchMm, shape)) return 0;
  for (const model of models) factor *= threadFactor(model, thread, end);
  factor *= windingLikelihood(photo, true);
  factor *= taperLikelihood(photo, thread.taper);
  factor *= flankLikelihood(photo.flankAngleDeg, thread.flankAngleDeg);
  factor *= looksLikelihood(photo, thread);
  if (thread.taper === 0) {
    return factor * overDensity(density, lengths, end, shape, thread.pitchMm);
  }
  // On a taper the caliper's place and the photo's differ: two separate looks.
  const seen = densityAtPlace(thread, end, density, photo.middleFromEndMm);
  const gauged = densityAtPlace(thread, end, density, null);
  return (
    factor *
    overDensity(seen, [], end, shape, thread.pitchMm) *
    overDensity(gauged, lengths, end, null, thread.pitchMm)
  );
}

function isFar(pitchMm: number, { pitchMm: { value, u }, pitchesMm }: PhotoShape): boolean {
  return pitchesMm.every((possible) => {
    const off = (Math.abs(pitchMm - possible) * value) / possible;
    return off > far.pitchU * u && off > far.share * value;
  });
}

function overDensity(
  density: DiameterDensity,
  lengths: readonly ReadingModel[],
  end: 'male' | 'female',
  shape: PhotoShape | null,
  pitchMm: number,
): number {
  const { firstMm, stepMm, weights } = density;
  const lastMm = firstMm + stepMm * (weights.length - 1);
  // Most threads lie far from what was read: one number for all their crests.
  let factor = 1;
  const near = lengths.filter((model) => {
    const same = sameLengthOnPart(model, end, firstMm, lastMm);
    if (same === null) return true;
    factor *= same;
    return false;
  });
  if (!shape && near.length === 0) return factor;
  let sum = 0;
  for (let k = 0; k < weights.length; k++) {
    const w = weights[k]!;
    if (w < 1e-9) continue;
    const diameterMm = firstMm + k * stepMm;
    let term = shape ? w * shape.likelihood(pitchMm, diameterMm) : w;
    for (const model of near) term *= lengthOnPart(model, end, diameterMm);
    sum += term;
  }
  return factor * sum;
}

const placeCache = new Map<string, DiameterDensity>();

/** Crest density of a male taper where it is measured: at `middleMm` from the end's first crest,
 *  or, when that is unknown, anywhere in the middle of a thread of usual length. */
export function densityAtPlace(
  thread: Thread,
  end: 'male' | 'female',
  density: DiameterDensity,
  middleMm: number | null,
): DiameterDensity {
  if (thread.taperPlanes === null || end === 'female') return density;
  if (middleMm !== null) {
    // The first crest stands within a pitch of the end.
    const slack = thread.pitchMm;
    return atPlace(density, thread.taper, Math.max(0, middleMm - 0.3 * slack), middleMm + slack);
  }
  const cached = placeCache.get(thread.designation);
  if (cached) return cached;
  const length = thread.taperPlanes.usefulLengthMm + runOutMm(thread);
  const place = atPlace(density, thread.taper, 0.2 * length, 0.8 * length);
  placeCache.set(thread.designation, place);
  return place;
}

/** Crest diameters of one hypothesis after the evidence, weights summing to 1. */
export function diameterPosterior(hypothesis: Hypothesis, evidence: Evidence): DiameterDensity {
  const { thread, end } = hypothesis;
  const place = densityAtPlace(thread, end, hypothesis.density, null);
  const shape = evidence.photo && thread.taper === 0 ? photoShape(evidence.photo) : null;
  const models = readingModels(evidence.readings, 6, null).filter((m) => m.lengthEnd === end);
  const weights = place.weights.slice();
  let sum = 0;
  for (let k = 0; k < weights.length; k++) {
    const mm = place.firstMm + k * place.stepMm;
    if (shape) weights[k]! *= shape.likelihood(thread.pitchMm, mm);
    for (const model of models) weights[k]! *= lengthOnPart(model, end, mm);
    sum += weights[k]!;
  }
  if (sum > 0) for (let k = 0; k < weights.length; k++) weights[k]! /= sum;
  return { firstMm: place.firstMm, stepMm: place.stepMm, weights };
}
