import type { GreyImage } from '../../src/vision/grey-image';

/** A screw beside a steel rule, drawn from geometry alone: nothing of the measuring code is used.
 *  Not a photograph. */
export interface DrawnScrew {
  readonly pitchMm: number;
  readonly majorMm: number;
  readonly threadMm: number;
  readonly headMm: { readonly across: number; readonly length: number };
  readonly pxPerMm: number;
  /** Of the axis over the rule's face. */
  readonly axisHeightMm: number;
  /** Of the camera from the rule's face; it looks straight down on the middle of the screw. */
  readonly distanceMm: number;
  /** Of the axis against the rule, rad. */
  readonly angleRad: number;
  /** From the rule's edge to the axis, mm. */
  readonly gapMm: number;
  readonly table: number;
  readonly metal: number;
  readonly divisionMm: number;
  readonly seed: number;
}

/** M8 on a light table, 20 px per mm. */
export const m8: DrawnScrew = {
  pitchMm: 1.25,
  majorMm: 7.9,
  threadMm: 25,
  headMm: { across: 14, length: 6 },
  pxPerMm: 20,
  axisHeightMm: 3.5,
  distanceMm: 250,
  angleRad: 0,
  gapMm: 11,
  table: 215,
  metal: 150,
  divisionMm: 1,
  seed: 3,
};

const widthMm = 90;
const heightMm = 62;
/** Upper edge of the rule, mm from the top; the rule runs across the whole picture. */
const ruleEdgeMm = 40;
const fine = 3;

/** Two graduations, full-size pixels, and their distance. */
export function marksOf({ pxPerMm, divisionMm }: DrawnScrew) {
  const n = Math.floor(70 / divisionMm);
  const at = (k: number): [number, number] => [
    (10 + k * divisionMm) * pxPerMm - 0.5,
    (ruleEdgeMm + 1.2) * pxPerMm - 0.5,
  ];
  return { from: at(0), to: at(n), mm: n * divisionMm };
}

export function drawScrew(screw: DrawnScrew, blur: (image: GreyImage, px: number) => GreyImage) {
  const scale = screw.pxPerMm * fine;
  const width = Math.round(widthMm * scale);
  const height = Math.round(heightMm * scale);
  const data = new Float32Array(width * height);
  paintGround(data, width, height, scale, screw);
  paintScrew(data, width, height, scale, screw);
  return noisy(blur(reduced(data, width, height), 0.8), screw.seed);
}

/** The rule, and the table beside it. What a column holds is the same in all rows but for how far its
 *  graduations reach. */
function paintGround(
  data: Float32Array,
  width: number,
  height: number,
  scale: number,
  { table, divisionMm }: DrawnScrew,
) {
  const columns = Array.from({ length: width }, (_, i) => {
    const x = (i + 0.5) / scale;
    const k = Math.round((x - 10) / divisionMm);
    const halves = ((x - 10) * 2) / divisionMm;
    return {
      table: table * (1 - 0.15 * (x / widthMm)),
      steel: 170 + 12 * Math.sin(x / 9),
      tickMm:
        Math.abs(x - 10 - k * divisionMm) >= 0.09 ? 0 : k % 10 === 0 ? 7 : k % 5 === 0 ? 5 : 3,
      half: Math.abs(halves - Math.round(halves)) < 0.16,
    };
  });
  for (let j = 0; j < height; j++) {
    const y = (j + 0.5) / scale;
    const from = y - ruleEdgeMm;
    const beside = y < ruleEdgeMm || y > ruleEdgeMm + 20;
    for (let i = 0; i < width; i++) {
      const column = columns[i]!;
      const marked = from < column.tickMm || (column.half && from > 17);
      data[j * width + i] = beside ? column.table : marked ? 35 : column.steel;
    }
  }
}

/** Radius of a single-start 60° thread with flats of p/8 at the crest and p/4 at the root (ISO 68-1). */
function radiusAt(s: number, phi: number, { pitchMm: p, majorMm }: DrawnScrew): number {
  const turn = s / p - phi / (2 * Math.PI);
  const off = Math.abs(turn - Math.round(turn));
  const depth = (off - 1 / 16) * p * Math.sqrt(3);
  return majorMm / 2 - Math.max(0, Math.min(0.6134 * p, depth));
}

/** Every point of the upper half, nearer ones larger; the nearest at a place is seen. */
function paintScrew(
  data: Float32Array,
  width: number,
  height: number,
  scale: number,
  screw: DrawnScrew,
) {
  const { threadMm, headMm, angleRad, gapMm, metal, axisHeightMm, distanceMm } = screw;
  const [c, s] = [Math.cos(angleRad), Math.sin(angleRad)];
  const total = threadMm + headMm.length;
  const [x0, y0] = [widthMm / 2, ruleEdgeMm - gapMm];
  const depth = new Float32Array(width * height).fill(Number.NEGATIVE_INFINITY);
  const step = 0.7 / scale;
  const aroundHead = directions(headMm.across / 2, step);
  const aroundThread = directions(screw.majorMm / 2, step);
  for (let at = 0; at < total; at += step) {
    const onHead = at > threadMm;
    for (const { phi, cos, sin } of onHead ? aroundHead : aroundThread) {
      const r = onHead ? headMm.across / 2 : radiusAt(at, phi, screw);
      const top = r * cos;
      const larger = distanceMm / (distanceMm - axisHeightMm - top);
      const along = (at - total / 2) * larger;
      const across = r * sin * larger;
      const i = Math.round((x0 + along * c - across * s) * scale - 0.5);
      const j = Math.round((y0 + along * s + across * c) * scale - 0.5);
      if (i < 0 || j < 0 || i >= width || j >= height || top <= depth[j * width + i]) continue;
      depth[j * width + i] = top;
      const slope = onHead ? 0 : (radiusAt(at + 0.01, phi, screw) - r) / 0.01;
      // Light from above, a little from the head's side.
      const lit = Math.max(0, (cos - 0.5 * slope) / Math.hypot(1, slope) / 1.1);
      data[j * width + i] = metal * (0.25 + 0.75 * lit);
    }
  }
}

/** Directions around the axis, close enough to leave no pixel out. */
function directions(reachMm: number, stepMm: number) {
  const steps = Math.ceil((2.2 * Math.PI * reachMm) / 2 / stepMm);
  return Array.from({ length: steps + 1 }, (_, k) => {
    const phi = 1.75 * ((2 * k) / steps - 1);
    return { phi, cos: Math.cos(phi), sin: Math.sin(phi) };
  });
}

function reduced(data: Float32Array, width: number, height: number): GreyImage {
  const w = Math.floor(width / fine);
  const h = Math.floor(height / fine);
  const out = new Uint8Array(w * h);
  for (let j = 0; j < h; j++) {
    for (let i = 0; i < w; i++) {
      let sum = 0;
      for (let v = 0; v < fine; v++)
        for (let u = 0; u < fine; u++) sum += data[(j * fine + v) * width + i * fine + u];
      out[j * w + i] = sum / fine ** 2;
    }
  }
  return { width: w, height: h, data: out };
}

function noisy(image: GreyImage, seed: number): GreyImage {
  let state = seed;
  const next = () => {
    state = (state * 1664525 + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  return {
    ...image,
    data: image.data.map((v) =>
      Math.max(0, Math.min(255, v + 5 * (next() + next() + next() + next() - 2))),
    ),
  };
}
