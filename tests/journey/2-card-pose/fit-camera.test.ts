import { describe, expect, it } from 'vitest';
import { posed, project, type Vec3 } from '../../../src/journey/2-card-pose/camera';
import { type Bow, bowHeightMm, largestBow } from '../../../src/journey/2-card-pose/card-bow';
import { fitCamera } from '../../../src/journey/2-card-pose/fit-camera';
import {
  lensPriors,
  mixed,
  overLenses,
  weightOfStatement,
} from '../../../src/journey/2-card-pose/focal-length';
import { outward } from '../../../src/journey/2-card-pose/marker-edges';
import { seededRandom } from '../../../src/quantity/random';
import { card, markers } from '../../../src/scale-card/geometry';

const fPx = 1500;
const noisePx = 0.05;

/** A camera `heightMm` up, tilted about x, that looks at the card's middle. */
function cameraAt(heightMm: number, tiltRad: number, focalPx = fPx) {
  const R = [Math.cos(tiltRad), Math.sin(tiltRad)];
  const [x, y] = [card.widthMm / 2, card.heightMm / 2];
  return posed({
    fPx: focalPx,
    cx: 800,
    cy: 600,
    k1: 0.01,
    rotation: [tiltRad, 0, 0],
    translation: [-x, -y * R[0]!, heightMm / R[0]! - y * R[1]!],
  });
}

/** Six points on each side of every marker, where the camera sees them on a bowed card. */
function edgePoints(camera: ReturnType<typeof cameraAt>, bow: Bow, seed: number) {
  const random = seededRandom(seed);
  const half = card.markerSideMm / 2;
  return markers.flatMap(({ id, xMm, yMm }) =>
    outward.flatMap((n, side) =>
      Array.from({ length: 6 }, (_, k) => {
        const along = 0.76 * card.markerSideMm * ((k + 0.5) / 6 - 0.5);
        const onCard: Vec3 = [
          xMm + n[0] * half - n[1] * along,
          yMm + n[1] * half + n[0] * along,
          0,
        ];
        const seen = project(camera, [
          onCard[0],
          onCard[1],
          -bowHeightMm(bow, onCard[0], onCard[1]),
        ]);
        const measured = [
          seen[0] + noisePx * random.normal(),
          seen[1] + noisePx * random.normal(),
        ] as const;
        return {
          markerId: id,
          side: 4 * id + side,
          onCard,
          outward: n,
          measured,
          uPx: noisePx,
          blurPx: 1,
        };
      }),
    ),
  );
}

const lens = (f: number, uLnF: number) => ({
  fPx: f,
  uLnF,
  cx: 800,
  cy: 600,
  uCentrePx: 5,
  uK1: 0.05,
});
const shape = { scaleX: 1, scaleY: 1, uAspect: 5e-4, uBowMm: 0.6 };

describe('a sheet that rises by 0.7 mm at 90 mm, seen from nearly straight above', () => {
  // A cylinder at 30°.
  const bow: Bow = [0.7 * 0.75, 0.7 * 0.866, 0.7 * 0.25];
  const camera = cameraAt(260, 0.03);
  const points = edgePoints(camera, bow, 3);

  it('is measured, and leaves the camera where it is', () => {
    const fit = fitCamera(points, camera, lens(1.01 * fPx, 0.017), shape);
    expect(Math.abs(fit.camera.centre[2] / camera.centre[2] - 1)).toBeLessThan(0.02);
    expect(fit.largestBow.riseMm).toBeGreaterThan(0.5);
    expect(fit.largestBow.riseMm).toBeLessThan(0.9);
  });

  it('taken for flat, it would move a tilted camera whose focal length nobody states', () => {
    const tilted = cameraAt(260, 0.15);
    const off = (uBowMm: number) =>
      [0, 0.5, 1, 1.5, 2, 2.5].map((turn) => {
        const [c, s] = [Math.cos(turn), Math.sin(turn)];
        const seen = edgePoints(tilted, [0.7 * c * c, 1.4 * c * s, 0.7 * s * s], 4);
        const { camera: found } = fitCamera(seen, tilted, lens(1300, 0.5), { ...shape, uBowMm });
        return Math.abs(found.centre[2] / tilted.centre[2] - 1);
      });
    expect(Math.max(...off(1e-4))).toBeGreaterThan(0.04);
    expect(Math.max(...off(0.6))).toBeLessThan(0.01);
  });
});

