import ExifReader from 'exifreader';
import { beforeAll, describe, expect, it } from 'vitest';
import { projectPoint, rayDirection, type SyntheticCamera } from '../../fixtures/synthetic/camera';
import { edgeImage } from '../../fixtures/synthetic/ideal-edge';
import { photograph, syntheticPhoto } from '../../fixtures/synthetic/photo';
import { newHit, type Ray } from '../../fixtures/synthetic/ray';
import { renderScene } from '../../fixtures/synthetic/render';
import { drawScene, type Scene } from '../../fixtures/synthetic/scene';
import { surfaceRadius } from '../../fixtures/synthetic/threaded-rod';
import { formDepth, threads } from '../../fixtures/synthetic/threads';
import { loadNodeVision } from '../../src/cli/node-vision';
import { seededRandom } from '../../src/quantity/random';
import { card, markers } from '../../src/scale-card/geometry';
import { threads as standardThreads } from '../../src/standards/threads';
import type { Vision } from '../../src/vision/vision';

/** The generator is the yardstick: it is checked against geometry, OpenCV and a public EXIF reader. */

describe('synthetic threads', () => {
  it('are those of the standards’ tables', () => {
    for (const t of threads) {
      const row = standardThreads.find(
        (s) =>
          s.system === t.system &&
          Math.abs(s.basicMajorMm - t.basicMajorMm) < 0.02 &&
          Math.abs(s.pitchMm - t.pitchMm) < 1e-3,
      );
      expect(row, t.designation).toBeDefined();
      expect(row!.taper, t.designation).toBeCloseTo(t.taper, 6);
    }
  });

  it('have the standards’ depths and flanks', () => {
    expect(formDepth('55', 0.5, 0)).toBeCloseTo(0.640327, 6); // ISO 228-1
    expect(formDepth('60', 0.5, 0.125)).toBeCloseTo(0.6134, 4); // ISO 68-1, 17/24 H
    expect(formDepth('npt', 0.5, 0)).toBeCloseTo(0.8, 6); // ASME B1.20.1
    const slope = (form: '55' | '60' | 'npt', x: number) =>
      (formDepth(form, x + 1e-4, 0.125) - formDepth(form, x - 1e-4, 0.125)) / 2e-4;
    expect(slope('60', 0.2)).toBeCloseTo(1 / Math.tan(Math.PI / 6), 6);
    expect(slope('55', 0.23)).toBeCloseTo(1 / Math.tan((27.5 * Math.PI) / 180), 3);
  });

  it('wind to the right: a quarter turn anticlockwise about the axis moves a crest on by p/4', () => {
    const { rod } = drawScene(1, 0).fitting;
    const shape = { ...rod, dents: [], crestSlope: 0, runOutMm: 0 };
    for (const x of [3.1, 3.4, 4.2])
      expect(surfaceRadius(shape, x + rod.pitchMm / 4, 0.3 + Math.PI / 2)).toBeCloseTo(
        surfaceRadius(shape, x, 0.3),
        9,
      );
  });
});

