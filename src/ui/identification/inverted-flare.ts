import type { Nose, SectionDimensions, SectionPoint } from './section';

/** Of the inverted flare's seat, to the axis (SAE J512). */
const seatRad = (42 * Math.PI) / 180;

/** A nut on its tube, whose flare lies in the countersunk end of the nut and opens to the raised cone
 *  of the port. */
export function flaredTube(d: SectionDimensions, rim: number, plain: Nose): Nose {
  const outer = Math.min((d.tubeOdMm ?? rim) / 2, rim * 0.76);
  const wall = outer * 0.22;
  const lip = rim * 0.96;
  const slope = Math.tan(seatRad);
  const deep = (lip - outer) / slope;
  const inside = outer - wall;
  const inner: SectionPoint = [(lip - wall - inside) / slope, inside];
  return {
    ...plain,
    inside: [
      [deep, outer],
      [0, lip],
    ],
    seal: [[0, lip - wall], inner],
    boreMm: outer,
    tube: { inside, front: [inner, [0, lip - wall], [0, lip], [deep, outer]] },
  };
}

/** Stands up at the bottom of an inverted-flare port, towards the mouth: bore, tip, foot. */
export function raisedCone(bore: number, minor: number, back: number): SectionPoint[] {
  const tip = Math.min(bore * 1.12, minor * 0.6);
  const foot = minor * 0.84;
  const high = (foot - tip) / Math.tan(seatRad);
  return [
    [back - high, bore],
    [back - high, tip],
    [back, foot],
  ];
}
