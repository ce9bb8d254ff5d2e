import type { MeasuredThread } from '../../../src/journey/6-candidates/photo-likelihood';
import type { Random } from '../../../src/quantity/random';
import type { Part } from './part';

/** How good a photo is: relative standard uncertainties of pitch alone and of the common scale,
 *  and of the crest edges, mm. */
export interface Quality {
  readonly name: string;
  readonly pitch: number;
  readonly scale: number;
  readonly edgeMm: number;
}

export const qualities: readonly Quality[] = [
  { name: 'good', pitch: 0.001, scale: 0.002, edgeMm: 0.02 },
  { name: 'usual', pitch: 0.003, scale: 0.003, edgeMm: 0.03 },
  { name: 'poor scale', pitch: 0.002, scale: 0.012, edgeMm: 0.04 },
  { name: 'poor', pitch: 0.006, scale: 0.008, edgeMm: 0.08 },
];

/** `slipped`: off by three times as much as it says. */
export type SimulatedPhoto = MeasuredThread & { readonly slipped: boolean };

/** What stages 1 to 5 would say of the part: errors as stated, but for one in a hundred, which is
 *  off by three times as much without saying so. */
export function photograph(part: Part, quality: Quality, random: Random): SimulatedPhoto {
  const slip = random.uniform() < 0.01 ? 3 : 1;
  const error = (u: number) => slip * u * random.normal();
  const scale = error(quality.scale);
  const from = random.between(0.3, 1.2) * part.pitchMm;
  const to = part.lengthMm - random.between(0.5, 2.5) * part.pitchMm;
  const middle = (from + to) / 2;
  const crest = part.crestAtEndMm + part.taper * middle;
  const turns = Math.max(3, (to - from) / part.pitchMm);
  const pitchMm = part.pitchMm * (1 + scale + error(quality.pitch));
  const majorMm = crest * (1 + scale) + error(quality.edgeMm);
  const uPitch = part.pitchMm * Math.hypot(quality.scale, quality.pitch);
  const uMajor = Math.hypot(crest * quality.scale, quality.edgeMm);
  const covariance = part.pitchMm * crest * quality.scale ** 2;
  const uTaper = Math.max(0.002, (1.5 * quality.edgeMm) / (to - from));
  const coneShown = part.noseDeg !== null && random.uniform() < 0.5;
  return {
    slipped: slip > 1,
    pitchMm: { value: pitchMm, u: uPitch },
    majorDiameterMm: { value: majorMm, u: uMajor },
    correlation: covariance / (uPitch * uMajor),
    taper: { value: part.taper + error(uTaper), u: uTaper },
    flankAngleDeg: random.uniform() < 0.4 ? { value: part.flankDeg + error(0.9), u: 0.9 } : null,
    noseHalfAngleDeg: coneShown ? { value: part.noseDeg! + error(1), u: 1 } : null,
    turns,
    middleFromEndMm: random.uniform() < 0.6 ? middle - random.uniform() * part.pitchMm : null,
  };
}
