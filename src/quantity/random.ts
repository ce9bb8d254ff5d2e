import * as portable from './portable-math';
/** Seeded random numbers for checks and generators: the same seed gives the same numbers on every
 *  machine. Not for secrets. */
export interface Random {
  /** Uniform in [0, 1), 32 bits of it. */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
  between(low: number, high: number): number;
  /** Uniform in 0 … n − 1. */
  integer(n: number): number;
  pick<T>(items: readonly T[]): T;
}

/** xoshiro128** (Blackman & Vigna 2018), its state filled from the seed by splitmix32. */
export function seededRandom(seed: number): Random {
  let mix = seed >>> 0;
  const next = () => {
    mix = (mix + 0x9e3779b9) >>> 0;
    let z = mix;
    z = Math.imul(z ^ (z >>> 16), 0x21f0aaad);
    z = Math.imul(z ^ (z >>> 15), 0x735a2d97);
    return (z ^ (z >>> 15)) >>> 0;
  };
  let [a, b, c, d] = [next(), next(), next(), next()];
  let spare = Number.NaN;

  const uniform = () => {
    const five = Math.imul(b, 5);
    const result = Math.imul((five << 7) | (five >>> 25), 9) >>> 0;
    const t = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= t;
    d = (d << 11) | (d >>> 21);
    return result / 4294967296;
  };
  const normal = () => {
    if (!Number.isNaN(spare)) {
      const kept = spare;
      spare = Number.NaN;
      return kept;
    }
    // Box–Muller; 1 − u keeps the logarithm finite.
    const radius = Math.sqrt(-2 * portable.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    spare = radius * portable.sin(angle);
    return radius * portable.cos(angle);
  };
  return {
    uniform,
    normal,
    between: (low, high) => low + (high - low) * uniform(),
    integer: (n) => Math.floor(uniform() * n),
    pick: (items) => items[Math.floor(uniform() * items.length)]!,
  };
}
