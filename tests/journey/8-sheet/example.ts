import type { ThreadMeasurement } from '../../../src/journey/5-measurement/thread-measurement';
import { stripJpeg } from '../../../src/journey/8-sheet/jpeg-strip';
import { newSheet, newShot } from '../../../src/journey/8-sheet/new-sheet';
import type { Sheet } from '../../../src/journey/8-sheet/sheet-schema';
import { defaultOptions } from '../../../src/journey/identification';
import type { Overlay } from '../../../src/journey/overlay';
import { encodeJpeg, type Picture } from '../../handover/node-jpeg';

/** A picture with structure, so that recompression has something to spoil. Seeded. */
const faceSeal = {
  family: 'ISO 8434-3',
  size: '-6',
  end: 'male',
  form: null,
  endTypes: ['fixed'],
} as const;

export function examplePicture(width: number, height: number, seed = 1): Picture {
  const data = new Uint8ClampedArray(width * height * 4);
  let state = seed;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      const noise = (state >>> 24) / 16;
      const wave = 40 * Math.sin(x / 9 + Math.sin(y / 31)) * Math.cos(y / 17);
      const i = 4 * (y * width + x);
      data[i] = 128 + wave + noise;
      data[i + 1] = 120 + wave / 2 + noise;
      data[i + 2] = 110 - wave / 3 + noise;
      data[i + 3] = 255;
    }
  return { width, height, data };
}

export const exampleMeasurement: ThreadMeasurement = {
  pitchMm: { value: 1.58741, u: 0.0031 },
  majorDiameterMm: { value: 17.213, u: 0.052 },
  correlation: 0.83,
  taper: { value: 0.0004, u: 0.002 },
  flankAngleDeg: { value: 60.2, u: 0.9 },
  noseHalfAngleDeg: null,
  turns: 7.4,
  hand: 'right',
  starts: 1,
  middleFromEndMm: 5.9,
  budget: [
    { source: 'edge-noise', pitchMm: 0.0008, majorDiameterMm: 0.006 },
    { source: 'height', pitchMm: 0.003, majorDiameterMm: 0.05 },
  ],
};

export const exampleOverlay: Overlay = {
  widthPx: 640,
  heightPx: 480,
  markers: [
    {
      id: 3,
      corners: [
        [10, 10],
        [30, 10],
        [30, 30],
        [10, 30],
      ],
    },
  ],
  reference: [],
  outline: [
    [
      [200.25, 150.5],
      [320.125, 150.75],
      [440, 151],
    ],
  ],
  axis: [
    [200, 240],
    [440, 243],
  ],
  contactLines: [
    [
      [200, 150],
      [440, 151],
    ],
    [
      [200, 330],
      [440, 334],
    ],
  ],
  crests: Array.from({ length: 14 }, (_, i) => ({
    at: [205 + 16 * i, i % 2 ? 150 : 331] as const,
    side: i % 2 ? ('left' as const) : ('right' as const),
    axialMm: 0.8 * i,
  })),
};

/** A sheet of a scenario of our own, with one photo that carries EXIF, GPS and a maker's note. */
export async function exampleSheet(): Promise<{
  sheet: Sheet;
  photos: Uint8Array[];
  camera: Uint8Array;
}> {
  const camera = withMetadata(await encodeJpeg(examplePicture(640, 480), 85));
  const photo = stripJpeg(camera);
  if (!photo.ok) throw new Error(photo.reason);
  const shot = newShot({
    photo: photo.value,
    camera: { orientation: 1, focal35Mm: 26, flashFired: false },
    measured: {
      reference: {
        kind: 'card',
        pxPerMm: 9.4,
        axisHeightMm: 12.1,
        cameraHeightMm: 290,
        tiltDeg: 6.2,
        field: 'dark',
      },
      measurement: exampleMeasurement,
      overlay: exampleOverlay,
      profile: {
        axialMm: [0, 0.1, 0.2],
        leftMm: [8.6, null, 8.1],
        rightMm: [8.2, 8.4, 8.6],
        leftFitMm: [8.6, 8.4, 8.1],
        rightFitMm: [8.2, 8.4, 8.6],
      },
      crests: [],
      otherEnds: [],
      notes: ['few-markers'],
    },
    options: { ...defaultOptions, bars: { horizontalMm: 149.8, verticalMm: 100.1, uMm: 0.1 } },
    barsName: 'Office printer',
  });
  const sheet = newSheet({
    title: 'Boom cylinder, rod side',
    shots: [shot],
    measurement: exampleMeasurement,
    readings: [{ kind: 'pitch-gauge', pitchMm: 1.5875, text: '16tpi' }],
    conclusion: {
      threads: [
        {
          system: 'UN',
          designation: '11/16-16 UN',
          basicMajorMm: 17.4625,
          pitchMm: 1.5875,
          probability: 0.991,
        },
        { system: null, probability: 0.009 },
      ],
      connections: [{ ...faceSeal, probability: 0.93 }],
      decision: {
        state: 'settled',
        thread: '11/16-16 UN',
        connection: faceSeal,
        ask: null,
        missing: null,
      },
      contradictions: [{ source: 'reading', index: 0, text: '16tpi' }],
      end: 'male',
      hand: 'right',
      nearest: null,
    },
    appVersion: '0.1.0',
    now: new Date('2026-03-04T05:06:07Z'),
  });
  return { sheet, photos: [photo.value.bytes], camera };
}

export const secrets = [
  'GPSLatitude 48.2082N',
  'Owner of this phone',
  'IMG_20260304.jpg',
  'http://ns.adobe.com/xap/1.0/',
  'a remark in a comment',
  'ICC_PROFILE',
  'motion video after the end',
];

/** Segments a phone writes around the picture: EXIF, XMP, colour profile, comment, trailer. */
export function withMetadata(jpeg: Uint8Array): Uint8Array {
  const text = new TextEncoder();
  const segment = (code: number, content: string) => {
    const body = text.encode(content);
    const length = body.length + 2;
    return [0xff, code, length >> 8, length & 0xff, ...body];
  };
  return Uint8Array.from([
    0xff,
    0xd8,
    ...segment(0xe1, `Exif\0\0MM\0*\0\0\0\u0008 ${secrets[0]} ${secrets[1]} ${secrets[2]}`),
    ...segment(0xe1, `${secrets[3]}\0<x:xmpmeta/>`),
    ...segment(0xe2, `${secrets[5]}\0\u0001\u0001`),
    ...segment(0xfe, secrets[4]!),
    ...jpeg.subarray(2),
    ...text.encode(secrets[6]),
  ]);
}
