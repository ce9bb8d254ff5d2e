import { expect, test } from 'vitest';
import { project, rayThrough } from '../../../src/journey/2-card-pose/camera';
import { baseShares, standingView } from '../../../src/journey/4-bore/base-line';
import { heightOf } from '../../../src/journey/4-bore/body-height';
import { onPlane } from '../../../src/journey/4-bore/face-plane';
import {
  bodyGrid,
  rowAt,
  sectorsOf,
  widestAzimuth,
} from '../../../src/journey/4-bore/sector-patch';
import { believed, cardPlane, slantedCamera } from './scene';

const camera = slantedCamera(0.6);
const [eyeX, eyeY, eyeZ] = camera.centre;
const sectors = sectorsOf(bodyGrid);
const azimuths = Float64Array.from(
  { length: sectors },
  (_, s) => widestAzimuth * ((2 * (s + 0.5)) / sectors - 1),
);

/** A hex nut of 24 mm across flats and its mouth's edge, 18 mm above the card, as the card's plane shows that. */
const heightMm = 18;
const scale = -eyeZ / (-eyeZ - heightMm);
const outer = {
  x: eyeX + scale * (95 - eyeX),
  y: eyeY + scale * (70 - eyeY),
  radius: scale * 11.7,
};
const view = standingView(camera, cardPlane, outer);
const depth = heightMm * scale;

test('a hex’s base is seen on the ray that meets the card at its outline', () => {
  const shares = baseShares(view, { half: scale * 12, turn: 0.3 }, azimuths);
  for (const [s, azimuth] of azimuths.entries()) {
    const ratio = ((depth + view.distanceMm) / shares[s]! - view.distanceMm) / outer.radius;
    // On the cylinder below the mouth, put where the part is.
    const [c, t] = [-Math.cos(azimuth), Math.sin(azimuth)];
    const [x, y] = onPlane(
      cardPlane,
      outer.x + outer.radius * (c * view.away[0] + t * view.across[0]),
      outer.y + outer.radius * (c * view.away[1] + t * view.across[1]),
    );
    const ray = rayThrough(camera, project(camera, [x, y, ratio * outer.radius]));
    const k = -eyeZ / ray[2];
    const on = [eyeX + k * ray[0] - 95, eyeY + k * ray[1] - 70] as const;
    const across = Array.from({ length: 6 }, (_, i) => {
      const normal = 0.3 + (i * Math.PI) / 3;
      return on[0] * Math.cos(normal) + on[1] * Math.sin(normal);
    });
    expect(Math.max(...across)).toBeCloseTo(12, 6);
  }
});

test.each([
  ['hex', 0.3],
  ['round', null],
] as const)('the height of a %s body is told by where its side ends', (_, turn) => {
  const shares = baseShares(view, { half: scale * 12, turn }, azimuths);
  const rows = Array.from(shares, (share) => {
    const ratio = ((depth + view.distanceMm) / share - view.distanceMm) / outer.radius;
    return ratio > 0 ? rowAt(bodyGrid, ratio) : 0;
  });
  const found = heightOf(view, { shares: believed(rows, bodyGrid.rows) });
  expect(Math.abs(found.heightMm - heightMm)).toBeLessThan(0.5);
  expect(found.uMm).toBeLessThan(0.6);
});
