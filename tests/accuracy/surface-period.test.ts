import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { loadNodeVision } from '../../src/cli/node-vision';
import { readPhoto } from '../../src/journey/1-photo/read-photo';
import { findCard } from '../../src/journey/2-card-pose/find-card';
import { flatAxis } from '../../src/journey/4-thread-signal/axis-frame';
import { surfacePeriods } from '../../src/journey/4-thread-signal/surface-period';
import { unroll } from '../../src/journey/4-thread-signal/unrolled-surface';
import type { Vision } from '../../src/vision/vision';
import { toCard } from './posed-from-synthetic';

/** Path-traced renders with known geometry (fixtures/photos), not photographs: the axis is the truth's,
 *  the camera is found. A multiple of the pitch explains the surface too: the pitch is among the first
 *  few. */
describe('the surface alone', () => {
  let vision: Vision;
  beforeAll(async () => {
    vision = await loadNodeVision();
  });

  for (const name of ['d01', 'd05', 'd11', 'd16'])
    it(`shows the pitch of ${name} within 0.6 %`, async () => {
      const truth = JSON.parse(readFileSync(`fixtures/photos/${name}.truth.json`, 'utf8'));
      const bytes = new Uint8Array(readFileSync(`fixtures/photos/${name}.jpg`));
      const photo = await readPhoto(new AbortController().signal, bytes, nodeDecoders);
      if (!photo.ok) throw new Error(photo.reason);
      const card = findCard(photo.value, vision, { x: 1, y: 1, u: 0.002 });
      if (!card.ok) throw new Error(card.reason);
      const from = toCard(truth.axis_p0);
      const to = toCard(truth.axis_p1);
      const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
      const frame = flatAxis(from, (to[0] - from[0]) / length, (to[1] - from[1]) / length);
      const view = unroll(
        { grey: photo.value.grey, camera: card.value.camera },
        frame,
        { fromS: 0.12 * length, toS: 0.95 * length },
        {
          radiusMm:
            (truth.crest_major_at_start_mm + truth.crest_major_at_end_mm) / 4 -
            0.3 * truth.pitch_mm,
          halfTaper: truth.taper / 2,
          middleS: length / 2,
        },
        { stepMm: length / 300 },
      );
      const found = surfacePeriods(view, { fromMm: 0.7, toMm: 6.4 }).slice(0, 4);
      const nearest = Math.min(...found.map((q) => Math.abs(q.periodMm / truth.pitch_mm - 1)));
      expect(nearest).toBeLessThan(0.006);
    });
});
