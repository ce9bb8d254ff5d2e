import { readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { crestPlaces } from '../../../src/journey/4-limbs/crest-places';
import { findThread } from '../../../src/journey/4-limbs/find-thread';
import { helixBend } from '../../../src/journey/4-limbs/helix-bend';
import { seatedAgain } from '../../../src/journey/4-limbs/lens-by-thread';

import { faceLook, facePatch } from '../../../src/journey/4-limbs/turn-patch';
import {
  facePhase,
  type TurnPhases,
  turnPhases,
  type WoundBody,
} from '../../../src/journey/4-limbs/turn-phases';
import type { PosedPhoto } from '../../../src/journey/4-thread-signal/posed-photo';
import { pitchByPhases } from '../../../src/journey/5-measurement/pitch-by-phases';
import { foundFitting } from '../found-fitting';

/** A render of known geometry by another renderer than the one that the networks learnt from. */
const folder = new URL('../../../fixtures/photos/', import.meta.url);
const truth = JSON.parse(readFileSync(new URL('d11.truth.json', folder), 'utf8'));

let photo: PosedPhoto;
let body: WoundBody;
let phases: TurnPhases[];

beforeAll(async () => {
  const { grey, reference, fitting } = await foundFitting('photos/d11.jpg');
  const first = findThread(grey, reference, fitting, null);
  if (!first.ok) throw new Error(first.reason);
  const { seat } = seatedAgain(grey, reference, first.value);
  const { frame, zone, pitchMm, crests } = seat;
  const { radiusMm, halfTaper } = crests;
  photo = { grey, camera: reference.camera };
  body = { frame, zone, pitchMm, radiusMm, halfTaper, hand: 'right' };
  phases = turnPhases(photo, body);
}, 60_000);

const apart = (a: number, b: number): number => Math.abs(a - b - Math.round(a - b));

test('a phase goes along with its pattern', () => {
  const fold = { ...body, middleS: (body.zone.fromS + body.zone.toS) / 2 };
  const patch = facePatch(photo, body.frame, fold);
  if (!patch) throw new Error('nothing seen');
  const { phases: columns } = faceLook;
  const moved = patch.map((_, i) => {
    const column = i % columns;
    return patch[i - column + ((column + columns - 5) % columns)];
  });
  const [before, after] = [patch, moved].map((one) => facePhase(one, 0.1, 12));
  expect(apart(after.phase, before.phase + 5 / columns)).toBeLessThan(1e-6);
  expect(after.sureness).toBeCloseTo(before.sureness, 6);
});

test('crests of top and limbs lie on one helix, a quarter of a turn apart', () => {
  expect(phases.length).toBeGreaterThan(3);
  const turned = phases.map((one) => {
    const at = crestPlaces(photo.camera, body, one);
    return {
      left: (at.left - at.face) / body.pitchMm + 0.25,
      right: (at.right - at.face) / body.pitchMm - 0.25,
    };
  });
  for (const side of ['left', 'right'] as const) {
    const off = turned.map((one) => apart(one[side], 0)).sort((a, b) => a - b);
    expect(off[off.length >> 1]).toBeLessThan(0.08);
  }
  expect(Math.abs(helixBend(photo.camera, body, phases)?.bend ?? 1)).toBeLessThan(0.06);
});

test('a top that is displaced along the axis is told as a bend', () => {
  const by = 0.15;
  const unbent = helixBend(photo.camera, body, phases)?.bend ?? 1;
  // As though the camera had leant more: everything on the top a little farther along.
  const { at } = phases[0].face;
  const [from, to] = [crestPlaces(photo.camera, body, phases[0]).face, 1];
  const ahead = crestPlaces(photo.camera, body, {
    ...phases[0],
    face: { ...phases[0].face, at: [at[0] + to, at[1]] },
  }).face;
  const aside = crestPlaces(photo.camera, body, {
    ...phases[0],
    face: { ...phases[0].face, at: [at[0], at[1] + to] },
  }).face;
  // Pixels along the photo's axes for a millimetre along the thread's.
  const [gx, gy] = [ahead - from, aside - from];
  const k = (by * body.pitchMm) / (gx * gx + gy * gy);
  const bent = phases.map((one) => ({
    ...one,
    face: { ...one.face, at: [one.face.at[0] + k * gx, one.face.at[1] + k * gy] as const },
  }));
  const seen = helixBend(photo.camera, body, bent)?.bend ?? 1;
  expect(seen - unbent).toBeGreaterThan(-by - 0.02);
  expect(seen - unbent).toBeLessThan(-by + 0.02);
});

test('the pitch comes out where the surface has it, and from a start beside it too', () => {
  for (const beside of [1, 1.006, 0.994]) {
    const told = pitchByPhases(photo, { ...body, pitchMm: beside * body.pitchMm });
    if (!told) throw new Error('nothing seen');
    expect(Math.abs(told.value / truth.pitch_mm - 1)).toBeLessThan(0.005);
    expect(told.u / truth.pitch_mm).toBeLessThan(0.008);
    expect(Math.abs(told.value - truth.pitch_mm)).toBeLessThan(3 * told.u);
  }
});
