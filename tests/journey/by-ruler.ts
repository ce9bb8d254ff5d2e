import { nodeDecoders } from '../../src/cli/node-decoders';
import { loadNodeVision } from '../../src/cli/node-vision';
import {
  defaultOptions,
  type Identification,
  type Measured,
  type MeasureOptions,
} from '../../src/journey/identification';
import { identifyPhoto } from '../../src/journey/identify';
import { makePng } from './1-photo/make-files';
import { type DrawnScrew, drawScrew } from './drawn-screw';

export type Ruler = NonNullable<MeasureOptions['ruler']>;

export const vision = await loadNodeVision();
export const never = new AbortController().signal;

export const identifyByRuler = (
  bytes: Uint8Array,
  ruler: Ruler,
  corrections: MeasureOptions['corrections'] = null,
): Promise<Identification> =>
  identifyPhoto(
    never,
    bytes,
    { ...defaultOptions, ruler, corrections },
    { vision, decoders: nodeDecoders },
    () => {},
  );

export const drawn = (screw: DrawnScrew) =>
  makePng(drawScrew(screw, (image, px) => vision.blur(image, px)));

/** Errors of pitch and diameter over their u, and of their ratio, relative. */
export function errorsOf({ measurement }: Measured, pitchMm: number, majorMm: number) {
  const { pitchMm: pitch, majorDiameterMm: major } = measurement;
  return {
    pitch: (pitch.value - pitchMm) / pitch.u,
    major: (major.value - majorMm) / major.u,
    ratio: ((pitch.value / major.value) * majorMm) / pitchMm - 1,
    relative: Math.max(Math.abs(pitch.value / pitchMm - 1), Math.abs(major.value / majorMm - 1)),
    uPitch: pitch.u / pitch.value,
    uMajor: major.u / major.value,
  };
}
