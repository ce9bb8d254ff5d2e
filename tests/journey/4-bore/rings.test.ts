import { expect, test } from 'vitest';
import { loadNodeVision } from '../../../src/cli/node-vision';
import { posed, rayThrough } from '../../../src/journey/2-card-pose/camera';
import { planeView } from '../../../src/journey/4-bore/face-plane';
import { crestsBehind } from '../../../src/journey/4-bore/mouth-plane';
import { ringEdges } from '../../../src/journey/4-bore/ring-edges';
import { findRings } from '../../../src/journey/4-bore/rings';

/** A drawn disc that hovers over the card, seen at a slant: on the card's plane it is a circle, larger by
 *  Z/(Z − h) and moved away from the camera's foot (central projection between parallel planes). */
test('a disc above the card is a ring on the card’s plane, by central projection', async () => {
  const tilt = 0.6;
  const camera = posed({
    fPx: 1400,
    cx: 500,
    cy: 400,
    k1: 0,
    rotation: [tilt, 0, 0],
    translation: [-92, -68 * Math.cos(tilt), 300 - 68 * Math.sin(tilt)],
  });
  const disc = { x: 95, y: 70, h: 18, r: 9 };
  const data = new Uint8Array(1000 * 800);
  const [ex, ey, ez] = camera.centre;
  for (let v = 0; v < 800; v++)
    for (let u = 0; u < 1000; u++) {
      let covered = 0;
      for (let part = 0; part < 16; part++) {
        const within = [((part % 4) - 1.5) / 4, (Math.floor(part / 4) - 1.5) / 4] as const;
        const ray = rayThrough(camera, [u + within[0], v + within[1]]);
        const k = (-disc.h - ez) / ray[2];
        const out = Math.hypot(ex + k * ray[0] - disc.x, ey + k * ray[1] - disc.y);
        if (out < disc.r) covered++;
      }
      data[v * 1000 + u] = 190 - (130 * covered) / 16;
    }
  const plane = {
    origin: [65, 40, 0],
    right: [1, 0, 0],
    down: [0, 1, 0],
    inwards: [0, 0, 1],
  } as const;
  const grey = { width: 1000, height: 800, data };
  const size = { widthMm: 70, heightMm: 70 };
  const edges = ringEdges(planeView(grey, camera, plane, size, 5), await loadNodeVision());
  const search = { fromX: 0, toX: 70, fromY: 0, toY: 70, fromRadius: 4, toRadius: 20 };
  const [ring] = findRings(edges, search, 1);
  const m = ez / (ez + disc.h);
  // Within a pixel of the view.
  expect(Math.abs(ring!.radius - m * disc.r)).toBeLessThan(0.2);
  expect(Math.abs(ring!.x + 65 - (ex + m * (disc.x - ex)))).toBeLessThan(0.2);
  expect(Math.abs(ring!.y + 40 - (ey + m * (disc.y - ey)))).toBeLessThan(0.2);
  expect(ring!.share).toBeGreaterThan(0.8);
});

/** M20×1.5 chamfered to 1.025 d: a rim of 20.5 mm lies before crests of 18.376 mm (ISO 965-1, D1 of M20×1.5, from
 *  memory). */
test('crests behind a rim are those of the tables, to the depth that 55° and 60° share', () => {
  expect(Math.abs(2 * crestsBehind(10.25, 1.5) - 18.376)).toBeLessThan(0.15);
});
