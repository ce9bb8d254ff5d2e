import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { closeLines } from '../../../src/journey/4-limbs/close-lines';
import { findThread } from '../../../src/journey/4-limbs/find-thread';
import { hexHeight } from '../../../src/journey/4-limbs/hex-height';
import { recentred } from '../../../src/journey/4-thread-signal/axis-moves';
import { foundFitting } from '../found-fitting';

/** A rendered photo of known geometry, which the networks have not learnt from. */
const folder = new URL('../../../fixtures/photos/', import.meta.url);
const truth = JSON.parse(readFileSync(new URL('d11.truth.json', folder), 'utf8'));

async function seated() {
  const { grey, reference, fitting } = await foundFitting('photos/d11.jpg', 1e-3);
  const seat = findThread(grey, reference, fitting, null);
  if (!seat.ok) throw new Error(seat.reason);
  return { photo: { grey, camera: reference.camera }, seat: seat.value };
}

test('a close look puts a moved, turned and swollen thread back where it lies', async () => {
  const { photo, seat } = await seated();
  const middle = (seat.zone.fromS + seat.zone.toS) / 2;
  const anywhere = { value: 0, u: 0.05 * seat.crests.radiusMm };
  const alone = closeLines(photo, seat, anywhere);
  const [offMm, turned] = [0.12, 0.006];
  const swollen = {
    ...seat,
    frame: recentred(photo.camera, seat.frame, middle, offMm, turned),
    crests: { ...seat.crests, radiusMm: 1.02 * seat.crests.radiusMm },
  };
  const moved = closeLines(photo, swollen, anywhere);
  if (!alone || !moved) throw new Error('nothing seen');
  expect(Math.abs(moved.radiusMm / alone.radiusMm - 1)).toBeLessThan(0.004);
  expect(Math.abs(moved.offsetMm - (alone.offsetMm - offMm))).toBeLessThan(0.04);
  expect(Math.abs(moved.turn - (alone.turn - turned))).toBeLessThan(0.004);
  const trueRadiusMm = (truth.crest_major_at_start_mm + truth.crest_major_at_end_mm) / 4;
  expect(Math.abs(alone.radiusMm / trueRadiusMm - 1)).toBeLessThan(0.015);
  expect(Math.abs(2 * alone.halfTaper - truth.taper)).toBeLessThan(0.01);
});

test('the hex beside a thread tells how far an axis has been moved', async () => {
  const { photo, seat } = await seated();
  const { radiusMm } = seat.crests;
  const middle = (seat.zone.fromS + seat.zone.toS) / 2;
  const offMm = 0.12 * radiusMm;
  const frame = recentred(photo.camera, seat.frame, middle, offMm, 0);
  const hexAbout = (about: typeof frame) =>
    hexHeight(photo.grey, photo.camera, about, seat.zone, radiusMm);
  const [alone, moved] = [hexAbout(seat.frame), hexAbout(frame)];
  expect(alone.share).toBeGreaterThan(0.5);
  expect(Math.abs(moved.offsetMm - (alone.offsetMm - offMm))).toBeLessThan(0.03 * radiusMm);
});
