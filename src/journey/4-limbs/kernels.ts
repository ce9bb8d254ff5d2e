/** The inner loops of a convolution: half of all the time that a photo takes went into them. */

/** What a convolution reads and adds to. */
export interface Run {
  /** Planes one after the other, padded: rows of `width` values; a kernel's rows lie `far` apart. */
  readonly from: Float64Array;
  readonly width: number;
  readonly far: number;
  /** Planes one after the other, each of `rows` by `columns`. */
  readonly out: Float64Array;
  readonly rows: number;
  readonly columns: number;
  readonly weights: Float32Array;
}

/** Adds what one plane from `at` on gives to two planes of the output, from `to` on and the one after it, by the kernels
 *  whose weights begin at `k` and at `l`. Written out for each size, all rows of a kernel in one pass, since loops over
 *  the taps would take longer than the sums. What is loaded serves both planes; each is still summed in the order of its
 *  taps, to the same bits. */
type Accumulate = (run: Run, at: number, to: number, k: number, l: number) => void;

export const accumulators: Readonly<Record<string, Accumulate>> = {
  '1×1': ({ from, width, out, rows, columns, weights }, at, to, k, l) => {
    const plane = rows * columns;
    const a = weights[k];
    const p = weights[l];
    for (let j = 0; j < rows; j++)
      for (let i = 0; i < columns; i++) {
        const x = from[at + j * width + i];
        const o = to + j * columns + i;
        out[o] += a * x;
        out[o + plane] += p * x;
      }
  },
  '1×5': ({ from, width, out, rows, columns, weights }, at, to, k, l) => {
    const plane = rows * columns;
    const a = weights[k];
    const b = weights[k + 1];
    const c = weights[k + 2];
    const d = weights[k + 3];
    const e = weights[k + 4];
    const p = weights[l];
    const q = weights[l + 1];
    const r = weights[l + 2];
    const s = weights[l + 3];
    const t = weights[l + 4];
    for (let j = 0; j < rows; j++)
      for (let i = 0; i < columns; i++) {
        const first = at + j * width + i;
        const v = from[first];
        const w = from[first + 1];
        const x = from[first + 2];
        const y = from[first + 3];
        const z = from[first + 4];
        const o = to + j * columns + i;
        out[o] += a * v + b * w + c * x + d * y + e * z;
        out[o + plane] += p * v + q * w + r * x + s * y + t * z;
      }
  },
  '5×1': ({ from, width, far, out, rows, columns, weights }, at, to, k, l) => {
    const plane = rows * columns;
    const a = weights[k];
    const b = weights[k + 1];
    const c = weights[k + 2];
    const d = weights[k + 3];
    const e = weights[k + 4];
    const p = weights[l];
    const q = weights[l + 1];
    const r = weights[l + 2];
    const s = weights[l + 3];
    const t = weights[l + 4];
    for (let j = 0; j < rows; j++)
      for (let i = 0; i < columns; i++) {
        const first = at + j * width + i;
        const v = from[first];
        const w = from[first + far];
        const x = from[first + 2 * far];
        const y = from[first + 3 * far];
        const z = from[first + 4 * far];
        const o = to + j * columns + i;
        out[o] = out[o] + a * v + b * w + c * x + d * y + e * z;
        out[o + plane] = out[o + plane] + p * v + q * w + r * x + s * y + t * z;
      }
  },
  '5×3': ({ from, width, far, out, rows, columns, weights }, at, to, k, l) => {
    const plane = rows * columns;
    const a0 = weights[k];
    const a1 = weights[k + 1];
    const a2 = weights[k + 2];
    const b0 = weights[k + 3];
    const b1 = weights[k + 4];
    const b2 = weights[k + 5];
    const c0 = weights[k + 6];
    const c1 = weights[k + 7];
    const c2 = weights[k + 8];
    const d0 = weights[k + 9];
    const d1 = weights[k + 10];
    const d2 = weights[k + 11];
    const e0 = weights[k + 12];
    const e1 = weights[k + 13];
    const e2 = weights[k + 14];
    const p0 = weights[l];
    const p1 = weights[l + 1];
    const p2 = weights[l + 2];
    const q0 = weights[l + 3];
    const q1 = weights[l + 4];
    const q2 = weights[l + 5];
    const r0 = weights[l + 6];
    const r1 = weights[l + 7];
    const r2 = weights[l + 8];
    const s0 = weights[l + 9];
    const s1 = weights[l + 10];
    const s2 = weights[l + 11];
    const t0 = weights[l + 12];
    const t1 = weights[l + 13];
    const t2 = weights[l + 14];
    for (let y = 0; y < rows; y++) {
      const ia = at + y * width + 2;
      const ib = ia + far;
      const ic = ib + far;
      const id = ic + far;
      const ie = id + far;
      // Two of three values of a row are those of the step before.
      let a = from[ia - 2];
      let b = from[ib - 2];
      let c = from[ic - 2];
      let d = from[id - 2];
      let e = from[ie - 2];
      let aa = from[ia - 1];
      let bb = from[ib - 1];
      let cc = from[ic - 1];
      let dd = from[id - 1];
      let ee = from[ie - 1];
      const first = to + y * columns;
      for (let x = 0; x < columns; x++) {
        const a3 = from[ia + x];
        const b3 = from[ib + x];
        const c3 = from[ic + x];
        const d3 = from[id + x];
        const e3 = from[ie + x];
        const o = first + x;
        out[o] =
          out[o] +
          (a0 * a + a1 * aa + a2 * a3) +
          (b0 * b + b1 * bb + b2 * b3) +
          (c0 * c + c1 * cc + c2 * c3) +
          (d0 * d + d1 * dd + d2 * d3) +
          (e0 * e + e1 * ee + e2 * e3);
        out[o + plane] =
          out[o + plane] +
          (p0 * a + p1 * aa + p2 * a3) +
          (q0 * b + q1 * bb + q2 * b3) +
          (r0 * c + r1 * cc + r2 * c3) +
          (s0 * d + s1 * dd + s2 * d3) +
          (t0 * e + t1 * ee + t2 * e3);
        a = aa;
        aa = a3;
        b = bb;
        bb = b3;
        c = cc;
        cc = c3;
        d = dd;
        dd = d3;
        e = ee;
        ee = e3;
      }
    }
  },
  '5×5': ({ from, width, far, out, rows, columns, weights }, at, to, k, l) => {
    const plane = rows * columns;
    for (let row = 0; row < 5; row++) {
      const a = weights[k + 5 * row];
      const b = weights[k + 5 * row + 1];
      const c = weights[k + 5 * row + 2];
      const d = weights[k + 5 * row + 3];
      const e = weights[k + 5 * row + 4];
      const p = weights[l + 5 * row];
      const q = weights[l + 5 * row + 1];
      const r = weights[l + 5 * row + 2];
      const s = weights[l + 5 * row + 3];
      const t = weights[l + 5 * row + 4];
      for (let j = 0; j < rows; j++) {
        const start = at + row * far + j * width + 4;
        // Four of five values are those of the step before.
        let v = from[start - 4];
        let w = from[start - 3];
        let x = from[start - 2];
        let y = from[start - 1];
        const first = to + j * columns;
        for (let i = 0; i < columns; i++) {
          const z = from[start + i];
          const o = first + i;
          out[o] += a * v + b * w + c * x + d * y + e * z;
          out[o + plane] += p * v + q * w + r * x + s * y + t * z;
          v = w;
          w = x;
          x = y;
          y = z;
        }
      }
    }
  },
};

