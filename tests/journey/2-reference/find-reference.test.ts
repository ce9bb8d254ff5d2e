import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { nodeDecoders } from '../../../src/cli/node-decoders';
import { loadNodeVision } from '../../../src/cli/node-vision';
import { diagonal35Mm, type Photo } from '../../../src/journey/1-photo/photo';
import { readPhoto } from '../../../src/journey/1-photo/read-photo';
import { atHeight, project } from '../../../src/journey/2-card-pose/camera';
import { cameraFrom, cameraParameters } from '../../../src/journey/2-card-pose/camera-parameters';
import { findRectangle, rectangleByHand } from '../../../src/journey/2-reference/find-rectangle';
import { findReference } from '../../../src/journey/2-reference/find-reference';
import { isInside } from '../../../src/journey/2-reference/polygon';
import type { Reference } from '../../../src/journey/2-reference/reference';
import type { PhotoPoint } from '../../../src/journey/overlay';
import type { Vision } from '../../../src/vision/vision';
import { cameraOver, type DrawnRectangle, drawnRectangle } from './drawn-rectangle';

/** Renders and drawn rectangles with known truth; no photographs. */

let vision: Vision;
beforeAll(async () => {
  vision = await loadNodeVision();
});

const fixture = (path: string) => new URL(`../../../fixtures/${path}`, import.meta.url);

async function photoOf(path: string): Promise<Photo> {
  const bytes = new Uint8Array(readFileSync(fixture(path)));
  const photo = await readPhoto(new AbortController().signal, bytes, nodeDecoders);
  if (!photo.ok) throw new Error(photo.reason);
  return photo.value;
}

const print = { x: 1, y: 1, u: 0.002 };

describe.each(['gi004', 'gi011', 'gs002'])('render %s', (name) => {
  const truth = JSON.parse(readFileSync(fixture(`references/${name}.truth.json`), 'utf8'));
  let found: Reference;
  let ends: PhotoPoint[];
  beforeAll(async () => {
    const photo = await photoOf(`references/${name}.jpg`);
    const result = findReference(photo, vision, print, { kind: 'auto', corners: null });
    if (!result.ok) throw new Error(result.advice);
    found = result.value;
    ends = [truth.axis_p0, truth.axis_p1].map((p) => seen(truth, photo, p));
  });

  const lengthOf = (parameters: Float64Array) => {
    const camera = cameraFrom(parameters, found.prior);
    const [a, b] = ends.map((end) => atHeight(camera, end, truth.axis_height_mm));
    return Math.hypot(b![0] - a![0], b![1] - a![1]);
  };

  it('is found by itself, for what it is', () => {
    expect(found.kind).toBe(truth.reference);
  });

  it('measures the thread’s length at its height within 0.5 % and 3 u', () => {
    const length = Math.hypot(...[0, 1, 2].map((i) => truth.axis_p1[i] - truth.axis_p0[i]));
    const error = lengthOf(found.parameters) / length - 1;
    const slopes = Array.from({ length: cameraParameters }, (_, j) => {
      const at = (h: number) => lengthOf(found.parameters.map((v, i) => (i === j ? v + h : v)));
      return (at(1e-6) - at(-1e-6)) / 2e-6 / length;
    });
    let variance = 0;
    for (let i = 0; i < cameraParameters; i++)
      for (let j = 0; j < cameraParameters; j++)
        variance += slopes[i]! * slopes[j]! * found.covariance[i * cameraParameters + j]!;
    expect(Math.abs(error)).toBeLessThan(0.005);
    expect(Math.abs(error)).toBeLessThan(3 * Math.sqrt(variance));
    expect(Math.sqrt(variance)).toBeLessThan(0.01);
  });

  it('says where the fitting may lie, and it does', () => {
    const [a, b] = ends.map((end) => atHeight(found.camera, end, truth.axis_height_mm));
    const middle = [(a![0] + b![0]) / 2, (a![1] + b![1]) / 2] as const;
    expect(isInside(found.search.polygon, ...middle)).toBe(true);
    for (const hole of found.search.holes) expect(isInside(hole, ...middle)).toBe(false);
  });
});

const id1: DrawnRectangle = {
  widthMm: 85.6,
  heightMm: 53.98,
  cornerMm: 3.18,
  faceMm: 0.76,
  inside: 0.7,
  outside: 0.2,
  cameraMm: 180,
  tiltRad: 0.25,
  turnRad: 0.1,
  fPx: 1700,
};

const photoFrom = (scene: DrawnRectangle, exif = true): Photo => {
  const grey = drawnRectangle(scene);
  return {
    grey,
    f35Mm: exif ? (scene.fPx / Math.hypot(grey.width, grey.height)) * diagonal35Mm : null,
    flashFired: false,
    originalSize: grey,
  };
};

const auto = (scene: DrawnRectangle, exif = true) =>
  findRectangle(photoFrom(scene, exif), vision, null);

describe('an ID-1 card, drawn', () => {
  it.each([
    ['bright on a dark table', {}],
    ['dark on a bright table', { inside: 0.05, outside: 0.6 }],
    ['portrait', { turnRad: 1.62, cameraMm: 230 }],
    ['upside down', { turnRad: 3.1 }],
    // Along its right side it is first brighter and then darker than the table.
    ['shaded towards a corner', { inside: 0.5, outside: 0.3, shade: 0.3 }],
  ] as const)('%s: found, camera height within 1 %', (_, change) => {
    const scene = { ...id1, ...change };
    const result = auto(scene);
    expect(result.ok && result.value.kind).toBe('id1');
    if (!result.ok) return;
    const { centre } = result.value.camera;
    expect(Math.abs(centre[2] / cameraOver(scene).centre[2] - 1)).toBeLessThan(0.01);
  });

  it('without a focal length: the scale stays, and its height says how little is known', () => {
    const result = auto({ ...id1, tiltRad: 0.05 }, false);
    expect(result.ok).toBe(true);
    if (!result.ok) return;
    expect(Math.sqrt(result.value.covariance[0]!)).toBeGreaterThan(0.05);
    expect(Math.sqrt(result.value.covariance[99]!)).toBeLessThan(0.003);
  });
});

