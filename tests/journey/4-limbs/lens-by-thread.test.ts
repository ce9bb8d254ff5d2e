import { readFile } from 'node:fs/promises';
import { beforeAll, describe, expect, test } from 'vitest';
import { nodeDecoders } from '../../../src/cli/node-decoders';
import { loadNodeVision } from '../../../src/cli/node-vision';
import type { Photo } from '../../../src/journey/1-photo/photo';
import { readPhoto } from '../../../src/journey/1-photo/read-photo';
import { findReference } from '../../../src/journey/2-reference/find-reference';
import type { Reference } from '../../../src/journey/2-reference/reference';
import { findFitting } from '../../../src/journey/3-find/find-fitting';
import { findThread } from '../../../src/journey/4-limbs/find-thread';
import { bendDensity, seatedAgain } from '../../../src/journey/4-limbs/lens-by-thread';
import { defaultOptions } from '../../../src/journey/identification';
import type { Vision } from '../../../src/vision/vision';

const print = { x: 1, y: 1, u: 0.002 };
let vision: Vision;

async function photoOf(name: string): Promise<Photo> {
  const bytes = new Uint8Array(await readFile(`fixtures/${name}.jpg`));
  const photo = await readPhoto(new AbortController().signal, bytes, nodeDecoders);
  if (!photo.ok) throw new Error(photo.reason);
  return photo.value;
}

function through(photo: Photo, f35Mm: number): Reference {
  const found = findReference({ ...photo, f35Mm }, vision, print, defaultOptions.reference);
  if (!found.ok) throw new Error(found.reason);
  return found.value;
}

function seatIn(photo: Photo, reference: Reference) {
  const fitting = findFitting(photo.grey, reference, vision);
  if (!fitting.ok) throw new Error(fitting.reason);
  const seat = findThread(photo.grey, reference, fitting.value, null);
  if (!seat.ok) throw new Error(seat.reason);
  return seat.value;
}

beforeAll(async () => {
  vision = await loadNodeVision();
});

// Renders with known geometry, shot within 1° of straight above: over the card, and beside a sheet of A4.
describe('of two lenses that the reference leaves as likely, one twice as long as the other', () => {
  test.each([
    ['photos/d01', 52, 26],
    ['references/gs002', 26, 52],
  ])(
    'the thread of %s tells the true one (%s mm, not %s)',
    async (name, rightMm, wrongMm) => {
      const photo = await photoOf(name);
      const [right, wrong] = [rightMm, wrongMm].map((f35Mm) => through(photo, f35Mm)) as [
        Reference,
        Reference,
      ];
      expect(wrong.camera.fPx / right.camera.fPx).toSatisfy(
        (ratio: number) => Math.abs(Math.log(ratio)) > 0.5,
      );
      // Begun under the wrong camera.
      const lenses = [wrong, right].map((fit) => ({ fit, share: 0.5 }));
      const seat = seatIn(photo, wrong);
      const told = seatedAgain(photo.grey, { ...wrong, lenses }, seat);
      expect(Math.abs(told.reference.camera.fPx / right.camera.fPx - 1)).toBeLessThan(0.1);
      const truth = seatIn(photo, right);
      expect(Math.abs(told.seat.pitchMm / truth.pitchMm - 1)).toBeLessThan(0.003);
      expect(Math.abs(seat.pitchMm / truth.pitchMm - 1)).toBeGreaterThan(0.01);
    },
    60_000,
  );
});

test('where the focal length is known the camera stays, and the thread is seated once more in its place', async () => {
  const photo = await photoOf('photos/d01');
  const reference = through(photo, 52);
  const seat = seatIn(photo, reference);
  const told = seatedAgain(photo.grey, reference, seat);
  expect(told.reference).toBe(reference);
  // Pitch and major diameter of d01's truth, mm.
  const truth = { pitchMm: 1.5875, majorMm: 17.3192 };
  expect(Math.abs(told.seat.pitchMm / truth.pitchMm - 1)).toBeLessThan(0.006);
  expect(Math.abs((2 * told.seat.crests.radiusMm) / truth.majorMm - 1)).toBeLessThan(0.01);
  const again = seatedAgain(photo.grey, reference, told.seat).seat;
  expect(again.crests.radiusMm / told.seat.crests.radiusMm).toBeCloseTo(1, 2);
}, 60_000);

test('a bend tells less where the view leans along the axis', () => {
  const odds = (lean: number) => bendDensity(0, lean) / bendDensity(0.1, lean);
  expect(odds(0)).toBeGreaterThan(20 * odds(0.4));
  expect(odds(0.4)).toBeGreaterThan(1);
});
