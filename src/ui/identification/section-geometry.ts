import type { Thread } from '../../standards/thread';
import { femaleShape } from './female-section';
import { flaredTube } from './inverted-flare';
import type { Nose, SectionDimensions, SectionPoint, SectionShape } from './section';

/** Depth of an external thread: 17/24·H for 60° (ISO 68-1, ASME B1.1), 0.6403 p for 55° (ISO 228-1,
 *  ISO 7-1), 0.8 p for NPT (ASME B1.20.1). */
export function depthMm({
  system,
  flankAngleDeg,
  taper,
  pitchMm,
}: Pick<Thread, 'system' | 'flankAngleDeg' | 'taper' | 'pitchMm'>): number {
  if (flankAngleDeg === 55) return 0.6403 * pitchMm;
  return (system === 'NPT' && taper > 0 ? 0.8 : (17 / 24) * 0.866) * pitchMm;
}

const degrees = Math.PI / 180;

/** An end in half section. Thread, seat angle, tube and O-ring are the tables'; the number
 *  of turns shown, the hex and the wall are only there to look like a fitting. */
export function sectionShape(d: SectionDimensions): SectionShape {
  return d.end === 'female' ? femaleShape(d) : maleShape(d);
}

function maleShape(d: SectionDimensions): SectionShape {
  const radius = d.majorMm / 2;
  const depth = d.depthMm;
  const minor = radius - depth;
  const plainBore = Math.min(d.tubeOdMm ? d.tubeOdMm * 0.4 : minor * 0.6, minor * 0.68);
  const turns = Math.max(4, Math.min(8, Math.round((0.75 * d.majorMm) / d.pitchMm)));
  const threadLength = turns * d.pitchMm;
  const nose = noseOf(d, minor, plainBore);
  const bore = nose.boreMm ?? plainBore;
  const from = nose.lengthMm;
  const to = from + threadLength;
  const relief =
    d.seat === 'o-ring-at-hex'
      ? Math.max(1.2 * d.pitchMm, (d.oRing?.sectionMm ?? 2) * 1.1)
      : d.pitchMm;
  const hexAt = to + relief;
  const length = hexAt + 0.42 * d.majorMm;
  const outer = radius * 1.36;
  const grow = (x: number) => (d.taper / 2) * (x - from);

  const top: SectionPoint[] = [...nose.outside];
  for (let i = 0; i < turns; i++) {
    const x = from + i * d.pitchMm;
    const crest = radius + grow(x) - (d.taper ? (d.taper / 2) * threadLength * 0.5 : 0);
    const root = crest - depth;
    top.push(
      [x, root],
      [x + 0.375 * d.pitchMm, crest],
      [x + 0.5 * d.pitchMm, crest],
      [x + 0.875 * d.pitchMm, root],
    );
  }
  const neck = minor - 0.05 * d.pitchMm;
  top.push([to, neck], [hexAt, neck], [hexAt, outer], [length, outer], [length, bore]);

  const seal = [...nose.seal];
  const rings = [...nose.rings];
  if (d.seat === 'o-ring-at-hex') {
    const section = (d.oRing?.sectionMm ?? relief * 0.9) / 2;
    rings.push({ x: hexAt - section, r: neck + section, radius: section });
    seal.push([hexAt, neck], [hexAt, Math.min(outer, radius + 2 * section)]);
  }
  if (d.seat === 'flat-washer-face') seal.push([hexAt, radius], [hexAt, outer]);
  if (d.sealsOnThread) {
    for (const [x, r] of top) if (x >= from && x < to) seal.push([x, r]);
  }
  return {
    lengthMm: length,
    outerMm: outer,
    cut: [...top, ...nose.inside],
    insert: nose.tube ? [...nose.tube.front, [length, bore], [length, nose.tube.inside]] : [],
    outside: [[top[0][0], 0], ...top.slice(0, -1), [length, 0]],
    seal,
    rings,
    threadFromMm: from,
    threadToMm: to,
    minorMm: minor * 2,
    boreMm: (nose.tube?.inside ?? bore) * 2,
    mouthMm: (nose.inside.at(-1)?.[1] ?? bore) * 2,
  };
}

function noseOf(d: SectionDimensions, minor: number, bore: number): Nose {
  const chamfer = 0.4 * d.pitchMm;
  const base = minor - 0.1 * d.pitchMm;
  const plain: Nose = {
    lengthMm: chamfer,
    outside: [
      [0, base - chamfer],
      [chamfer, base],
    ],
    inside: [[0, bore]],
    seal: [],
    rings: [],
  };
  switch (d.seat) {
    case 'cone-37':
    case 'cone-45':
    case 'cone-30': {
      const angle = Number(d.seat.slice(5)) * degrees;
      const tip = Math.max(bore + 0.12 * minor, minor * 0.62);
      const cone = (base - tip) / Math.tan(angle);
      const land = 0.6 * d.pitchMm;
      return {
        lengthMm: cone + land,
        outside: [
          [0, tip],
          [cone, base],
          [cone + land, base],
        ],
        inside: [[0, bore]],
        seal: [
          [0, tip],
          [cone, base],
        ],
        rings: [],
      };
    }
    case 'cone-24':
    case 'cone-60': {
      const half = (Number(d.seat.slice(5)) / 2) * degrees;
      const throat =
        d.seat === 'cone-24' && d.tubeOdMm ? Math.min(d.tubeOdMm / 2, minor * 0.8) : bore;
      const mouth = Math.min(
        minor * 0.93,
        throat + (d.seat === 'cone-24' ? 0.12 * minor : 0.3 * minor),
      );
      const depth = (mouth - throat) / Math.tan(half);
      const seal: SectionPoint[] = [
        [0, mouth],
        [depth, throat],
      ];
      const step: SectionPoint[] =
        throat > bore
          ? [
              [depth + 0.5 * minor, bore],
              [depth + 0.5 * minor, throat],
            ]
          : [];
      return { ...plain, inside: [...step, [depth, throat], [0, mouth]], seal };
    }
    case 'flat-face-o-ring': {
      const section = d.oRing?.sectionMm ?? 1.78;
      const mean = d.oRing
        ? d.oRing.insideMm / 2 + section / 2
        : Math.min(base - section, (base + bore) / 2);
      const half = section * 0.68;
      const deep = section * 0.74;
      return {
        ...plain,
        inside: [
          [0, bore],
          [0, mean - half],
          [deep, mean - half],
          [deep, mean + half],
          [0, mean + half],
        ],
        seal: [
          [0, bore],
          [0, mean - half],
          [Number.NaN, Number.NaN],
          [0, mean + half],
          [0, base - chamfer],
        ],
        rings: [{ x: section / 2 - section * 0.24, r: mean, radius: section / 2 }],
      };
    }
    case 'cone-inverted':
      return flaredTube(d, base - chamfer, plain);
    default:
      return plain;
  }
}
