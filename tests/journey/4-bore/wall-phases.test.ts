import { readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { findBore, mouthGuesses } from '../../../src/journey/4-bore/find-bore';
import type { PlacedBore } from '../../../src/journey/4-bore/placed-bore';
import { wallPatch } from '../../../src/journey/4-bore/wall-patch';
import { wallPitch } from '../../../src/journey/4-bore/wall-phases';
import type { PosedPhoto } from '../../../src/journey/4-thread-signal/posed-photo';
import { foundFitting } from '../found-fitting';

/** A render of known geometry, mouth up. */
const folder = new URL('../../../fixtures/female/', import.meta.url);
const truth = JSON.parse(readFileSync(new URL('gf022.truth.json', folder), 'utf8'));

let photo: PosedPhoto;
let found: PlacedBore;

beforeAll(async () => {
  const { grey, reference, fitting } = await foundFitting('female/gf022.jpg');
  photo = { grey, camera: reference.camera };
  const { usual, others } = mouthGuesses(photo.camera, fitting);
  const placed = findBore(photo, [...usual, ...others]);
  if (!placed) throw new Error('no bore');
  found = placed;
}, 60_000);

test.each([-0.012, 0.012])(
  'crests on the wall draw a pitch that is off by %f towards the true one',
  (off) => {
    const { seat, scale } = found;
    const pitchMm = (truth.pitch_mm / scale) * (1 + off);
    const drawn = wallPitch(photo, seat.bore, seat.window, { pitchMm, hand: 'right' });
    if (!drawn) throw new Error('nothing seen');
    expect(Math.abs((drawn.value * scale) / truth.pitch_mm - 1)).toBeLessThan(0.006);
    expect(drawn.u / drawn.value).toBeLessThan(0.006);
  },
);

test('of a bore that is looked into along its axis no wall is seen', () => {
  const { bore } = found.seat;
  const { centre } = photo.camera;
  const inwards = bore.mouth.map((v, i) => v - centre[i]);
  const n = Math.hypot(...inwards);
  const along = { ...bore, inwards: inwards.map((v) => v / n) as unknown as typeof bore.inwards };
  const fold = { middleMm: 4, pitchMm: truth.pitch_mm, hand: 'right' as const };
  expect(wallPatch(photo, along, fold)).toBeNull();
  expect(wallPatch(photo, bore, fold)).not.toBeNull();
});
