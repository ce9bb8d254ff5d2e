import { describe, expect, it } from 'vitest';
import { plateFrom } from '../../src/handover/crop-drawing';
import { threadCrop } from '../../src/handover/thread-crop';
import type { EndFeature, Overlay, PhotoPoint } from '../../src/journey/overlay';

/** A thread 200 px long and 100 px wide at (500, 400), turned by an angle; pitch 20 px. */
function turned(angle: number): Overlay {
  const at = (x: number, y: number): PhotoPoint => [
    500 + x * Math.cos(angle) - y * Math.sin(angle),
    400 + x * Math.sin(angle) + y * Math.cos(angle),
  ];
  return {
    widthPx: 1000,
    heightPx: 800,
    markers: [],
    reference: [],
    outline: [],
    axis: [at(0, 0), at(200, 0)],
    contactLines: [
      [at(0, -50), at(200, -50)],
      [at(0, 50), at(200, 50)],
    ],
    crests: Array.from({ length: 10 }, (_, i) => ({
      at: at(10 + 20 * i, -50),
      side: 'left' as const,
      axialMm: i,
    })),
  };
}

describe('the crop of a thread', () => {
  for (const angle of [0, 0.4, 2, -2.8])
    it(`lies level with its free end to the left, turned by ${angle}`, () => {
      const overlay = turned(angle);
      const crop = threadCrop(overlay)!;
      const [a, b, c, d, e, f] = crop.matrix;
      const place = ([x, y]: PhotoPoint) => [a * x + c * y + e, b * x + d * y + f];
      const [free, hex] = overlay.axis!.map(place);
      expect(free[1]).toBeCloseTo(hex[1], 6);
      expect(free[0]).toBeLessThan(hex[0]);
      for (const point of overlay.contactLines.flat()) {
        const [x, y] = place(point);
        expect(x).toBeGreaterThan(0);
        expect(x).toBeLessThan(crop.width);
        expect(y).toBeGreaterThan(0);
        expect(y).toBeLessThan(crop.height);
      }
      // The diameter's dimension line spans the contact lines, the pitch's arrows one pitch.
      const scale = Math.hypot(a, b);
      const [up, down, one, next] = crop.arrows;
      expect(down.at[1] - up.at[1]).toBeCloseTo(100 * scale, 6);
      expect(next.at[0] - one.at[0]).toBeCloseTo(20 * scale, 6);
    });

  it('needs the drawing of what was found', () => {
    expect(threadCrop(null)).toBeNull();
    expect(threadCrop({ ...turned(0), axis: null })).toBeNull();
    expect(threadCrop({ ...turned(0), crests: [] })!.arrows).toHaveLength(2);
  });

  const features: readonly [string, EndFeature][] = (
    [
      ['cone-37', [-10, -70], [40, 20]],
      ['o-ring-at-hex', [205, 235], [60, 60]],
    ] as const
  ).map(([seat, [x0, x1], [y0, y1]]) => [
    seat,
    {
      end: 0,
      seat,
      lines: [-1, 1].map((side): PhotoPoint[] => [
        [500 + x0, 400 + side * y0],
        [500 + x1, 400 + side * y1],
      ]),
    },
  ]);

  it.each(features)('shows all of a %s, its name clear of the dimensions', (_, feature) => {
    const ends = [feature, { ...feature, end: 1 }];
    const crop = threadCrop({ ...turned(0), ends }, ends)!;
    // The other end is not in this picture.
    expect(crop.features).toHaveLength(1);
    const [{ lines, plate, leader }] = crop.features as [(typeof crop.features)[0]];
    for (const [x, y] of [...lines.flat(), ...leader]) {
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(crop.width);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(crop.height);
    }
    // The longest words of the four languages, and figures: 8.2 units a letter, 20 high.
    const boxes = [
      { ...plate, width: 'Junta tórica.'.length * 8.2 + 6 },
      ...crop.plates.map((one) => ({ ...one, width: '⌀ 17.213 ± 0.104 mm'.length * 8.2 + 6 })),
    ].map((one) => ({ x: plateFrom(one, one.width, crop), y: one.at[1] - 10, ...one }));
    const [name, ...others] = boxes;
    const width = feature.seat === 'cone-37' ? 'Kegel 37°'.length * 8.2 + 6 : name!.width;
    for (const other of others) {
      const apart =
        plateFrom(plate, width, crop) + width <= other.x ||
        other.x + other.width <= plateFrom(plate, width, crop) ||
        Math.abs(name!.y - other.y) >= 20;
      expect(apart).toBe(true);
    }
  });

  it('keeps the picture as it is when what was drawn is denied', () => {
    const [[, cone]] = features as [(typeof features)[0]];
    const overlay = { ...turned(0), ends: [cone] };
    const { features: none, ...denied } = threadCrop(overlay)!;
    const { features: one, ...drawn } = threadCrop(overlay, [cone])!;
    expect(denied).toEqual(drawn);
    expect([none.length, one.length]).toEqual([0, 1]);
  });
});
