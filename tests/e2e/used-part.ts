import { conclude } from '../../src/journey/7-next-reading/conclude';
import { stripJpeg } from '../../src/journey/8-sheet/jpeg-strip';
import { newSheet, newShot } from '../../src/journey/8-sheet/new-sheet';
import { sheetToFile } from '../../src/journey/8-sheet/sheet-file';
import { defaultOptions } from '../../src/journey/identification';
import type { CrestHeight } from '../../src/journey/wear/crest-heights';
import { findThread } from '../../src/standards/threads';
import { encodeJpeg } from '../handover/node-jpeg';
import { exampleMeasurement, exampleOverlay, examplePicture } from '../journey/8-sheet/example';

export interface UsedPhoto {
  readonly majorMm: number;
  readonly u: number;
  /** Turns that stand lower than the rest on the left side, counted from the free end. */
  readonly shortTurns?: readonly number[];
}

/** A sheet file of a used 3/4-16 UNF: measured numbers are given, so that what the page says of them does not
 *  hang on what a photo of the day is worth. */
export async function usedPart(photos: readonly UsedPhoto[]) {
  const thread = findThread('3/4-16 UNF')!;
  const jpeg = stripJpeg(await encodeJpeg(examplePicture(640, 480), 85));
  if (!jpeg.ok) throw new Error(jpeg.reason);
  const shots = photos.map(({ majorMm, u, shortTurns = [] }) => {
    const measurement = {
      ...exampleMeasurement,
      pitchMm: { value: thread.pitchMm, u: 0.002 },
      majorDiameterMm: { value: majorMm, u },
      budget: [{ source: 'edge-noise', pitchMm: 0.002, majorDiameterMm: u }] as const,
    };
    const crests = exampleOverlay.crests.map(({ side, axialMm }, i): CrestHeight => {
      const turn = 1 + Math.floor(i / 2);
      const short = side === 'left' && shortTurns.includes(turn);
      return {
        ...{ side, turn, atMm: axialMm, u: u / 2, uOwnMm: Math.min(0.01, u / 2) },
        heightMm: majorMm / 2 - (short ? 0.15 : 0),
        shortMm: short ? 0.15 : null,
      };
    });
    return newShot({
      photo: jpeg.value,
      camera: { orientation: 1, focal35Mm: 26, flashFired: false },
      measured: {
        reference: {
          ...{ kind: 'card', pxPerMm: 12, axisHeightMm: 12, cameraHeightMm: 290, tiltDeg: 5 },
          field: 'light',
        },
        measurement,
        overlay: exampleOverlay,
        profile: { axialMm: [], leftMm: [], rightMm: [], leftFitMm: [], rightFitMm: [] },
        crests,
        otherEnds: [],
        notes: [],
      },
      options: defaultOptions,
      barsName: null,
    });
  });
  const { measurement } = shots[0]!;
  const conclusion = conclude(measurement, [], { atHand: [] });
  const sheet = newSheet({
    title: 'Boom cylinder, rod side',
    ...{ shots, measurement, readings: [], conclusion },
    appVersion: '0.0.0',
    now: new Date('2026-03-01T10:00:00Z'),
    wear: {
      thread: thread.designation,
      class: null,
      readings: {
        ...{ seal: null, firstTurns: null, byHand: null, goRing: null, notGoRing: null },
        caliper: { end: null, middle: null, last: null },
        ringTurns: null,
      },
    },
  });
  const file = sheetToFile({ sheet, photos: shots.map(() => jpeg.value.bytes) });
  if (!file.ok) throw new Error(file.reason);
  return {
    name: 'used.crestwise',
    mimeType: 'application/octet-stream',
    buffer: Buffer.from(file.value),
  };
}
