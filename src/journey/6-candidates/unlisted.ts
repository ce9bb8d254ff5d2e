import * as portable from '../../quantity/portable-math';
import { endLikelihood } from './end-seen';
import {
  flankLikelihood,
  looksLikelihood,
  type MeasuredThread,
  type PhotoShape,
  taperLikelihood,
  windingLikelihood,
} from './photo-likelihood';
import { unlistedShare, unlistedWithStandardPitch } from './priors';
import {
  blades,
  crestFormChance,
  flankChance,
  misreadLengthDensity,
  misreadShare,
  taperChance,
} from './reading-errors';
import {
  gaugeFactor,
  isLength,
  lengthOnPart,
  type ReadingModel,
  turnsFactor,
  useFactor,
} from './reading-likelihood';

/** 'None of these': a thread of any pitch and diameter, even over the octaves, or of a standard
 *  pitch on any diameter. Its mass stands against every listed thread, so that a measurement that
 *  fits none does not go to its nearest neighbour. */
export interface Unlisted {
  readonly weight: number;
}

const pitchOctaves = portable.log(6.5 / 0.3);
const standardPitches = blades.filter((p) => p >= 0.5 && p <= 6.4);
const offsets = [-5, -4, -3, -2.4, -1.8, -1.2, -0.6, 0, 0.6, 1.2, 1.8, 2.4, 3, 4, 5];
/** Shares among unlisted threads (judgement). */
export const unlistedParts = { taper: 0.1, whitworth: 0.3, female: 0.4 } as const;

export function weighUnlisted(
  photo: MeasuredThread | null,
  shape: PhotoShape | null,
  models: readonly ReadingModel[],
): Unlisted {
  let factor = unlistedShare;
  if (photo) {
    factor *= overForms(photo);
    factor *= windingLikelihood(photo, false);
    factor *= endLikelihood({ photo, readings: models.map(({ reading }) => reading) }, null);
  }
  for (const model of models) factor *= otherFactor(model);
  const ends = photo ? ([photo.end ?? 'male'] as const) : (['male', 'female'] as const);
  let weight = 0;
  for (const end of ends) {
    const endPrior = shape ? 1 : end === 'female' ? unlistedParts.female : 1 - unlistedParts.female;
    let here = endPrior * factor;
    for (const model of models) {
      if (isLength(model.reading) && model.lengthEnd !== end) {
        here *= misreadShare * misreadLengthDensity(model.reading.mm);
      }
    }
    weight += here * overPitches(shape, models, end);
  }
  return { weight };
}

/** Of taper and flanks, over the forms that an unlisted thread may have. */
function overForms(photo: MeasuredThread): number {
  let sum = 0;
  for (const flankAngleDeg of [55, 60] as const) {
    const ofForm = flankAngleDeg === 55 ? unlistedParts.whitworth : 1 - unlistedParts.whitworth;
    const flank = flankLikelihood(photo.flankAngleDeg, flankAngleDeg);
    for (const taper of [0, 1 / 16]) {
      const ofTaper = taper > 0 ? unlistedParts.taper : 1 - unlistedParts.taper;
      const looks = looksLikelihood(photo, {
        system: taper > 0 ? 'NPT' : 'UN',
        flankAngleDeg,
        taper,
      });
      sum += ofForm * ofTaper * flank * taperLikelihood(photo, taper) * looks;
    }
  }
  return sum;
}

