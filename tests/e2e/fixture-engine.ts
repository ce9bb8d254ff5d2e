import type { ThreadMeasurement } from '../../src/journey/5-measurement/thread-measurement';
import { conclude } from '../../src/journey/7-next-reading/conclude';
import type { Identification, MeasureOptions, OnStage } from '../../src/journey/identification';

/** Development only, for laying out screens before the engine stands. */
const A: [number, number] = [721, 1002];
const B: [number, number] = [723, 901];
const pitchPx = 101 / 8;

const measurement: ThreadMeasurement = {
  pitchMm: { value: 1.4121, u: 0.0021 },
  majorDiameterMm: { value: 14.15, u: 0.04 },
  correlation: 0.8,
  taper: { value: 0.0004, u: 0.003 },
  flankAngleDeg: null,
  noseHalfAngleDeg: { value: 36.6, u: 0.9 },
  turns: 7.6,
  hand: 'right',
  starts: 1,
  middleFromEndMm: 5.4,
  budget: [
    { source: 'edge-noise', pitchMm: 0.0009, majorDiameterMm: 0.01 },
    { source: 'edge-bias', pitchMm: 0, majorDiameterMm: 0.02 },
    { source: 'focal-length', pitchMm: 0.0011, majorDiameterMm: 0.011 },
    { source: 'height', pitchMm: 0.0012, majorDiameterMm: 0.013 },
    { source: 'tilt', pitchMm: 0.0003, majorDiameterMm: 0.001 },
    { source: 'print-scale', pitchMm: 0.0007, majorDiameterMm: 0.03 },
    { source: 'card-bow', pitchMm: 0.0002, majorDiameterMm: 0.002 },
    { source: 'thread-form', pitchMm: 0.0001, majorDiameterMm: 0.008 },
  ],
};

export async function fixtureMeasure(
  signal: AbortSignal,
  options: MeasureOptions,
  onStage: OnStage,
): Promise<Identification> {
  for (const stage of [
    'photo',
    'card-pose',
    'silhouette',
    'thread-signal',
    'measurement',
    'candidates',
  ] as const) {
    onStage(stage);
    await new Promise((done) => setTimeout(done, 120));
    if (signal.aborted) throw signal.reason;
  }
  const n = 200;
  const axialMm = Array.from({ length: n }, (_, i) => (i / (n - 1)) * 11.2);
  const wave = (x: number, phase: number) =>
    6.7 + 0.38 * (0.5 + 0.5 * Math.cos((x / 1.4121 + phase) * 2 * Math.PI));
  const noise = (i: number) => 0.03 * Math.sin(i * 12.9898 + 78.233 * (i % 7));
  const crests = Array.from({ length: 16 }, (_, i) => {
    const side = i % 2 ? ('right' as const) : ('left' as const);
    const k = Math.floor(i / 2) + (side === 'right' ? 0.5 : 0);
    const y = A[1] - k * pitchPx;
    return {
      at: [A[0] + (side === 'left' ? 60 : -60) + k * 0.2, y] as const,
      side,
      axialMm: k * 1.4121,
    };
  });
  return {
    outcome: 'measured',
    reference: {
      kind: 'card',
      pxPerMm: 8.5,
      axisHeightMm: 9.5,
      cameraHeightMm: 300,
      tiltDeg: 5.3,
      field: 'light',
    },
    measurement,
    overlay: {
      widthPx: 1500,
      heightPx: 2000,
      markers: [
        {
          id: 0,
          corners: [
            [1226, 296],
            [1326, 298],
            [1324, 392],
            [1224, 390],
          ],
        },
      ],
      outline: [
        [
          [676, 1040],
          [661, 1005],
          [661, 905],
          [640, 890],
          [640, 800],
        ],
        [
          [768, 1040],
          [782, 1005],
          [782, 905],
          [812, 890],
          [812, 800],
        ],
      ],
      axis: [A, B],
      contactLines: [
        [
          [661, 1002],
          [663, 901],
        ],
        [
          [781, 1002],
          [783, 901],
        ],
      ],
      crests,
    },
    profile: {
      axialMm,
      leftMm: axialMm.map((x, i) => (i > 90 && i < 100 ? null : wave(x, 0) + noise(i))),
      rightMm: axialMm.map((x, i) => wave(x, 0.5) + noise(i + 3)),
      leftFitMm: axialMm.map((x) => wave(x, 0)),
      rightFitMm: axialMm.map((x) => wave(x, 0.5)),
    },
    conclusion: conclude(measurement, options.readings),
    notes: ['print-unchecked', 'no-focal-length'],
    timingsMs: { total: 640 },
  };
}
