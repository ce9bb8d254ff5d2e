import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';
import { tileSide, tileSpectrum } from './tile-spectrum';

/** A tile of an image in which brightness ripples: one wave stands out of its spectrum. */
export interface Ripple {
  /** Middle of the tile, pixels. */
  readonly x: number;
  readonly y: number;
  /** Waves per pixel along x and y; of the two opposite vectors the one with fx > 0. */
  readonly fx: number;
  readonly fy: number;
  /** Share of the tile's variance in this wave, 0…1. */
  readonly share: number;
}

const hop = 24;
/** Waves per tile: a pitch must come round three times, and each wave takes 2.6 samples. */
const fewestWaves = 3;
const mostWaves = tileSide / 2.6;
const peaksPerTile = 3;
/** Logarithm of the coded value: ridges in the dark count as those in the light. */
const darkLevel = 8;
/** Standard deviation of the logarithm below which a tile is paper. */
const leastSpread = 0.02;

/** Ripples of an image, from its spectrum in overlapping tiles. Low waves are shading and outlines: power is
 *  weighted by the square of the frequency, as in a derivative, before peaks are sought. */
export function ripplesOf({ width, height, data }: GreyImage): Ripple[] {
  const logs = Float64Array.from({ length: 256 }, (_, v) => portable.log(v + darkLevel));
  const spectrumOf = tileSpectrum();
  const tile = new Float64Array(tileSide * tileSide);
  const half = tileSide / 2 + 1;
  const weighted = new Float64Array(tileSide * half);
  const out: Ripple[] = [];
  for (let y0 = 0; y0 + tileSide <= height; y0 += hop)
    for (let x0 = 0; x0 + tileSide <= width; x0 += hop) {
      let sum = 0;
      let squares = 0;
      for (let y = 0; y < tileSide; y++)
        for (let x = 0; x < tileSide; x++) {
          const v = logs[data[(y0 + y) * width + x0 + x]];
          tile[y * tileSide + x] = v;
          sum += v;
          squares += v * v;
        }
      const mean = sum / tile.length;
      if (squares / tile.length - mean * mean < leastSpread * leastSpread) continue;
      const power = spectrumOf(tile);
      let all = 1e-12;
      for (let v = 0; v < tileSide; v++) {
        const fy = v > tileSide / 2 ? v - tileSide : v;
        for (let u = 0; u < half; u++) {
          const f2 = u * u + fy * fy;
          const at = v * half + u;
          weighted[at] =
            f2 >= fewestWaves * fewestWaves && f2 <= mostWaves * mostWaves ? power[at] * f2 : 0;
          all += (u === 0 || u === half - 1 ? 1 : 2) * weighted[at];
        }
      }
      for (const peak of peaks(weighted, half, all))
        out.push({ ...peak, x: x0 + (tileSide - 1) / 2, y: y0 + (tileSide - 1) / 2 });
    }
  return out;
}

function peaks(weighted: Float64Array, half: number, all: number) {
  const at = (u: number, v: number): number => {
    const mirrored = u < 0;
    const a = mirrored ? -u : u;
    const b = ((mirrored ? -v : v) + 2 * tileSide) % tileSide;
    return a < half ? weighted[b * half + a] : 0;
  };
  const found: { fx: number; fy: number; share: number }[] = [];
  for (let v = -tileSide / 2 + 1; v < tileSide / 2; v++)
    for (let u = 0; u < half - 1; u++) {
      if (u === 0 && v <= 0) continue;
      const p = at(u, v);
      if (p < 0.02 * all) continue;
      let top = true;
      let sum = 0;
      let su = 0;
      let sv = 0;
      for (let b = -1; b <= 1; b++)
        for (let a = -1; a <= 1; a++) {
          const q = at(u + a, v + b);
          if (q > p) top = false;
          sum += q;
          su += q * a;
          sv += q * b;
        }
      if (!top) continue;
      found.push({
        fx: (u + su / sum) / tileSide,
        fy: (v + sv / sum) / tileSide,
        share: Math.min(1, (2 * sum) / all),
      });
    }
  return found.sort((a, b) => b.share - a.share).slice(0, peaksPerTile);
}
