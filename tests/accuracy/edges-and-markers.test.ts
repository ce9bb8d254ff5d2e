import { describe, expect, it } from 'vitest';
import { drawCamera, projectPoint, type SyntheticCamera } from '../../fixtures/synthetic/camera';
import { edgeBound, edgeImage, idealCard } from '../../fixtures/synthetic/ideal-edge';
import { atHeight } from '../../src/journey/2-card-pose/camera';
import { flat } from '../../src/journey/2-card-pose/card-bow';
import { fitEdge } from '../../src/journey/2-card-pose/edge-profile';
import { markerEdges } from '../../src/journey/2-card-pose/marker-edges';
import { poseFromMarkers } from '../../src/journey/2-card-pose/pose-from-markers';
import { invertSymmetric } from '../../src/quantity/matrix';
import { seededRandom } from '../../src/quantity/random';
import { card, markers } from '../../src/scale-card/geometry';
import { posedFromSynthetic, toCard } from './posed-from-synthetic';

/** Estimators of stage 2 against the Cramér–Rao bound and against ideal images with known truth. */

describe('edge position', () => {
  it.each([
    [0.7, 40],
    [1, 40],
    [1.4, 60],
  ])(
    'blur %f px, contrast to noise %i: RMSE within 1.15 of the bound, stated u true',
    (sigmaPx, ratio) => {
      const random = seededRandom(17);
      const contrast = 120;
      const count = 21;
      const trials = 3000;
      let square = 0;
      let sum = 0;
      let stated = 0;
      let bound = 0;
      for (let k = 0; k < trials; k++) {
        const offsetPx = 10 + random.between(-0.5, 0.5);
        const look = { sigmaPx, before: 60, after: 60 + contrast, noise: contrast / ratio };
        const profile = edgeImage({ ...look, offsetPx, angleRad: 0 }, count, 1, random);
        const fit = fitEdge(profile, 10, 1.2);
        expect(fit).not.toBeNull();
        square += (fit!.position - offsetPx) ** 2 / trials;
        sum += (fit!.position - offsetPx) / trials;
        stated += fit!.u ** 2 / trials;
        // A pixel averages over its width: variance 1/12 more.
        const seen = { ...look, sigmaPx: Math.sqrt(sigmaPx ** 2 + 1 / 12) };
        bound += edgeBound(seen, offsetPx, count, invertSymmetric) ** 2 / trials;
      }
      expect(Math.sqrt(square / bound)).toBeLessThan(1.15);
      expect(Math.abs(sum)).toBeLessThan(0.003);
      expect(Math.sqrt(stated / square)).toBeGreaterThan(0.85);
      expect(Math.sqrt(stated / square)).toBeLessThan(1.2);
    },
  );
});

describe('marker sides on ideal images, noise 3 grey levels', () => {
  it.each([
    [0, 250, 0.7],
    [20, 250, 0.9],
    [30, 160, 0.8],
  ])(
    'tilt %i°, height %i mm, blur %f px: bias ≤ 0.02 px, spread ≤ 0.03 px',
    (tilt, heightMm, sigmaPx) => {
      const random = seededRandom(100 + tilt);
      const camera = drawCamera(
        { widthPx: 1600, tiltRad: (tilt * Math.PI) / 180, heightMm, fill: 0.97 },
        random,
      );
      const grey = cardImage(camera, sigmaPx, random);
      const points = markerEdges(
        {
          grey,
          camera: posedFromSynthetic(camera),
          bow: flat,
          printScale: { x: 1, y: 1 },
        },
        markers.map((m) => m.id),
        1.5,
      );
      const sides = new Map<number, number[]>();
      for (const p of points) {
        const at = worldOf(p.onCard);
        const here = projectPoint(camera, at);
        const beyond = projectPoint(camera, [
          at[0] + 0.1 * p.outward[0],
          at[1] - 0.1 * p.outward[1],
          0,
        ]);
        const n = Math.hypot(beyond[0] - here[0], beyond[1] - here[1]);
        const off =
          ((p.measured[0] - here[0]) * (beyond[0] - here[0]) +
            (p.measured[1] - here[1]) * (beyond[1] - here[1])) /
          n;
        sides.set(p.side, [...(sides.get(p.side) ?? []), off]);
      }
      const means = [...sides.values()].filter((s) => s.length >= 4).map(mean);
      expect(means.length).toBeGreaterThan(100);
      expect(Math.abs(mean(means))).toBeLessThan(0.02);
      expect(deviation(means)).toBeLessThan(0.03);
    },
  );
});

