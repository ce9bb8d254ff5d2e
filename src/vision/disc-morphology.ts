import type { GreyImage } from './grey-image';

/** One bit per pixel, 32 of a row in each word, rows in whole words; what a row's last word has
 *  over is 0. */
interface BitMask {
  readonly width: number;
  readonly height: number;
  readonly perRow: number;
  readonly words: Int32Array;
}

/** Fills the gaps that a disc of this radius does not fit into, the disc being pixels whose centres
 *  are at most the radius apart. The world outside the image counts as neither set nor clear. On 32
 *  pixels at a time, because this build of OpenCV has no SIMD: for a disc of 20 px on 1000 × 750 its
 *  own morphology took half a second, its exact distances 16 ms, this 6. */
export function close(mask: GreyImage, radiusPx: number): GreyImage {
  const grown = dilated(packed(mask), radiusPx);
  // To shrink is to let everything else grow.
  return unpacked(inverted(dilated(inverted(grown), radiusPx)));
}

/** A disc is a stack of horizontal runs: each row, widened step by step, is laid over the rows
 *  where the disc is that wide. */
function dilated({ width, height, perRow, words }: BitMask, radiusPx: number): BitMask {
  const out = new Int32Array(words.length);
  const wide = new Int32Array(perRow);
  for (let y = 0; y < height; y++) {
    const from = y * perRow;
    let any = 0;
    for (let k = 0; k < perRow; k++) {
      wide[k] = words[from + k];
      any |= wide[k];
    }
    if (any === 0) continue;
    let grownBy = 0;
    for (let dy = Math.floor(radiusPx); dy >= 0; dy--) {
      const half = Math.floor(Math.sqrt(radiusPx * radiusPx - dy * dy));
      for (; grownBy < half; grownBy++) widen(wide);
      if (y >= dy) lay(wide, out, from - dy * perRow);
      if (dy > 0 && y + dy < height) lay(wide, out, from + dy * perRow);
    }
  }
  return trimmed({ width, height, perRow, words: out });
}

/** By one pixel either way. */
function widen(row: Int32Array): void {
  let before = 0;
  let here = row[0];
  for (let k = 0; k < row.length; k++) {
    const after = k + 1 < row.length ? row[k + 1] : 0;
    row[k] = here | (here << 1) | (before >>> 31) | (here >>> 1) | (after << 31);
    before = here;
    here = after;
  }
}

function lay(row: Int32Array, out: Int32Array, at: number): void {
  for (let k = 0; k < row.length; k++) out[at + k] |= row[k];
}

function inverted(bits: BitMask): BitMask {
  return trimmed({ ...bits, words: bits.words.map((word) => ~word) });
}

function trimmed(bits: BitMask): BitMask {
  const { width, perRow, words } = bits;
  const last = width % 32 === 0 ? -1 : (1 << (width % 32)) - 1;
  for (let k = perRow - 1; k < words.length; k += perRow) words[k] &= last;
  return bits;
}

function packed({ width, height, data }: GreyImage): BitMask {
  const perRow = Math.ceil(width / 32);
  const words = new Int32Array(perRow * height);
  for (let y = 0; y < height; y++) {
    const row = y * width;
    for (let k = 0; k < perRow; k++) {
      const start = row + 32 * k;
      const count = Math.min(32, width - 32 * k);
      let word = 0;
      for (let b = 0; b < count; b++) if (data[start + b] !== 0) word |= 1 << b;
      words[y * perRow + k] = word;
    }
  }
  return { width, height, perRow, words };
}

function unpacked({ width, height, perRow, words }: BitMask): GreyImage {
  const data = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    const row = y * width;
    for (let k = 0; k < perRow; k++) {
      const word = words[y * perRow + k];
      const start = row + 32 * k;
      if (word === 0) continue;
      if (word === -1) {
        data.fill(255, start, start + 32);
        continue;
      }
      for (let b = 0; b < 32; b++) if ((word >>> b) & 1) data[start + b] = 255;
    }
  }
  return { width, height, data };
}
