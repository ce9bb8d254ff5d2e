import { describe, expect, it } from 'vitest';
import { posed } from '../../src/journey/2-card-pose/camera';
import { gaussianResponse } from '../../src/journey/2-card-pose/edge-response';
import { flatAxis, grazing } from '../../src/journey/4-thread-signal/axis-frame';
import { levelRun } from '../../src/journey/5-end/base-place';
import { type ConePlace, coneAlong } from '../../src/journey/5-end/cone-place';
import { limbPoint } from '../../src/journey/5-end/limb-point';
import type { NosePoint } from '../../src/journey/5-measurement/nose-cone';
import type { EndShows } from '../../src/journey/5-measurement/thread-measurement';
import {
  baseLines,
  coneLines,
  endFeatures,
  type ShownFeature,
} from '../../src/journey/end-features';
import type { PhotoPoint } from '../../src/journey/overlay';
import type { Estimate } from '../../src/quantity/estimate';

/** 300 mm over the card, looking straight down on (92, 68), or from aside along the axis. */
const above = posed({
  fPx: 3000,
  cx: 2000,
  cy: 1500,
  k1: 0,
  rotation: [0, 0, 0],
  translation: [-92, -68, 300],
});
const aslant = posed({ ...above, k1: -0.02, rotation: [0.05, 0.3, 0.2] });
/** Along the card's x, 10 mm above it, s = 0 under the first camera. */
const frame = flatAxis([92, 68, -10], 1, 0);
const rad = Math.PI / 180;

const cone = (halfAngleDeg: number): ConePlace => {
  const apexS = -4 - 6 / Math.tan(halfAngleDeg * rad);
  return { halfAngleDeg, apexS: { left: apexS, right: apexS }, narrowMm: 4, wideMm: 6 };
};
const near = (point: PhotoPoint, [x, y]: PhotoPoint, px: number) => {
  expect(Math.hypot(point[0] - x, point[1] - y)).toBeLessThan(px);
};

describe('the limb of what lies about an axis', () => {
  it.each([
    ['from above', above],
    ['aslant', aslant],
  ])('is where the viewing ray grazes it, %s', (_, camera) => {
    for (const at of [
      { s: -6, r: 5 },
      { s: 8, r: -9 },
      { s: 0, r: 0.5 },
    ]) {
      const met = grazing(camera, frame, limbPoint(camera, frame, at));
      expect(met.s).toBeCloseTo(at.s, 6);
      expect(met.r).toBeCloseTo(at.r, 6);
    }
  });
});

describe('the sides of a cone', () => {
  it('run from its wide end to its narrow one at the claimed angle, left and right alike', () => {
    const [left, right] = coneLines({ camera: above, frame }, cone(37));
    // 10 px per mm on the card, 300/290 of it on the axis; its limb is hardly further out.
    const px = 3000 / 290;
    near(left![0]!, [2000 - 4 * px, 1500 - 6 * px], 0.5);
    near(left![1]!, [2000 - (4 + 2 / Math.tan(37 * rad)) * px, 1500 - 4 * px], 0.5);
    near(right![0]!, [left![0]![0], 3000 - left![0]![1]], 0.02);
    const [dx, dy] = [left![0]![0] - left![1]![0], left![1]![1] - left![0]![1]];
    expect(Math.atan2(dy, dx) / rad).toBeCloseTo(37, 0);
  });

  it.each([
    [30, above],
    [45, above],
    [37, aslant],
    [45, aslant],
  ])('are the tangents of the cone of %d° itself', (deg, camera) => {
    const place = cone(deg);
    const m = Math.tan(deg * rad);
    // The viewing ray comes nowhere further into the cone than a hundredth of a millimetre, and touches it.
    for (const line of coneLines({ camera, frame }, place))
      for (const point of line) {
        const inside = Math.max(...raySamples(camera, point).map(depthIn(place.apexS.left, m)));
        expect(Math.abs(inside)).toBeLessThan(0.02);
      }
  });

  it('are found where an outline shows them, among other edges', () => {
    const place = cone(37);
    const points = outlineOf(place, 0.02).concat(
      Array.from(
        { length: 40 },
        (_, i): NosePoint => ({ side: 'left', s: -9 + i / 8, r: 3, slope: 0 }),
      ),
    );
    const found = coneAlong(points, 37, 0.1)!;
    for (const side of ['left', 'right'] as const)
      expect(Math.abs(found.apexS[side] - place.apexS[side])).toBeLessThan(0.1);
    expect(found.wideMm).toBeCloseTo(6, 0);
    expect(found.narrowMm).toBeCloseTo(4, 0);
  });

  it('are not found on one side alone', () => {
    const oneSide = outlineOf(cone(37), 0.02).filter(({ side }) => side === 'left');
    expect(coneAlong(oneSide, 37, 0.1)).toBeNull();
    expect(coneAlong([], 37, 0.1)).toBeNull();
  });
});

/** A thread of 2 mm pitch whose first whole turn is at 0, on a photo that shows nothing at all. */
const thread = {
  frame,
  zone: { fromS: 0, toS: 14 },
  hexHalfWidthMm: 14,
  fit: { crestRadiusMm: 9, halfTaper: 0, middleS: 7, pitchMm: 2 },
};
const bare = {
  grey: { width: 4000, height: 3000, data: new Uint8Array(4000 * 3000).fill(128) },
  camera: above,
  response: gaussianResponse(1),
  mmPerPx: 0.1,
  field: 'light' as const,
};
const looks = (nose: keyof EndShows['nose'], base: keyof EndShows['base']): EndShows => ({
  nose: { none: 0, 'cone-30': 0, 'cone-37': 0, 'cone-45': 0, [nose]: 1 },
  base: { none: 0, 'o-ring': 0, shoulder: 0, [base]: 1 },
});
const half = (own: number) => ({ ...looks('none', 'none').nose, none: 1 - own, 'cone-37': own });

