import type { Thread } from '../../standards/thread';

/** Frame: x along the axis, r radius, mm. */
export type Point = readonly [x: number, r: number];

/** A few turns of a part in the widest mate: both at the basic pitch diameter, so that flanks touch. */
export interface OverlapShape {
  readonly lengthMm: number;
  readonly fromR: number;
  readonly toR: number;
  /** The part, its crests at the measured diameter. */
  readonly part: readonly Point[];
  readonly mate: readonly Point[];
  /** Flanks between the mate's crest and the part's: what still bears. Each a stroke. */
  readonly bearing: readonly (readonly [Point, Point])[];
  /** Crests of the smallest part within its class. */
  readonly limit: readonly (readonly [Point, Point])[];
}

const turns = 3;
/** Root of an external thread below the pitch line, over the pitch: 0.6134 − 0.3248 at 60° (ISO 68-1 with
 *  the root of ISO 965-1), half of 0.6403 at 55° (ISO 228-1). */
const rootBelow = { 60: 0.2886, 55: 0.3202 } as const;

export function overlapShape(
  thread: Pick<Thread, 'pitchMm' | 'pitchDiameterMm' | 'basicMajorMm' | 'bore' | 'flankAngleDeg'>,
  crestDiameterMm: number,
  limitDiameterMm: number,
): OverlapShape {
  const { pitchMm: p, flankAngleDeg } = thread;
  const pitchR = thread.pitchDiameterMm / 2;
  const rootR = pitchR - rootBelow[flankAngleDeg] * p;
  const crestR = Math.max(crestDiameterMm / 2, rootR + 0.02 * p);
  const limitR = limitDiameterMm / 2;
  const mateCrestR = thread.bore.maxMm / 2;
  const mateRootR = thread.basicMajorMm / 2 + 0.03 * p;
  const slope = Math.tan(((flankAngleDeg / 2) * Math.PI) / 180);
  /** Half of the tooth's width at a radius. */
  const half = (r: number) => Math.max(0, p / 4 - (r - pitchR) * slope);
  const middles = Array.from({ length: turns }, (_, i) => (i + 0.5) * p);
  const tooth = (x: number, low: number, high: number): Point[] => [
    [x - half(low), low],
    [x - half(high), high],
    [x + half(high), high],
    [x + half(low), low],
  ];
  const pad = 0.35 * p;
  const end = turns * p;
  return {
    lengthMm: end,
    fromR: rootR - pad,
    toR: mateRootR + pad,
    part: [
      [0, rootR - pad],
      [0, rootR],
      ...middles.flatMap((x) => tooth(x, rootR, crestR)),
      [end, rootR],
      [end, rootR - pad],
    ],
    mate: [
      [0, mateRootR + pad],
      [0, mateCrestR],
      ...middles.flatMap((x) => tooth(x, mateCrestR, mateRootR)),
      [end, mateCrestR],
      [end, mateRootR + pad],
    ],
    bearing:
      crestR <= mateCrestR
        ? []
        : middles.flatMap((x) =>
            ([-1, 1] as const).map(
              (s) =>
                [
                  [x + s * half(mateCrestR), mateCrestR],
                  [x + s * half(crestR), crestR],
                ] as const,
            ),
          ),
    limit: middles.map(
      (x) =>
        [
          [x - half(limitR), limitR],
          [x + half(limitR), limitR],
        ] as const,
    ),
  };
}
