/** The inner loops of a convolution: half of all the time that a photo takes went into them. */

/** Kernels of two outputs over one run of values, added to `sum` and to `twin`: rows of a kernel begin at `at` and `far`
 *  apart. Written out for each size, all rows in one pass, since loops over the taps would take longer than the sums. What is loaded serves both outputs; each is still summed in the order of its taps, to the same bits. */
type Accumulate = (
  sum: Float64Array,
  twin: Float64Array,
  from: Float64Array,
  at: number,
  far: number,
  kernel: Float32Array,
  other: Float32Array,
) => void;

export const accumulators: Readonly<Record<string, Accumulate>> = {
  '1×1': (sum, twin, from, at, _, kernel, other) => {
    const a = kernel[0];
    const p = other[0];
    for (let i = 0; i < sum.length; i++) {
      const x = from[at + i];
      sum[i] += a * x;
      twin[i] += p * x;
    }
  },
  '1×5': (sum, twin, from, at, _, kernel, other) => {
    const a = kernel[0];
    const b = kernel[1];
    const c = kernel[2];
    const d = kernel[3];
    const e = kernel[4];
    const p = other[0];
    const q = other[1];
    const r = other[2];
    const s = other[3];
    const t = other[4];
    for (let i = 0; i < sum.length; i++) {
      const first = at + i;
      const v = from[first];
      const w = from[first + 1];
      const x = from[first + 2];
      const y = from[first + 3];
      const z = from[first + 4];
      sum[i] += a * v + b * w + c * x + d * y + e * z;
      twin[i] += p * v + q * w + r * x + s * y + t * z;
    }
  },
  '5×1': (sum, twin, from, at, far, kernel, other) => {
    const a = kernel[0];
    const b = kernel[1];
    const c = kernel[2];
    const d = kernel[3];
    const e = kernel[4];
    const p = other[0];
    const q = other[1];
    const r = other[2];
    const s = other[3];
    const t = other[4];
    for (let i = 0; i < sum.length; i++) {
      const first = at + i;
      const v = from[first];
      const w = from[first + far];
      const x = from[first + 2 * far];
      const y = from[first + 3 * far];
      const z = from[first + 4 * far];
      sum[i] = sum[i] + a * v + b * w + c * x + d * y + e * z;
      twin[i] = twin[i] + p * v + q * w + r * x + s * y + t * z;
    }
  },
  '5×3': (sum, twin, from, at, far, kernel, other) => {
    const a0 = kernel[0];
    const a1 = kernel[1];
    const a2 = kernel[2];
    const b0 = kernel[3];
    const b1 = kernel[4];
    const b2 = kernel[5];
    const c0 = kernel[6];
    const c1 = kernel[7];
    const c2 = kernel[8];
    const d0 = kernel[9];
    const d1 = kernel[10];
    const d2 = kernel[11];
    const e0 = kernel[12];
    const e1 = kernel[13];
    const e2 = kernel[14];
    const p0 = other[0];
    const p1 = other[1];
    const p2 = other[2];
    const q0 = other[3];
    const q1 = other[4];
    const q2 = other[5];
    const r0 = other[6];
    const r1 = other[7];
    const r2 = other[8];
    const s0 = other[9];
    const s1 = other[10];
    const s2 = other[11];
    const t0 = other[12];
    const t1 = other[13];
    const t2 = other[14];
    const ia = at + 2;
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
    for (let i = 0; i < sum.length; i++) {
      const a3 = from[ia + i];
      const b3 = from[ib + i];
      const c3 = from[ic + i];
      const d3 = from[id + i];
      const e3 = from[ie + i];
      sum[i] =
        sum[i] +
        (a0 * a + a1 * aa + a2 * a3) +
        (b0 * b + b1 * bb + b2 * b3) +
        (c0 * c + c1 * cc + c2 * c3) +
        (d0 * d + d1 * dd + d2 * d3) +
        (e0 * e + e1 * ee + e2 * e3);
      twin[i] =
        twin[i] +
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
  },
  '5×5': (sum, twin, from, at, far, kernel, other) => {
    for (let row = 0; row < 5; row++) {
      const a = kernel[5 * row];
      const b = kernel[5 * row + 1];
      const c = kernel[5 * row + 2];
      const d = kernel[5 * row + 3];
      const e = kernel[5 * row + 4];
      const p = other[5 * row];
      const q = other[5 * row + 1];
      const r = other[5 * row + 2];
      const s = other[5 * row + 3];
      const t = other[5 * row + 4];
      const start = at + row * far + 4;
      // Four of five values are those of the step before.
      let v = from[start - 4];
      let w = from[start - 3];
      let x = from[start - 2];
      let y = from[start - 1];
      for (let i = 0; i < sum.length; i++) {
        const z = from[start + i];
        sum[i] += a * v + b * w + c * x + d * y + e * z;
        twin[i] += p * v + q * w + r * x + s * y + t * z;
        v = w;
        w = x;
        x = y;
        y = z;
      }
    }
  },
};

/** The same for every second value of the run. */
export const thinning: Readonly<Record<string, Accumulate>> = {
  '5×3': (sum, twin, from, at, far, kernel, other) => {
    const a0 = kernel[0];
    const a1 = kernel[1];
    const a2 = kernel[2];
    const b0 = kernel[3];
    const b1 = kernel[4];
    const b2 = kernel[5];
    const c0 = kernel[6];
    const c1 = kernel[7];
    const c2 = kernel[8];
    const d0 = kernel[9];
    const d1 = kernel[10];
    const d2 = kernel[11];
    const e0 = kernel[12];
    const e1 = kernel[13];
    const e2 = kernel[14];
    const p0 = other[0];
    const p1 = other[1];
    const p2 = other[2];
    const q0 = other[3];
    const q1 = other[4];
    const q2 = other[5];
    const r0 = other[6];
    const r1 = other[7];
    const r2 = other[8];
    const s0 = other[9];
    const s1 = other[10];
    const s2 = other[11];
    const t0 = other[12];
    const t1 = other[13];
    const t2 = other[14];
    const ia = at + 1;
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
    for (let i = 0; i < sum.length; i += 2) {
      const aa = from[ia + i];
      const a3 = from[ia + i + 1];
      const bb = from[ib + i];
      const b3 = from[ib + i + 1];
      const cc = from[ic + i];
      const c3 = from[ic + i + 1];
      const dd = from[id + i];
      const d3 = from[id + i + 1];
      const ee = from[ie + i];
      const e3 = from[ie + i + 1];
      sum[i] =
        sum[i] +
        (a0 * a + a1 * aa + a2 * a3) +
        (b0 * b + b1 * bb + b2 * b3) +
        (c0 * c + c1 * cc + c2 * c3) +
        (d0 * d + d1 * dd + d2 * d3) +
        (e0 * e + e1 * ee + e2 * e3);
      twin[i] =
        twin[i] +
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
  },
  '5×5': (sum, twin, from, at, far, kernel, other) => {
    for (let row = 0; row < 5; row++) {
      const a = kernel[5 * row];
      const b = kernel[5 * row + 1];
      const c = kernel[5 * row + 2];
      const d = kernel[5 * row + 3];
      const e = kernel[5 * row + 4];
      const p = other[5 * row];
      const q = other[5 * row + 1];
      const r = other[5 * row + 2];
      const s = other[5 * row + 3];
      const t = other[5 * row + 4];
      const start = at + row * far + 3;
      // Three of five values are those of the step before.
      let v = from[start - 3];
      let w = from[start - 2];
      let x = from[start - 1];
      for (let i = 0; i < sum.length; i += 2) {
        const y = from[start + i];
        const z = from[start + i + 1];
        sum[i] += a * v + b * w + c * x + d * y + e * z;
        twin[i] += p * v + q * w + r * x + s * y + t * z;
        v = x;
        w = y;
        x = z;
      }
    }
  },
};
