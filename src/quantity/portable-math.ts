/** Transcendental functions that give the same bits everywhere. ECMAScript leaves the last bits of
 *  Math.sin, Math.exp and their kin to the engine: Node 20 and Chromium 156 differ in 3 to 20 % of
 *  arguments, by one unit in the last place, and where a fit chooses between two almost equal minima
 *  that is enough to move a pitch by 0.2 %. Here is nothing but + − × ÷ √ and rounding, which
 *  IEEE 754 defines. Errors stay below about 2 units in the last place for the arguments stated. */

const ln2High = 0.6931471803691238;
const ln2Low = 1.9082149292705877e-10;

const powersOfTwo = new Float64Array(2100);
{
  let up = 1;
  for (let k = 0; k <= 1023; k++, up *= 2) powersOfTwo[1074 + k] = up;
  let down = 1;
  for (let k = 0; k <= 1074; k++, down /= 2) powersOfTwo[1074 - k] = down;
}

/** By its series over |r| ≤ ln 2 / 2, x = k·ln 2 + r. */
export function exp(x: number): number {
  if (!(x < 710)) return x >= 710 ? Number.POSITIVE_INFINITY : x;
  if (x < -744.4) return 0;
  const k = Math.round(x * Math.LOG2E);
  const r = x - k * ln2High - k * ln2Low;
  const series =
    1 +
    r *
      (1 +
        r *
          (1 / 2 +
            r *
              (1 / 6 +
                r *
                  (1 / 24 +
                    r *
                      (1 / 120 +
                        r *
                          (1 / 720 +
                            r *
                              (1 / 5040 +
                                r *
                                  (1 / 40320 +
                                    r *
                                      (1 / 362880 +
                                        r *
                                          (1 / 3628800 +
                                            r * (1 / 39916800 + r * (1 / 479001600))))))))))));
  return k > 1023 ? series * powersOfTwo[2097] * 2 : series * powersOfTwo[1074 + k];
}

const asDouble = new Float64Array(1);
const asWords = new Uint32Array(asDouble.buffer);
/** Little-endian machines keep the exponent in the second word. */
const high = new Uint8Array(Uint32Array.of(1).buffer)[0] === 1 ? 1 : 0;

/** 2·artanh((m − 1)/(m + 1)) + k·ln 2, x = m·2ᵏ with m in √½ … √2. */
export function log(x: number): number {
  if (!(x > 0)) return x === 0 ? Number.NEGATIVE_INFINITY : Number.NaN;
  if (x === Number.POSITIVE_INFINITY) return x;
  if (x < 2.3e-308) return log(x * 2 ** 54) - 54 * Math.LN2;
  asDouble[0] = x;
  let k = ((asWords[high] >>> 20) & 0x7ff) - 1023;
  // Exact, as long as x is normal. To write the exponent's word instead would have the next read wait for both stores.
  let m = x * powersOfTwo[1074 - k];
  if (m > Math.SQRT2) {
    m /= 2;
    k++;
  }
  const s = (m - 1) / (m + 1);
  const z = s * s;
  const series =
    1 / 3 +
    z *
      (1 / 5 +
        z *
          (1 / 7 +
            z *
              (1 / 9 +
                z *
                  (1 / 11 +
                    z *
                      (1 / 13 +
                        z *
                          (1 / 15 + z * (1 / 17 + z * (1 / 19 + z * (1 / 21 + z * (1 / 23))))))))));
  return k * ln2High + (2 * s + (2 * s * z * series + k * ln2Low));
}

export function log1p(x: number): number {
  const u = 1 + x;
  if (u === 1 || u === Number.POSITIVE_INFINITY) return x;
  return log(u) * (x / (u - 1));
}

export const log2 = (x: number): number => log(x) / Math.LN2;

/** For x ≥ 0. */
export const pow = (x: number, y: number): number =>
  x === 0 ? (y === 0 ? 1 : 0) : exp(y * log(x));

/** π/2 in three parts, the first two of 33 bits, so that k times them is exact for k below 2²⁰. */
const quarterA = 1.5707963267341256;
const quarterB = 6.077100506303966e-11;
const quarterC = 2.0222662487959506e-21;

/** For |x| up to about 10⁶. */
export function sin(x: number): number {
  return wave(x, 0);
}

/** For |x| up to about 10⁶. */
export function cos(x: number): number {
  return wave(x, 1);
}

export const tan = (x: number): number => sin(x) / cos(x);

/** sin(x + quarters·π/2). */
function wave(x: number, quarters: number): number {
  const k = Math.round(x / (Math.PI / 2));
  const r = x - k * quarterA - k * quarterB - k * quarterC;
  const quadrant = (k + quarters) & 3;
  const value = quadrant & 1 ? cosNear(r) : sinNear(r);
  return quadrant & 2 ? -value : value;
}

/** |r| ≤ π/4. */
function sinNear(r: number): number {
  const z = r * r;
  return (
    r +
    r *
      z *
      (-1 / 6 +
        z *
          (1 / 120 +
            z *
              (-1 / 5040 +
                z *
                  (1 / 362880 +
                    z * (-1 / 39916800 + z * (1 / 6227020800 + z * (-1 / 1307674368000)))))))
  );
}

/** |r| ≤ π/4. */
function cosNear(r: number): number {
  const z = r * r;
  return (
    1 +
    z *
      (-1 / 2 +
        z *
          (1 / 24 +
            z *
              (-1 / 720 +
                z *
                  (1 / 40320 +
                    z *
                      (-1 / 3628800 +
                        z * (1 / 479001600 + z * (-1 / 87178291200 + z * (1 / 20922789888000))))))))
  );
}

/** Halves the angle twice, then sums the series over |x| ≤ tan(π/16). */
export function atan(x: number): number {
  if (Number.isNaN(x)) return x;
  const size = Math.abs(x);
  const inverse = size > 1;
  let t = inverse ? 1 / size : size;
  for (let i = 0; i < 2; i++) t /= 1 + Math.sqrt(1 + t * t);
  const z = t * t;
  const series =
    1 +
    z *
      (-1 / 3 +
        z *
          (1 / 5 +
            z *
              (-1 / 7 +
                z *
                  (1 / 9 +
                    z *
                      (-1 / 11 +
                        z *
                          (1 / 13 +
                            z *
                              (-1 / 15 +
                                z * (1 / 17 + z * (-1 / 19 + z * (1 / 21 + z * (-1 / 23)))))))))));
  const angle = 4 * t * series;
  const turned = inverse ? Math.PI / 2 - angle : angle;
  return x < 0 ? -turned : turned;
}

export function atan2(y: number, x: number): number {
  if (x === 0 && y === 0) return 0;
  if (Math.abs(y) > Math.abs(x)) {
    const rest = atan(x / y);
    return y > 0 ? Math.PI / 2 - rest : -Math.PI / 2 - rest;
  }
  const angle = atan(y / x);
  if (x > 0) return angle;
  return y < 0 ? angle - Math.PI : angle + Math.PI;
}

export const asin = (x: number): number => atan2(x, Math.sqrt((1 - x) * (1 + x)));

export const acos = (x: number): number => 2 * atan2(Math.sqrt(1 - x), Math.sqrt(1 + x));