describe('synthetic photos', () => {
  let vision: Vision;
  beforeAll(async () => {
    vision = await loadNodeVision();
  });

  it('project and cast rays alike', () => {
    const { camera } = drawScene(3, 5);
    const d = new Float64Array(3);
    for (const point of [
      [30, -20, 15],
      [-70, 55, 0],
    ] as const) {
      const [u, v] = projectPoint(camera, point);
      rayDirection(camera, u, v, d);
      const t = (point[2] - camera.position[2]) / d[2]!;
      expect(camera.position[0] + t * d[0]!).toBeCloseTo(point[0], 7);
      expect(camera.position[1] + t * d[1]!).toBeCloseTo(point[1], 7);
    }
  });

  it.each([0, 7])(
    'show OpenCV every marker in the frame where the camera puts it (case %i)',
    (index) => {
      const scene = drawScene(11, index);
      const image = renderScene(scene);
      const data = Uint8Array.from(image.planes[1], (v) => Math.min(255, 255 * v));
      const found = vision.detectMarkers({ width: image.width, height: image.height, data });
      let hidden = 0;
      for (const { id, xMm, yMm } of markers) {
        const at = centreOf(scene, xMm, yMm);
        if (Math.min(at[0], at[1], image.width - at[0], image.height - at[1]) < 70) continue;
        const seen = found.markers.find((m) => m.id === id);
        if (!seen) {
          hidden++;
          continue;
        }
        const mean = [0, 1].map((k) => seen.corners.reduce((s, c) => s + c[k]! / 4, 0));
        expect(Math.hypot(mean[0]! - at[0], mean[1]! - at[1])).toBeLessThan(1);
      }
      expect(hidden).toBeLessThanOrEqual(3);
    },
  );

  it('show the crests’ cylinder as wide as R = ρ·sin β', () => {
    const { camera, fitting, origin, azimuthRad } = drawScene(2, 3);
    const c = Math.cos(azimuthRad);
    const s = Math.sin(azimuthRad);
    const ray: Ray = {
      ox: (camera.position[0] - origin[0]) * c + (camera.position[1] - origin[1]) * s,
      oy: -(camera.position[0] - origin[0]) * s + (camera.position[1] - origin[1]) * c,
      oz: camera.position[2] - origin[2],
      dx: 0,
      dy: 0,
      dz: 0,
    };
    const rho = Math.hypot(ray.oy, ray.oz);
    const rod = fitting.solids[0]!;
    const hit = newHit();
    const middle = fitting.rod.lengthMm / 2;
    const crest = fitting.rod.crestRadiusMm + fitting.rod.crestSlope * middle;
    // Aim beside the axis at every axial place of one pitch; the widest hit is the crest's tangent.
    let widest = 0;
    for (let k = 0; k < 60; k++) {
      const x = middle + (k / 60 - 0.5) * fitting.rod.pitchMm;
      for (
        let beta = Math.asin(crest / rho) - 0.004;
        beta < Math.asin(crest / rho) + 0.004;
        beta += 2e-5
      ) {
        const angle = Math.atan2(-ray.oz, -ray.oy) + beta;
        const reach = Math.sqrt(rho * rho - crest * crest);
        const [dy, dz] = [Math.cos(angle), Math.sin(angle)];
        const n = Math.hypot(x - ray.ox, reach);
        Object.assign(ray, { dx: (x - ray.ox) / n, dy: (dy * reach) / n, dz: (dz * reach) / n });
        if (rod.enter(ray, hit, false)) widest = Math.max(widest, rho * Math.sin(beta));
      }
    }
    const slope = fitting.rod.crestSlope * fitting.rod.pitchMm;
    expect(Math.abs(widest - crest)).toBeLessThan(0.02 + slope);
  });

  it('come out the same for the same seed, with the EXIF their truth states', async () => {
    const scene = [...Array(20).keys()].map((i) => drawScene(5, i)).find((s) => s.f35 !== null)!;
    const small = { ...scene, camera: shrunk(scene.camera, 4) };
    const [a, b] = [await photograph(small), await photograph(small)];
    expect(a.bytes).toEqual(b.bytes);
    const tags = ExifReader.load(a.bytes.buffer as ArrayBuffer);
    expect(tags.FocalLengthIn35mmFilm?.value).toBe(scene.f35);
    expect(tags.Orientation?.value).toBe(scene.orientation);
    expect(a.truth.f35).toBe(scene.f35);
  });

  it.each([true, false])('say in EXIF whether the flash fired (%s)', async (fired) => {
    const scene = [...Array(60).keys()]
      .map((i) => drawScene(5, i))
      .find((s) => s.f35 !== null && (s.light.kind === 'flash') === fired)!;
    const { bytes } = await photograph({ ...scene, camera: shrunk(scene.camera, 4) });
    const tags = ExifReader.load(bytes.buffer as ArrayBuffer);
    expect(Number(tags.Flash?.value) & 1).toBe(fired ? 1 : 0);
    expect(tags.Flash?.description).toMatch(fired ? /^Flash fired/ : /did not fire/);
    expect(tags.FocalLengthIn35mmFilm?.value).toBe(scene.f35);
    // The one value outside of the directory, behind all of its entries.
    expect(tags.FocalLength?.value).toEqual([Math.round(scene.f35! * 16.4), 100]);
  });

  it('come at a fair pace', async () => {
    const began = performance.now();
    await syntheticPhoto(1, 1);
    expect(performance.now() - began).toBeLessThan(15_000);
  });
});

describe('ideal edges', () => {
  it('are exact: an unblurred edge at 30° cuts pixels by area', () => {
    const angleRad = Math.PI / 6;
    const edge = { offsetPx: 4.3, angleRad, sigmaPx: 1e-3, before: 0, after: 1, noise: 0 };
    const image = edgeImage(edge, 10, 10, seededRandom(1));
    const n = 200;
    for (const [u, v] of [
      [3, 2],
      [2, 5],
      [5, 0],
    ] as const) {
      let area = 0;
      for (let j = 0; j < n; j++)
        for (let i = 0; i < n; i++) {
          const x = u - 0.5 + (i + 0.5) / n;
          const y = v - 0.5 + (j + 0.5) / n;
          if (x * Math.cos(angleRad) + y * Math.sin(angleRad) > edge.offsetPx) area += 1 / (n * n);
        }
      expect(image[v * 10 + u]).toBeCloseTo(area, 2);
    }
  });
});

function centreOf({ camera, printScale }: Scene, xMm: number, yMm: number): [number, number] {
  const x = (xMm - card.widthMm / 2) * printScale[0];
  const y = (card.heightMm / 2 - yMm) * printScale[1];
  return projectPoint(camera, [x, y, 0]);
}

function shrunk(camera: SyntheticCamera, by: number): SyntheticCamera {
  const { widthPx, heightPx, fPx, cx, cy } = camera;
  return {
    ...camera,
    widthPx: Math.round(widthPx / by),
    heightPx: Math.round(heightPx / by),
    fPx: fPx / by,
    cx: cx / by,
    cy: cy / by,
  };
}
