import { raisedCone } from './inverted-flare';
import type { SectionDimensions, SectionPoint, SectionShape } from './section';

const degrees = Math.PI / 180;

/** A female end in half section, mouth to the left: a port, or a swivel nut with the sleeve that
 *  carries the seat. Thread, seat angle and tube are the tables'; depth and walls are only there
 *  to look like a fitting. */
export function femaleShape(d: SectionDimensions): SectionShape {
  const major = d.majorMm / 2;
  const minor = d.minorInternalMm / 2;
  const { pitchMm: pitch } = d;
  const turns = Math.max(5, Math.min(9, Math.round((0.8 * d.majorMm) / pitch)));
  const from = 0.5 * pitch;
  const to = from + turns * pitch;
  const back = to + 1.2 * pitch;
  const outer = major * 1.42;
  const sleeve = sleeveOf(d, minor, from + turns * pitch * 0.35, back);
  const wall = 0.16 * d.majorMm;
  const length = back + (sleeve ? wall : 0.35 * d.majorMm);
  const throat = sleeve
    ? sleeve.neck + 0.02 * d.majorMm
    : Math.min((d.tubeOdMm ?? minor) * 0.42, minor * 0.68);
  const grow = (x: number) => -(d.taper / 2) * (x - from);

  // From the far end back to the mouth, along the inside.
  const raised = d.seat === 'cone-inverted' ? raisedCone(throat, minor, back) : null;
  const inside: SectionPoint[] = [
    [length, throat],
    ...(raised ?? [[back, throat] satisfies SectionPoint]),
    [back, major],
    [to, major],
  ];
  for (let i = turns - 1; i >= 0; i--) {
    const x = from + i * pitch;
    const root = major + grow(x);
    const crest = minor + grow(x);
    inside.push(
      [x + 0.875 * pitch, root],
      [x + 0.5 * pitch, crest],
      [x + 0.25 * pitch, crest],
      [x, root],
    );
  }
  const mouth = major + 0.35 * pitch;
  const ring = d.oRing && d.seat === 'o-ring-at-hex' ? d.oRing.sectionMm : 0;
  // The chamfer that takes the ring of a stud end.
  if (ring > 0) inside.push([ring * 0.5, major], [0, major + ring * 0.75]);
  else inside.push([0, mouth]);

  const seal: SectionPoint[] = [...(sleeve?.seal ?? raised?.slice(1) ?? [])];
  if (d.seat === 'flat-washer-face')
    seal.push([0, mouth + 0.1 * major], [0, Math.min(outer, major * 1.3)]);
  if (ring > 0) seal.push([ring * 0.5, major], [0, major + ring * 0.75]);
  if (d.sealsOnThread) seal.push(...inside.filter(([x]) => x >= from && x < to));

  return {
    lengthMm: sleeve ? sleeve.endMm : length,
    outerMm: outer,
    cut: [[0, outer], [length, outer], ...inside],
    insert: sleeve ? sleeve.outline : [],
    outside: [
      [0, 0],
      [0, outer],
      [length, outer],
      [length, sleeve ? sleeve.neck : 0],
      ...(sleeve
        ? ([
            [sleeve.endMm, sleeve.neck],
            [sleeve.endMm, 0],
          ] as SectionPoint[])
        : []),
    ],
    seal,
    rings: [],
    threadFromMm: from,
    threadToMm: from,
    minorMm: d.minorInternalMm,
    boreMm: (sleeve ? sleeve.bore : throat) * 2,
    mouthMm: outer * 2,
  };
}

interface Sleeve {
  readonly outline: readonly SectionPoint[];
  readonly seal: readonly SectionPoint[];
  readonly neck: number;
  readonly bore: number;
  readonly endMm: number;
}

/** Swivel ends seal on a sleeve held by the nut; ports and taper threads have none. */
function sleeveOf(d: SectionDimensions, minor: number, at: number, back: number): Sleeve | null {
  const cone = /^cone-(\d+)$/.exec(d.seat)?.[1];
  const flat = d.seat === 'flat-face-o-ring';
  if (!cone && !flat) return null;
  const head = minor * 0.93;
  const neck = Math.min((d.tubeOdMm ?? minor) / 2, minor * 0.72);
  const bore = neck * 0.72;
  const endMm = back + 0.5 * d.majorMm;
  const tail: SectionPoint[] = [
    [back, head],
    [back, neck],
    [endMm, neck],
    [endMm, bore],
  ];
  const made = (nose: readonly SectionPoint[], seal: readonly SectionPoint[]): Sleeve => ({
    outline: [...nose, ...tail],
    seal,
    neck,
    bore,
    endMm,
  });
  if (flat || !cone)
    return made(
      [
        [at, bore],
        [at, head],
      ],
      [
        [at, bore],
        [at, head],
      ],
    );
  // 24° and 60° are whole angles, the flares and the 30° seat are to the axis.
  const half = (cone === '24' || cone === '60' ? Number(cone) / 2 : Number(cone)) * degrees;
  if (d.coneOutwards) {
    const tip = Math.max(bore * 1.15, head - (back - at) * 0.8 * Math.tan(half));
    const base: SectionPoint = [at + (head - tip) / Math.tan(half), head];
    return made([[at, bore], [at, tip], base], [[at, tip], base]);
  }
  const mouth = Math.min(head * 0.94, bore + (back - at) * 0.7 * Math.tan(half));
  const bottom: SectionPoint = [at + (mouth - bore) / Math.tan(half), bore];
  return made([bottom, [at, mouth], [at, head]], [bottom, [at, mouth]]);
}