describe('what is drawn of an end', () => {
  const drawn = (endShows: EndShows, noseHalfAngleDeg: Estimate | null = null) =>
    endFeatures(bare, thread, { noseHalfAngleDeg, endShows });

  it('is what the page claims, and nothing else', () => {
    expect(drawn(looks('none', 'none'))).toEqual([]);
    expect(drawn({ ...looks('none', 'none'), nose: half(0.5) })).toEqual([]);
    expect(drawn({ ...looks('none', 'none'), nose: half(0.99) })[0]!.seat).toBe('cone-37');
    expect(drawn(looks('cone-45', 'none')).map(({ seat }) => seat)).toEqual(['cone-45']);
    expect(drawn(looks('none', 'o-ring')).map(({ seat }) => seat)).toEqual(['o-ring-at-hex']);
    expect(endFeatures(bare, thread, { noseHalfAngleDeg: null })).toEqual([]);
    const angle = { value: 37.2, u: 0.6 };
    expect(endFeatures(bare, thread, { noseHalfAngleDeg: angle })[0]!.seat).toBe('cone-37');
  });

  it('lies where such ends usually have it, where the outline does not show it', () => {
    const px = 3000 / 290;
    const [{ lines: sidesOfCone }] = drawn(looks('cone-37', 'none')) as [ShownFeature];
    // Ahead of the first whole turn, below the crests, narrower towards the free end.
    const [wide, narrow] = sidesOfCone[0] as [PhotoPoint, PhotoPoint];
    expect(wide[0]).toBeLessThan(2000);
    expect(wide[1]).toBeGreaterThan(1500 - 9 * px);
    expect(narrow[0]).toBeLessThan(wide[0]);
    expect(narrow[1]).toBeGreaterThan(wide[1]);
    const [{ lines: limbs }] = drawn(looks('none', 'o-ring')) as [ShownFeature];
    const [from, to] = [limbs[0]![1]!, limbs[0]![2]!];
    // Beyond the last whole turn, as wide as rings for this pitch are: 2.8 mm.
    expect(from[0]).toBeGreaterThan(2000 + 14 * px);
    expect((to[0] - from[0]) / px).toBeCloseTo(2.8, 1);
    expect(from[1]).toBeLessThan(1500 - 9 * px);
  });
});

describe('a ring or a shoulder', () => {
  it('is drawn at both limbs, turned in at its ends', () => {
    const [left, right] = baseLines({ camera: above, frame }, { fromS: 6, toS: 8, radiusMm: 9 });
    const px = 3000 / 290;
    near(left![1]!, [2000 + 6 * px, 1500 - 9 * px], 1);
    near(left![2]!, [2000 + 8 * px, 1500 - 9 * px], 1);
    near(right![1]!, [2000 + 6 * px, 1500 + 9 * px], 1);
    expect(left![0]![1]).toBeGreaterThan(left![1]![1] + px);
    expect(left![3]![0]).toBeCloseTo(left![2]![0], 0);
  });

  it('lies where both sides run level', () => {
    const both = (s: number, r: number): NosePoint[] =>
      (['left', 'right'] as const).map((side) => ({ side, s, r, slope: 0 }));
    const points = Array.from({ length: 60 }, (_, i) => 5 + i / 10).flatMap((s) =>
      both(s, s < 7.5 ? 6 + (s - 5) : s < 9.5 ? 9.05 : 12),
    );
    const found = levelRun(
      points.filter(({ r }) => r < 10),
      0.2,
      0.4,
    )!;
    expect(found.fromS).toBeCloseTo(7.5, 1);
    expect(found.toS).toBeCloseTo(9.4, 1);
    expect(found.radiusMm).toBeCloseTo(9.05, 2);
    expect(
      levelRun(
        points.filter(({ side }) => side === 'left'),
        0.2,
        0.4,
      ),
    ).toBeNull();
  });
});

/** Outline of a cone seen from straight above, mm, with a little scatter. */
function outlineOf({ apexS, halfAngleDeg, narrowMm, wideMm }: ConePlace, scatterMm: number) {
  const m = Math.tan(halfAngleDeg * rad);
  return (['left', 'right'] as const).flatMap((side) =>
    Array.from({ length: 60 }, (_, i): NosePoint => {
      const r = narrowMm + ((wideMm - narrowMm) * i) / 59;
      return { side, s: apexS[side] + r / m, r: r + scatterMm * Math.sin(7 * i), slope: 0 };
    }),
  );
}

type Point = readonly [number, number, number];

/** Card points along a viewing ray about the height of the axis. */
function raySamples(camera: typeof above, [u, v]: PhotoPoint): Point[] {
  const [xd, yd] = [(u - camera.cx) / camera.fPx, (v - camera.cy) / camera.fPx];
  let d = 1;
  for (let i = 0; i < 20; i++) d = 1 + (camera.k1 * (xd * xd + yd * yd)) / (d * d);
  const [x, y] = [xd / d, yd / d];
  const { R, centre } = camera;
  const ray = [0, 1, 2].map((k) => R[k]! * x + R[3 + k]! * y + R[6 + k]!);
  return Array.from({ length: 4001 }, (_, i) => {
    const z = -22 + (24 * i) / 4000;
    const t = (z - centre[2]) / ray[2]!;
    return [centre[0] + t * ray[0]!, centre[1] + t * ray[1]!, z];
  });
}

/** How deep inside the cone's surface a point lies, mm across it. */
const depthIn =
  (apexS: number, m: number) =>
  ([x, y, z]: Point) =>
    (m * (x - 92 - apexS) - Math.hypot(y - 68, z + 10)) / Math.hypot(1, m);
