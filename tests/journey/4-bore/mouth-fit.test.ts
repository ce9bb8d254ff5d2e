import { expect, test } from 'vitest';
import { project, rayThrough, type Vec3 } from '../../../src/journey/2-card-pose/camera';
import {
  type FacePlane,
  footOf,
  onPlane,
  turnedPlane,
} from '../../../src/journey/4-bore/face-plane';
import { mouthOf } from '../../../src/journey/4-bore/mouth-fit';
import { awayAt, mouthGrid, rowAt, sectorsOf } from '../../../src/journey/4-bore/sector-patch';
import { believed, cardPlane, slantedCamera } from './scene';

const camera = slantedCamera(0.8);
const sectors = sectorsOf(mouthGrid);
const guess = { x: 92, y: 68, radius: 9 };

/** Row of each sector at which a circle on one plane is seen from about a guess on another: points all round it,
 *  projected into the photo and back. */
function rowsOf(plane: FacePlane, face: FacePlane, [x, y, radius]: readonly number[]) {
  const { away, across } = awayAt(plane, camera, guess.x, guess.y);
  const best = Array.from({ length: sectors }, () => ({ off: 9, row: 0 }));
  for (let k = 0; k < 7200; k++) {
    const a = (2 * Math.PI * k) / 7200;
    const on = onPlane(face, x! + radius! * Math.cos(a), y! + radius! * Math.sin(a));
    const ray = rayThrough(camera, project(camera, on));
    const toward = ray.reduce((sum, v, i) => sum + v * plane.inwards[i]!, 0);
    const share = footOf(plane, camera.centre).distanceMm / toward;
    const seen = footOf(plane, camera.centre.map((v, i) => v + share * ray[i]!) as unknown as Vec3);
    const [dx, dy] = [seen.x - guess.x, seen.y - guess.y];
    const angle = Math.atan2(dx * across[0] + dy * across[1], dx * away[0] + dy * away[1]);
    const turn = ((angle / (2 * Math.PI) + 1) % 1) * sectors - 0.5;
    const s = Math.max(0, Math.min(sectors - 1, Math.round(turn)));
    const off = Math.abs(turn - s);
    if (off < best[s]!.off)
      best[s] = { off, row: rowAt(mouthGrid, Math.hypot(dx, dy) / guess.radius) };
  }
  return believed(
    best.map(({ row }) => row),
    mouthGrid.rows,
  );
}

const beliefOf = (plane: FacePlane, face: FacePlane, [x, y, ...radii]: readonly number[]) => {
  const [rim, crests, outer] = radii.map((radius) => ({
    shares: rowsOf(plane, face, [x!, y!, radius]),
  }));
  return { rim: rim!, crests: crests!, outer: outer!, odds: 3 };
};

test('a mouth aside of its guess is found by its circles’ rows', () => {
  const belief = beliefOf(cardPlane, cardPlane, [93.8, 66.9, 10.2, 8.9, 13.5]);
  const mouth = mouthOf(camera, cardPlane, guess, belief, false);
  const [x, y] = onPlane(mouth.plane, mouth.x, mouth.y);
  expect(Math.hypot(x - 93.8, y - 66.9)).toBeLessThan(0.03);
  expect(Math.abs(mouth.rim / 10.2 - 1)).toBeLessThan(0.003);
  expect(Math.abs(mouth.crests / 8.9 - 1)).toBeLessThan(0.003);
  expect(Math.abs(mouth.outer / 13.5 - 1)).toBeLessThan(0.003);
  expect(mouth.odds).toBe(3);
});

test('a face that is turned against the plane is turned back', () => {
  // Upright, away from the camera, which stands before the card; the guess lies 12 mm above it.
  const plane: FacePlane = {
    origin: [92 + guess.x, 68, -12 - guess.y],
    right: [-1, 0, 0],
    down: [0, 0, 1],
    inwards: [0, 1, 0],
  };
  const face = turnedPlane(plane, guess.x, guess.y, 0.12);
  const belief = beliefOf(plane, face, [0.7, -0.5, 10.2, 8.9, 13.5]);
  const mouth = mouthOf(camera, plane, guess, belief, true);
  const cosine = mouth.plane.inwards.reduce((sum, v, i) => sum + v * face.inwards[i]!, 0);
  expect(Math.acos(Math.min(1, cosine))).toBeLessThan(0.008);
  expect(Math.abs(mouth.crests / 8.9 - 1)).toBeLessThan(0.005);
});
