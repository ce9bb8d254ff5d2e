import { expect, test } from 'vitest';
import { rayThrough } from '../../../src/journey/2-card-pose/camera';
import { bodyBelief, mouthBelief } from '../../../src/journey/4-bore/sector-network';
import {
  bodyGrid,
  bodyPatch,
  mouthGrid,
  mouthPatch,
  ratioAt,
  rowAt,
  sectorsOf,
} from '../../../src/journey/4-bore/sector-patch';
import { cardPlane, slantedCamera } from './scene';

/** A drawn disc that hovers over the card, seen at a slant. On the card's plane it is a circle, larger by Z/(Z − h) and
 *  moved away from the camera's foot (central projection between parallel planes). */
const camera = slantedCamera(0.6);
const disc = { x: 95, y: 70, h: 18, r: 9 };
const [ex, ey, ez] = camera.centre;
const data = new Uint8Array(1000 * 800);
for (let v = 0; v < 800; v++)
  for (let u = 0; u < 1000; u++) {
    const ray = rayThrough(camera, [u, v]);
    const k = (-disc.h - ez) / ray[2];
    const out = Math.hypot(ex + k * ray[0] - disc.x, ey + k * ray[1] - disc.y);
    data[v * 1000 + u] = out < disc.r ? 60 : 190;
  }
const photo = { grey: { width: 1000, height: 800, data }, camera };
const m = ez / (ez + disc.h);
const seen = { x: ex + m * (disc.x - ex), y: ey + m * (disc.y - ey), radius: m * disc.r };

test('rows and ratios are each other’s reverse', () => {
  for (const grid of [mouthGrid, bodyGrid])
    for (const row of [0, 17.3, 79]) expect(rowAt(grid, ratioAt(grid, row))).toBeCloseTo(row, 9);
});

test('a disc above the card is a step in the row of its radius, all round', () => {
  const { values, lean } = mouthPatch(photo, cardPlane, { ...seen, radius: seen.radius / 1.2 });
  const { rows, columns } = mouthGrid;
  for (let x = 0; x < columns; x++) {
    let step = 0;
    for (let y = 1; y < rows; y++)
      if (values[(y - 1) * columns + x]! < 0 && values[y * columns + x]! >= 0) step = y - 0.5;
    expect(Math.abs(step - rowAt(mouthGrid, 1.2))).toBeLessThan(1.2);
  }
  expect(lean).toBeCloseTo(Math.hypot(seen.x - ex, seen.y - ey) / -ez, 9);
});

test('what is believed of a line adds to one in every sector, whatever is seen', () => {
  const mouth = mouthBelief(mouthPatch(photo, cardPlane, seen));
  const body = bodyBelief(bodyPatch(photo, cardPlane, seen));
  for (const [{ shares }, { rows, ...grid }] of [
    [mouth.rim, mouthGrid],
    [mouth.crests, mouthGrid],
    [mouth.outer, mouthGrid],
    [body, bodyGrid],
  ] as const) {
    expect(shares.length).toBe(rows * sectorsOf({ rows, ...grid }));
    for (let s = 0; s < shares.length / rows; s++)
      expect(shares.subarray(s * rows, (s + 1) * rows).reduce((a, b) => a + b)).toBeCloseTo(1, 9);
  }
  expect(Number.isFinite(mouth.odds)).toBe(true);
});