describe('parallax', () => {
  const cases = [0, 12, 30].flatMap((tilt) => [150, 400].map((h) => [tilt, h] as const));
  it.each(cases)(
    'tilt %i°, camera %i mm up: at most 5 % of the uncorrected effect remains',
    (tilt, heightMm) => {
      const random = seededRandom(1000 + tilt + heightMm);
      const camera = drawCamera(
        { widthPx: 1600, tiltRad: (tilt * Math.PI) / 180, heightMm, fill: 0.95 },
        random,
      );
      const grey = cardImage(camera, 0.8, random);
      const detected = markersSeen(camera, 1);
      // EXIF two per cent off, as a rounded marketing value may be.
      const f35 = (1.02 * camera.fPx * Math.hypot(36, 24)) / Math.hypot(1600, 1200);
      const pose = poseFromMarkers(grey, detected, f35, { x: 1, y: 1, u: 1e-4 });
      expect(pose).not.toBeNull();
      // A rod 20 mm long, its axis 15 mm above the card, anywhere in the window.
      const axisMm = 15;
      for (const [x, y] of [
        [0, 0],
        [45, 25],
        [-50, 20],
      ] as const) {
        const ends = [x - 10, x + 10].map((at) => projectPoint(camera, [at, y, axisMm]));
        const length = (h: number) => {
          const [a, b] = ends.map((end) => atHeight(pose!.camera, end, h));
          return Math.hypot(b![0] - a![0], b![1] - a![1]);
        };
        const uncorrected = Math.abs(length(0) / 20 - 1);
        const corrected = Math.abs(length(axisMm) / 20 - 1);
        expect(uncorrected).toBeGreaterThan(0.02);
        expect(corrected / uncorrected).toBeLessThan(0.05);
      }
      const [truth, found] = [toCard(camera.position), pose!.camera.centre];
      expect(Math.abs(found[2] / truth[2] - 1)).toBeLessThan(0.03);
    },
  );
});

describe('a print some per cent small', () => {
  it.each([0.966, 1.004])(
    'scale %f, bars measured: every side is found, and f is right',
    (scale) => {
      const random = seededRandom(77);
      const tiltRad = (15 * Math.PI) / 180;
      const camera = drawCamera({ widthPx: 1600, tiltRad, heightMm: 250, fill: 0.95 }, random);
      const grey = cardImage(camera, 0.8, random, scale);
      const pose = poseFromMarkers(grey, markersSeen(camera, scale), null, {
        x: scale,
        y: scale,
        u: 1e-4,
      })!;
      const sides = markerEdges(
        {
          grey,
          camera: pose.camera,
          bow: pose.bow,
          printScale: { x: scale, y: scale },
        },
        markers.map((m) => m.id),
        1.5,
      );
      expect(sides.length).toBeGreaterThan(0.9 * markers.length * 4 * 6);
      expect(pose.rmsPx).toBeLessThan(0.1);
      const error = Math.log(pose.camera.fPx / camera.fPx);
      const u = Math.sqrt(pose.covariance[0]!);
      expect(u).toBeLessThan(0.02);
      expect(Math.abs(error)).toBeLessThan(3 * u);
    },
  );
});

function markersSeen(camera: SyntheticCamera, scale: number) {
  const half = card.markerSideMm / 2;
  const corners = [
    [-half, -half],
    [half, -half],
    [half, half],
    [-half, half],
  ] as const;
  return markers.map(({ id, xMm, yMm }) => ({
    id,
    corners: corners.map(([dx, dy]) => {
      const x = (xMm + dx - card.widthMm / 2) * scale;
      return projectPoint(camera, [x, (card.heightMm / 2 - yMm - dy) * scale, 0]);
    }),
  }));
}

function cardImage(
  camera: SyntheticCamera,
  sigmaPx: number,
  random: ReturnType<typeof seededRandom>,
  scale = 1,
) {
  const look = { ink: 0.04, paper: 0.7, sigmaPx, noise: 3 };
  return {
    width: camera.widthPx,
    height: camera.heightPx,
    data: idealCard(camera, look, random, [scale, scale]),
  };
}

const worldOf = ([x, y]: readonly number[]): [number, number, number] => [
  x! - card.widthMm / 2,
  card.heightMm / 2 - y!,
  0,
];
const mean = (v: readonly number[]) => v.reduce((s, x) => s + x, 0) / v.length;
const deviation = (v: readonly number[]) => {
  const m = mean(v);
  return Math.sqrt(v.reduce((s, x) => s + (x - m) ** 2, 0) / (v.length - 1));
};
