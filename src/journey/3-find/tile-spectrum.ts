import * as portable from '../../quantity/portable-math';

/** Side of a tile, samples; a power of two. */
export const tileSide = 64;

/** Power spectrum of real tiles of `tileSide` square under a Hann window.
 *  Input: samples row by row. Output: power[v·(n/2 + 1) + u] at u waves per tile along x and v along y, v
 *  taken modulo n; the array is used again by the next call. */
export function tileSpectrum(): (tile: Float64Array) => Float64Array {
  const n = tileSide;
  const half = n / 2 + 1;
  const cosines = Float64Array.from({ length: n / 2 }, (_, k) =>
    portable.cos((2 * Math.PI * k) / n),
  );
  const sines = Float64Array.from(
    { length: n / 2 },
    (_, k) => -portable.sin((2 * Math.PI * k) / n),
  );
  const hann = Float64Array.from({ length: n }, (_, i) => {
    const s = portable.sin((Math.PI * (i + 0.5)) / n);
    return s * s;
  });
  const order = Uint8Array.from({ length: n }, (_, i) => {
    let r = 0;
    for (let b = 1; b < n; b <<= 1) r = (r << 1) | (i & b ? 1 : 0);
    return r;
  });
  const re = new Float64Array(n);
  const im = new Float64Array(n);
  const rowRe = new Float64Array(n * half);
  const rowIm = new Float64Array(n * half);
  const power = new Float64Array(n * half);
  /** In place, of values already in bit-reversed order. */
  const transform = () => {
    for (let size = 2; size <= n; size <<= 1) {
      const h = size >> 1;
      const hop = n / size;
      for (let from = 0; from < n; from += size)
        for (let k = 0; k < h; k++) {
          const c = cosines[k * hop];
          const s = sines[k * hop];
          const a = from + k;
          const b = a + h;
          const x = re[b] * c - im[b] * s;
          const y = re[b] * s + im[b] * c;
          re[b] = re[a] - x;
          im[b] = im[a] - y;
          re[a] += x;
          im[a] += y;
        }
    }
  };
  return (tile) => {
    let mean = 0;
    for (let i = 0; i < tile.length; i++) mean += tile[i];
    mean /= tile.length;
    // Two real rows at a time, as real and imaginary part of one.
    for (let y = 0; y < n; y += 2) {
      for (let x = 0; x < n; x++) {
        re[order[x]] = (tile[y * n + x] - mean) * hann[x] * hann[y];
        im[order[x]] = (tile[(y + 1) * n + x] - mean) * hann[x] * hann[y + 1];
      }
      transform();
      for (let u = 0; u < half; u++) {
        const v = (n - u) % n;
        rowRe[y * half + u] = (re[u] + re[v]) / 2;
        rowIm[y * half + u] = (im[u] - im[v]) / 2;
        rowRe[(y + 1) * half + u] = (im[u] + im[v]) / 2;
        rowIm[(y + 1) * half + u] = (re[v] - re[u]) / 2;
      }
    }
    for (let u = 0; u < half; u++) {
      for (let y = 0; y < n; y++) {
        re[order[y]] = rowRe[y * half + u];
        im[order[y]] = rowIm[y * half + u];
      }
      transform();
      for (let v = 0; v < n; v++) power[v * half + u] = re[v] * re[v] + im[v] * im[v];
    }
    return power;
  };
}