function overPitches(
  shape: PhotoShape | null,
  models: readonly ReadingModel[],
  end: 'male' | 'female',
): number {
  const diameters = diameterNodes(shape, models, end);
  const at = (pitchMm: number) => {
    let sum = 0;
    for (const [mm, weight] of diameters) {
      let term = weight * (shape ? shape.likelihood(pitchMm, mm) : 1);
      for (const model of models) term *= lengthOnPart(model, end, mm);
      sum += term;
    }
    for (const model of models) sum *= gaugeFactor(model, pitchMm) * turnsFactor(model, pitchMm);
    return sum;
  };
  const standard =
    standardPitches.reduce((sum, p) => sum + (isNear(p, shape) ? at(p) : 0), 0) /
    standardPitches.length;
  let anyPitch = 0;
  if (shape) {
    const { value, u } = shape.pitchMm;
    for (const [pitchMm, weight] of nodes(value, u)) anyPitch += at(pitchMm) * weight;
  } else {
    // Without a photo, only a reading speaks of pitch: a sweep over the range will do.
    const steps = models.some(speaksOfPitch) ? 96 : 1;
    for (let i = 0; i < steps; i++) {
      anyPitch += at(0.3 * portable.exp((pitchOctaves * (i + 0.5)) / steps)) / steps;
    }
  }
  return unlistedWithStandardPitch * standard + (1 - unlistedWithStandardPitch) * anyPitch;
}

const speaksOfPitch = ({ reading: { kind } }: ReadingModel) =>
  kind === 'pitch-gauge' || kind === 'turns-over';

function isNear(pitchMm: number, shape: PhotoShape | null): boolean {
  return (
    !shape ||
    shape.pitchesMm.some(
      (possible) =>
        (Math.abs(pitchMm - possible) * shape.pitchMm.value) / possible < 40 * shape.pitchMm.u,
    )
  );
}

/** Quadrature points around a value with weights that include the prior density d(ln x)/range. */
function nodes(value: number, u: number): [mm: number, weight: number][] {
  return offsets.flatMap((offset, i): [number, number][] => {
    const mm = value + offset * u;
    const low = offsets[i - 1] ?? offset;
    const high = offsets[i + 1] ?? offset;
    return mm > 0 ? [[mm, (((high - low) / 2) * u) / (mm * pitchOctaves)]] : [];
  });
}

/** Diameters where any evidence has weight, with the prior of ln D even over 3 to 170 mm. */
function diameterNodes(
  shape: PhotoShape | null,
  models: readonly ReadingModel[],
  end: 'male' | 'female',
): [mm: number, weight: number][] {
  const around: [number, number][] = [];
  for (const u of shape?.diameterUsMm ?? []) around.push([shape!.majorDiameterMm.value, u]);
  for (const model of models) {
    if (isLength(model.reading) && model.lengthEnd === end) {
      around.push([model.reading.mm, Math.max(0.06, 0.4 * model.stepMm)]);
    }
  }
  if (around.length === 0) return [[20, 1]];
  const points = around
    .flatMap(([value, u]) => offsets.map((offset) => value + offset * u))
    .filter((mm) => mm > 0)
    .sort((a, b) => a - b);
  return points.map((mm, i) => {
    const low = points[i - 1] ?? mm;
    const high = points[i + 1] ?? mm;
    return [mm, ((high - low) / 2) * misreadLengthDensity(mm)];
  });
}

function otherFactor(model: ReadingModel): number {
  const { reading } = model;
  switch (reading.kind) {
    case 'taper':
      return (
        model.scale *
        (unlistedParts.taper * taperChance(reading.taper, 1 / 16, model.misread) +
          (1 - unlistedParts.taper) * taperChance(reading.taper, 0, model.misread))
      );
    case 'flank':
      return (
        model.scale *
        (unlistedParts.whitworth * flankChance(reading.flankDeg, 55, model.misread) +
          (1 - unlistedParts.whitworth) * flankChance(reading.flankDeg, 60, model.misread))
      );
    case 'crest-form':
      return (
        model.scale *
        (unlistedParts.whitworth * crestFormChance(reading.crest, 55, model.misread) +
          (1 - unlistedParts.whitworth) * crestFormChance(reading.crest, 60, model.misread))
      );
    case 'seat':
    case 'seat-gauge':
    case 'cone-size':
    case 'end-type':
    case 'marking':
    case 'tube-od':
    case 'nose-od':
      return model.scale * useFactor(model, null);
    case 'hex':
      return model.scale * misreadLengthDensity(reading.mm);
    case 'flange-thickness':
    case 'bolt-spacing':
      return model.scale * misreadShare * misreadLengthDensity(reading.mm);
    case 'pitch-gauge':
    case 'turns-over':
      return 1;
    default:
      return model.scale;
  }
}
