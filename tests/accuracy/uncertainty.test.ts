import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { loadNodeVision } from '../../src/cli/node-vision';
import { readPhoto } from '../../src/journey/1-photo/read-photo';
import { cameraParameters } from '../../src/journey/2-card-pose/camera-parameters';
import { findReference } from '../../src/journey/2-reference/find-reference';
import { findFitting } from '../../src/journey/3-find/find-fitting';
import { findThread } from '../../src/journey/4-limbs/find-thread';
import { sharedGeometry } from '../../src/journey/5-measurement/shared-geometry';
import { solveSeated } from '../../src/journey/5-measurement/solve-seated';
import { withUncertainty } from '../../src/journey/5-measurement/uncertainty';
import { seededRandom } from '../../src/quantity/random';
import { monteCarlo } from '../quantity/monte-carlo';

const scale = { x: 1, y: 1, u: 0.002 };

/** One path-traced render, as far as the thread. */
async function solved(name: string) {
  const path = new URL(`../../fixtures/photos/${name}.jpg`, import.meta.url);
  const vision = await loadNodeVision();
  const photo = await readPhoto(
    new AbortController().signal,
    new Uint8Array(readFileSync(path)),
    nodeDecoders,
  );
  if (!photo.ok) throw new Error(photo.reason);
  const card = findReference(photo.value, vision, scale, {
    kind: 'card',
    corners: null,
  });
  if (!card.ok) throw new Error(card.reason);
  const fitting = findFitting(photo.value.grey, card.value, vision);
  if (!fitting.ok) throw new Error(fitting.reason);
  const place = findThread(photo.value.grey, card.value, fitting.value, null);
  if (!place.ok) throw new Error(place.reason);
  const { field } = fitting.value;
  const { grey } = photo.value;
  const view = { grey, card: card.value, seat: place.value, field, sides: 'both' as const };
  const solution = solveSeated(view);
  if (!solution.ok) throw new Error(solution.reason);
  return { card: card.value, solution: solution.value, field };
}

/** Lower triangle of the square root of a covariance. */
function rootOf(covariance: Float64Array, n: number): Float64Array {
  const L = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let s = covariance[i * n + j]!;
      for (let k = 0; k < j; k++) s -= L[i * n + k]! * L[j * n + k]!;
      L[i * n + j] =
        i === j ? Math.sqrt(Math.max(0, s)) : L[j * n + j]! > 0 ? s / L[j * n + j]! : 0;
    }
  return L;
}

describe('propagated uncertainty against Monte Carlo (JCGM 101)', () => {
  // With EXIF and nearly square-on; tilted; no EXIF and square-on, where the focal length is all but open.
  it.each(['d11', 'd09', 'd02'])(
    'what %s shares: pitch, diameter and their covariance',
    async (name) => {
      const { card, solution, field } = await solved(name);
      const stated = withUncertainty(card, solution, { field, flashFired: false }, scale.u);
      const geometry = sharedGeometry(card, solution);
      const root = rootOf(card.covariance, cameraParameters);
      const row = (source: string) => stated.budget.find((entry) => entry.source === source)!;
      const sag = row('card-bow').pitchMm / row('height').pitchMm;
      const draws: [number, number][] = [];
      monteCarlo(
        (x) => {
          const { length, diameter } = geometry(x.subarray(0, cameraParameters), x.at(-1)!, 0);
          draws.push([length - 1, diameter - 1]);
          return [length, diameter];
        },
        (random) => {
          const z = Float64Array.from({ length: cameraParameters }, () => random.normal());
          const shifted = card.parameters.map((v, i) => {
            let s = v;
            for (let k = 0; k <= i; k++) s += root[i * cameraParameters + k]! * z[k]!;
            return s;
          });
          const height = solution.resting.uMm * (random.normal() + sag * random.normal());
          return Float64Array.from([...shifted, height]);
        },
        1500,
        seededRandom(5),
      );
      const spread = (k: 0 | 1) => {
        const mean = draws.reduce((s, d) => s + d[k], 0) / draws.length;
        return Math.sqrt(draws.reduce((s, d) => s + (d[k] - mean) ** 2, 0) / draws.length);
      };
      const sources = ['focal-length', 'height', 'card-bow'];
      const pitch = Math.hypot(...sources.map((s) => row(s).pitchMm)) / stated.pitchMm.value;
      const major =
        Math.hypot(...sources.map((s) => row(s).majorDiameterMm)) / stated.majorDiameterMm.value;
      expect(spread(0) / pitch).toBeGreaterThan(0.85);
      expect(spread(0) / pitch).toBeLessThan(1.15);
      expect(spread(1) / major).toBeGreaterThan(0.85);
      expect(spread(1) / major).toBeLessThan(1.15);
      // A wrong scale is wrong for both alike: their ratio is known several times better.
      const ratio = draws.map(([a, b]) => b - a);
      const ratioMean = ratio.reduce((a, b) => a + b, 0) / ratio.length;
      const ratioSpread = Math.sqrt(
        ratio.reduce((s, v) => s + (v - ratioMean) ** 2, 0) / ratio.length,
      );
      expect(ratioSpread).toBeLessThan(Math.max(spread(0) / 3, 3e-4));
    },
  );
});
