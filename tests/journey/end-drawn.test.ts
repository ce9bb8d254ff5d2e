import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import type { Overlay, PhotoPoint } from '../../src/journey/overlay';
import { measured } from '../measured';

/** What is drawn of the seats on renders with truth; they are not photographs. */
async function overlayOf(photo: string): Promise<Overlay> {
  const bytes = new Uint8Array(await readFile(new URL(`../../fixtures/${photo}`, import.meta.url)));
  const found = await measured(bytes);
  if (found.outcome !== 'measured') throw new Error(found.refusal.reason);
  return found.overlay;
}

/** By how much the viewing ray to the thread's first turn is off the square to its axis, rad, where the truth says how
 *  the camera stood; the others are shot from nearly above. */
async function leanOf(photo: string): Promise<number> {
  const file = new URL(`../../fixtures/${photo.replace('.jpg', '.truth.json')}`, import.meta.url);
  const { camera, axis_p0: p0, axis_p1: p1 } = JSON.parse(await readFile(file, 'utf8'));
  if (!camera) return 0;
  const ray = [0, 1, 2].map((i) => p0[i] - camera[i][3]);
  const along = [0, 1, 2].map((i) => p1[i] - p0[i]);
  const dot = ray.reduce((sum, v, i) => sum + v * along[i]!, 0);
  return Math.asin(dot / Math.hypot(...ray) / Math.hypot(...along));
}

/** Half angle between the limbs of a cone that is seen so, degrees: its axis is foreshortened, and it is touched off its
 *  widest section (apparent contour of a cone under parallel projection). */
function seenAngle(deg: number, lean: number): number {
  const m = Math.tan((deg * Math.PI) / 180);
  const touched = Math.sqrt(1 - (m * Math.tan(lean)) ** 2);
  return (Math.atan(m / (touched * Math.cos(lean))) * 180) / Math.PI;
}

const minus = (a: PhotoPoint, b: PhotoPoint): PhotoPoint => [a[0] - b[0], a[1] - b[1]];

// Seat and half angle of their truth files.
test.each([
  ['photos/d21.jpg', 'cone-37', 37],
  ['photos/d13.jpg', 'cone-37', 37],
  ['photos/d05.jpg', 'cone-45', 45],
  ['ends/gz003.jpg', 'cone-30', 30],
] as const)(
  'the cone of %s is drawn ahead of its thread, at its angle, on both sides',
  async (photo, seat, deg) => {
    const { ends, axis, contactLines } = await overlayOf(photo);
    expect(ends!.filter(({ end }) => end === 0).map((one) => one.seat)).toEqual([seat]);
    const [ax, ay] = minus(axis![1], axis![0]);
    const long = Math.hypot(ax, ay);
    const along = ([x, y]: PhotoPoint) => (x * ax + y * ay) / long;
    const across = ([x, y]: PhotoPoint) => (x * ay - y * ax) / long;
    const from = (p: PhotoPoint) => minus(p, axis![0]);
    const radius = Math.abs(across(from(contactLines[0]![0])));
    const angles = ends![0]!.lines.map(([wide, narrow]) => {
      // The zone leaves out up to two and a half turns over the chamfer; nothing of the cone lies in it.
      expect(along(from(wide!))).toBeLessThan(0);
      expect(along(from(narrow!))).toBeLessThan(along(from(wide!)));
      expect(Math.abs(across(from(wide!)))).toBeLessThan(radius);
      const step = minus(wide!, narrow!);
      return (Math.atan2(across(step), along(step)) * 180) / Math.PI;
    });
    const seen = Math.abs((angles[0]! - angles[1]!) / 2);
    expect(Math.abs(seen - seenAngle(deg, await leanOf(photo)))).toBeLessThan(1.5);
    // Off the middle of the photo perspective turns both a little.
    expect(Math.abs(angles[0]! + angles[1]!)).toBeLessThan(4);
  },
  60_000,
);

test('nothing is drawn of an end of which nothing is claimed', async () => {
  expect((await overlayOf('photos/d02.jpg')).ends).toEqual([]);
}, 60_000);