describe('a focal length that EXIF states', () => {
  const told = (stated: number, tilt: number) => {
    const camera = cameraAt(260, tilt);
    const points = edgePoints(camera, [0.2, 0.1, 0], 8);
    const prior = lens(stated, 0.017);
    const fit = fitCamera(points, camera, prior, shape);
    const alone = fitCamera(points, camera, lens(1300, 0.5), shape, fit.scale);
    return { fit, alone, weight: weightOfStatement(fit, alone) };
  };

  it('is believed where it is right', () => {
    expect(told(1.02 * fPx, 0.35).weight).toBeGreaterThan(0.95);
    expect(told(1.02 * fPx, 0.01).weight).toBeGreaterThan(0.9);
  });

  it('is overruled by a tilted card after a crop, and not by a level one, which cannot know', () => {
    const { fit, alone, weight } = told(fPx / 1.5, 0.35);
    expect(weight).toBeLessThan(0.01);
    const { camera } = mixed(fit, alone, weight);
    expect(Math.abs(camera.fPx / fPx - 1)).toBeLessThan(0.02);
    expect(told(fPx / 1.1, 0.002).weight).toBeGreaterThan(0.5);
  });
});

describe('a focal length that nobody states', () => {
  /** Camera height over the true one, less 1, and its u; a photo of 1600 × 1200 px. */
  const found = (f35Mm: number, tilt: number, heightMm: number) => {
    const camera = cameraAt(heightMm, tilt, (f35Mm * 2000) / 43.2666);
    const points = edgePoints(camera, [0.1, 0.1, 0], 5);
    const pxPerMm = camera.fPx / heightMm;
    const { open, usual } = lensPriors({ width: 1600, height: 1200 }, null, pxPerMm, 300);
    const fitWith = (prior: typeof open) => fitCamera(points, camera, prior, shape, 1);
    const { camera: fitted, covariance } = overLenses(usual, fitWith);
    return {
      error: fitted.centre[2] / camera.centre[2] - 1,
      byOneBroadPrior: fitWith(open).camera.centre[2] / camera.centre[2] - 1,
      u: Math.sqrt(covariance[0]!),
    };
  };

  it('is most likely that of a main lens, where a level card does not say', () => {
    const { error, byOneBroadPrior } = found(26, 0.005, 220);
    expect(Math.abs(error)).toBeLessThan(0.05);
    expect(Math.abs(error)).toBeLessThan(Math.abs(byOneBroadPrior) / 3);
  });

  it('may be any other: u says so, and a tilted card decides', () => {
    const level = found(36, 0.005, 300);
    expect(Math.abs(level.error)).toBeLessThan(2 * level.u);
    expect(level.u).toBeGreaterThan(0.15);
    const tilted = found(36, 0.35, 300);
    expect(Math.abs(tilted.error)).toBeLessThan(0.02);
    expect(tilted.u).toBeLessThan(0.02);
  });
});

it('the largest bow of a cylinder is its rise, whatever its direction', () => {
  for (const turn of [0, 0.4, 1.2, 2]) {
    for (const rise of [0.5, -0.3]) {
      const [c, s] = [Math.cos(turn), Math.sin(turn)];
      const { riseMm, uMm } = largestBow([rise * c * c, 2 * rise * c * s, rise * s * s], (i, j) =>
        i === j ? 0.01 : 0,
      );
      expect(riseMm).toBeCloseTo(rise, 9);
      expect(uMm).toBeCloseTo(0.1 * Math.sqrt(c ** 4 + (c * s) ** 2 + s ** 4), 9);
    }
  }
});