describe('sheets, drawn', () => {
  const sheet = { ...id1, cornerMm: 0, faceMm: 0, cameraMm: 420, inside: 0.8 };
  it.each([
    ['a4', 297, 210],
    ['letter', 279.4, 215.9],
  ] as const)('%s is told from the other', (kind, widthMm, heightMm) => {
    const result = auto({ ...sheet, widthMm, heightMm });
    expect(result.ok && result.value.kind).toBe(kind);
  });
});

// Its near corners lie some 18 px beyond the sides of the photo, which is 1600 wide.
it('a sheet of which two corners are not in the photo is measured by what is seen of its sides', () => {
  const near = { cornerMm: 0, faceMm: 0, cameraMm: 255, inside: 0.8, fPx: 1300, tiltRad: 0.3 };
  const scene = { ...id1, ...near, turnRad: 0, widthMm: 297, heightMm: 210 };
  const result = auto(scene);
  expect(result.ok && result.value.kind).toBe('a4');
  if (!result.ok) return;
  expect(Math.max(...result.value.outline.map(([x]) => x))).toBeGreaterThan(1610);
  const { centre } = result.value.camera;
  expect(Math.abs(centre[2] / cameraOver(scene).centre[2] - 1)).toBeLessThan(0.01);
});

describe('other rectangles are refused by their name', () => {
  it.each([
    ['business card', { widthMm: 90, heightMm: 54 }],
    ['business card', { widthMm: 85, heightMm: 55 }],
    ['banknote', { widthMm: 133, heightMm: 72, cameraMm: 250 }],
  ] as const)('%s', (name, change) => {
    const result = auto({ ...id1, ...change, cornerMm: 0, faceMm: 0.2 });
    expect(result.ok).toBe(false);
    expect(!result.ok && result.advice).toContain(name);
  });

  it('an ID-1 card is not taken for a sheet when a sheet is asked for', () => {
    expect(findRectangle(photoFrom(id1), vision, 'a4').ok).toBe(false);
  });
});

describe('corners shown by hand', () => {
  it('some pixels off: the same camera as found by itself', () => {
    const photo = photoFrom(id1);
    const byItself = findRectangle(photo, vision, null);
    if (!byItself.ok) throw new Error(byItself.advice);
    const shown = byItself.value.outline.map(
      ([x, y], i) => [x + [12, -9, 14, -8][i]!, y + [-10, 12, 6, -11][i]!] as const,
    );
    const byHand = rectangleByHand(photo, shown, 'id1');
    if (!byHand.ok) throw new Error(byHand.advice);
    const ratio = byHand.value.camera.centre[2] / byItself.value.camera.centre[2];
    expect(Math.abs(ratio - 1)).toBeLessThan(0.003);
    expect(rectangleByHand(photo, [...shown].reverse(), 'id1').ok).toBe(true);
  });

  it('round something else: refused by its name', () => {
    const scene = { ...id1, widthMm: 90, heightMm: 54, cornerMm: 0, faceMm: 0 };
    const camera = cameraOver(scene);
    const shown = (
      [
        [-45, -27],
        [45, -27],
        [45, 27],
        [-45, 27],
      ] as const
    ).map(([x, y]) => project(camera, [92 + x, 68 + y, 0]));
    const result = rectangleByHand(photoFrom(scene), shown, 'id1');
    expect(result.ok).toBe(false);
    expect(!result.ok && result.advice).toContain('business card');
  });
});

describe('the scale card', () => {
  it('wins wherever it is seen, even if something else is asked for', async () => {
    const photo = await photoOf('photos/d11.jpg');
    for (const wanted of ['auto', 'id1'] as const) {
      const result = findReference(photo, vision, print, { kind: wanted, corners: null });
      expect(result.ok && result.value.kind).toBe('card');
    }
  });

  it('is no sheet and no bank card when its markers are not asked for', async () => {
    for (const name of ['d11', 'd09', 'd02']) {
      const photo = await photoOf(`photos/${name}.jpg`);
      expect(findRectangle(photo, vision, null).ok).toBe(false);
    }
  });
});

/** World of the truth → pixels of the upright photo, as the renderer projects. */
function seen(
  truth: {
    camera: number[][];
    f_px: number;
    k1: number;
    cxcy: number[];
    width: number;
    height: number;
  },
  { grey }: Photo,
  at: readonly number[],
): PhotoPoint {
  const { camera: C } = truth;
  const d = at.map((v, i) => v - C[i]![3]!);
  const [x, y, z] = [0, 1, 2].map((j) => d.reduce((s, v, i) => s + v * C[i]![j]!, 0));
  const [u, v] = [x! / -z!, -y! / -z!];
  const k = truth.f_px * (1 + truth.k1 * (u * u + v * v));
  const scale = grey.width / truth.width;
  return [
    (k * u + (truth.width - 1) / 2 + truth.cxcy[0]!) * scale,
    (k * v + (truth.height - 1) / 2 + truth.cxcy[1]!) * scale,
  ];
}