/** The same for every second column. */
export const thinning: Readonly<Record<string, Accumulate>> = {
  '5×3': ({ from, width, far, out, rows, columns, weights }, at, to, k, l) => {
    const plane = rows * columns;
    const a0 = weights[k];
    const a1 = weights[k + 1];
    const a2 = weights[k + 2];
    const b0 = weights[k + 3];
    const b1 = weights[k + 4];
    const b2 = weights[k + 5];
    const c0 = weights[k + 6];
    const c1 = weights[k + 7];
    const c2 = weights[k + 8];
    const d0 = weights[k + 9];
    const d1 = weights[k + 10];
    const d2 = weights[k + 11];
    const e0 = weights[k + 12];
    const e1 = weights[k + 13];
    const e2 = weights[k + 14];
    const p0 = weights[l];
    const p1 = weights[l + 1];
    const p2 = weights[l + 2];
    const q0 = weights[l + 3];
    const q1 = weights[l + 4];
    const q2 = weights[l + 5];
    const r0 = weights[l + 6];
    const r1 = weights[l + 7];
    const r2 = weights[l + 8];
    const s0 = weights[l + 9];
    const s1 = weights[l + 10];
    const s2 = weights[l + 11];
    const t0 = weights[l + 12];
    const t1 = weights[l + 13];
    const t2 = weights[l + 14];
    for (let y = 0; y < rows; y++) {
      const ia = at + y * width + 1;
      const ib = ia + far;
      const ic = ib + far;
      const id = ic + far;
      const ie = id + far;
      // One of three values of a row is that of the step before.
      let a = from[ia - 1];
      let b = from[ib - 1];
      let c = from[ic - 1];
      let d = from[id - 1];
      let e = from[ie - 1];
      const first = to + y * columns;
      for (let x = 0; x < columns; x++) {
        const aa = from[ia + 2 * x];
        const a3 = from[ia + 2 * x + 1];
        const bb = from[ib + 2 * x];
        const b3 = from[ib + 2 * x + 1];
        const cc = from[ic + 2 * x];
        const c3 = from[ic + 2 * x + 1];
        const dd = from[id + 2 * x];
        const d3 = from[id + 2 * x + 1];
        const ee = from[ie + 2 * x];
        const e3 = from[ie + 2 * x + 1];
        const o = first + x;
        out[o] =
          out[o] +
          (a0 * a + a1 * aa + a2 * a3) +
          (b0 * b + b1 * bb + b2 * b3) +
          (c0 * c + c1 * cc + c2 * c3) +
          (d0 * d + d1 * dd + d2 * d3) +
          (e0 * e + e1 * ee + e2 * e3);
        out[o + plane] =
          out[o + plane] +
          (p0 * a + p1 * aa + p2 * a3) +
          (q0 * b + q1 * bb + q2 * b3) +
          (r0 * c + r1 * cc + r2 * c3) +
          (s0 * d + s1 * dd + s2 * d3) +
          (t0 * e + t1 * ee + t2 * e3);
        a = a3;
        b = b3;
        c = c3;
        d = d3;
        e = e3;
      }
    }
  },
  '5×5': ({ from, width, far, out, rows, columns, weights }, at, to, k, l) => {
    const plane = rows * columns;
    for (let row = 0; row < 5; row++) {
      const a = weights[k + 5 * row];
      const b = weights[k + 5 * row + 1];
      const c = weights[k + 5 * row + 2];
      const d = weights[k + 5 * row + 3];
      const e = weights[k + 5 * row + 4];
      const p = weights[l + 5 * row];
      const q = weights[l + 5 * row + 1];
      const r = weights[l + 5 * row + 2];
      const s = weights[l + 5 * row + 3];
      const t = weights[l + 5 * row + 4];
      for (let j = 0; j < rows; j++) {
        const start = at + row * far + j * width + 3;
        // Three of five values are those of the step before.
        let v = from[start - 3];
        let w = from[start - 2];
        let x = from[start - 1];
        const first = to + j * columns;
        for (let i = 0; i < columns; i++) {
          const y = from[start + 2 * i];
          const z = from[start + 2 * i + 1];
          const o = first + i;
          out[o] += a * v + b * w + c * x + d * y + e * z;
          out[o + plane] += p * v + q * w + r * x + s * y + t * z;
          v = x;
          w = y;
          x = z;
        }
      }
    }
  },
};
