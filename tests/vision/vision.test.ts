import { beforeAll, expect, test } from 'vitest';
import { loadNodeVision } from '../../src/cli/node-vision';
import { isBlack } from '../../src/scale-card/dictionary';
import type { GreyImage } from '../../src/vision/grey-image';
import { rescaleCoordinate } from '../../src/vision/pixel-scale';
import type { Vision } from '../../src/vision/vision';

let vision: Vision;
beforeAll(async () => {
  vision = await loadNodeVision();
});

function draw(width: number, height: number, at: (x: number, y: number) => number): GreyImage {
  const data = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) data[y * width + x] = at(x, y);
  }
  return { width, height, data };
}

/** Two rectangles, 10 × 10 at (4, 5) and 14 × 7 at (21, 13), and a single pixel. */
const twoRectangles = draw(40, 30, (x, y) =>
  (x >= 4 && x < 14 && y >= 5 && y < 15) ||
  (x >= 21 && x < 35 && y >= 13 && y < 20) ||
  (x === 38 && y === 2)
    ? 255
    : 0,
);

/** One marker with modules of 10 px, its outer edges at x = 29.5 … 89.5, y = 19.5 … 79.5. */
const marker = (id: number) =>
  draw(130, 110, (x, y) => {
    const column = Math.floor((x - 30) / 10);
    const row = Math.floor((y - 20) / 10);
    const inside = column >= 0 && column < 6 && row >= 0 && row < 6;
    return inside && isBlack(id, row, column) ? 20 : 230;
  });

const corners = [
  [29.5, 19.5],
  [89.5, 19.5],
  [89.5, 79.5],
  [29.5, 79.5],
];

test.each([0, 17, 33])('finds marker %i with its corners in printed order', (id) => {
  const { markers } = vision.detectMarkers(marker(id));
  expect(markers.map((found) => found.id)).toEqual([id]);
  markers[0].corners.forEach(([x, y], i) => {
    expect(Math.hypot(x - corners[i][0], y - corners[i][1])).toBeLessThan(1.5);
  });
});

test('a mirrored marker is found only when asked for, and reported where it is', () => {
  const { width, height, data } = marker(5);
  const mirrored = draw(width, height, (x, y) => data[y * width + width - 1 - x]);
  expect(vision.detectMarkers(mirrored).markers).toHaveLength(0);
  const [found] = vision.detectMarkers(mirrored, { mirrored: true }).markers;
  expect(found.id).toBe(5);
  found.corners.forEach(([x, y], i) => {
    expect(Math.hypot(x - (width - 1 - corners[i][0]), y - corners[i][1])).toBeLessThan(1.5);
  });
});

test('reduction averages areas, and rescaleCoordinate says where pixels came from', () => {
  const ramp = draw(40, 20, (x) => 5 * x);
  const small = vision.resize(ramp, 20, 10);
  for (let x = 0; x < 20; x++) {
    // On a ramp the average lies at the middle of the area: 2x + 0.5.
    expect(rescaleCoordinate(x, 20, 40)).toBe(2 * x + 0.5);
    expect(Math.abs(small.data[x] - 5 * rescaleCoordinate(x, 20, 40))).toBeLessThanOrEqual(0.5);
  }
});

test('a blurred point keeps its place and weighs what a Gaussian of that width does', () => {
  const blurred = vision.blur(
    draw(41, 41, (x, y) => (x === 20 && y === 20 ? 255 : 0)),
    2,
  );
  // 255 / (2πσ²); OpenCV's 8-bit kernel is good to one level
  expect(Math.abs(blurred.data[20 * 41 + 20] - 255 / (2 * Math.PI * 4))).toBeLessThan(1);
  expect(blurred.data[20 * 41 + 17]).toBe(blurred.data[20 * 41 + 23]);
});

test('components come largest first, with boxes; labels mark their pixels', () => {
  const { components, labels } = vision.components(twoRectangles, 10);
  expect(components.map(({ areaPx, bbox }) => ({ areaPx, bbox }))).toEqual([
    { areaPx: 100, bbox: { x: 4, y: 5, width: 10, height: 10 } },
    { areaPx: 98, bbox: { x: 21, y: 13, width: 14, height: 7 } },
  ]);
  expect(labels[16 * 40 + 27]).toBe(components[1].label);
  expect(labels[0]).toBe(0);
});

test('closing fills what the disc does not fit into, and an empty or full mask stays as it is', () => {
  const holed = draw(40, 30, (x, y) => (x === 8 && y === 9 ? 0 : twoRectangles.data[y * 40 + x]));
  expect(vision.close(holed, 1).data[9 * 40 + 8]).toBe(255);
  for (const value of [0, 255]) {
    const uniform = draw(10, 10, () => value);
    expect(vision.close(uniform, 3)).toEqual(uniform);
  }
});

test.each([
  [60, 50],
  [64, 21],
  [97, 30],
  [3, 40],
])('closing is that of a disc, at any radius: %d × %d px', (across, down) => {
  const speckled = draw(across, down, (x, y) =>
    (x * 7919 + y * 104729 + x * y * 31) % 11 < 5 ? 255 : 0,
  );
  /** The definition, straight: is a pixel of this value within the radius? */
  const spread = ({ width, height, data }: GreyImage, value: number, radius: number) =>
    draw(width, height, (x, y) => {
      for (let v = Math.max(0, y - radius); v <= Math.min(height - 1, y + radius); v++) {
        for (let u = Math.max(0, x - radius); u <= Math.min(width - 1, x + radius); u++) {
          const inDisc = (u - x) ** 2 + (v - y) ** 2 <= radius ** 2;
          if (inDisc && data[v * width + u] === value) return value;
        }
      }
      return 255 - value;
    });
  for (const radius of [1, 2, 5, 40]) {
    const closed = spread(spread(speckled, 255, radius), 0, radius);
    expect(vision.close(speckled, radius)).toEqual(closed);
  }
});

test('OpenCV refusing an argument is an error that says why', () => {
  expect(() => vision.resize(twoRectangles, 0, 0)).toThrow(/OpenCV/);
});

test('the heap does not grow from call to call, not even by calls that fail', () => {
  const image = draw(1600, 1200, (x, y) => (x * 7 + y * 13) & 255);
  const round = () => {
    vision.detectMarkers(vision.resize(image, 800, 600));
    vision.components(image, 50);
    vision.blur(image, 2);
    expect(() => vision.resize(image, -1, 5)).toThrow();
  };
  for (let i = 0; i < 3; i++) round();
  const before = vision.heapBytes();
  for (let i = 0; i < 25; i++) round();
  expect(vision.heapBytes()).toBe(before);
});
