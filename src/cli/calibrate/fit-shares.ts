import { type Shares, shareNames, spreadMm } from '../../journey/5-measurement/learnt-spread';
import type { Off } from './residual';
import { rounded } from './rounded';

/** Tails: Student's t of so few degrees of freedom keeps one shadow from setting every share. */
const freedom = 5;
/** A trace that few photos left is not worth more than this. */
const most = 3;
/** Of normal deviates within ±1.96. */
export const usualCover = 0.95;

/** Shares under which the residuals are likeliest, by a search along each share in turn; then all
 *  scaled so that a given part of the residuals lies within 1.96 u. */
export function fitShares(rows: readonly Off[], start: Shares, cover = usualCover): Shares {
  let best = { ...start };
  let least = cost(rows, best);
  for (let factor = 4; factor > 1.03; factor = Math.sqrt(factor))
    for (let pass = 0; pass < 6; pass++)
      for (const name of shareNames)
        for (const k of [factor, 1 / factor, 0]) {
          const tried = {
            ...best,
            [name]: k === 0 ? 0 : Math.min(most, Math.max(best[name], 1e-4) * k),
          };
          const value = cost(rows, tried);
          if (value < least) {
            least = value;
            best = tried;
          }
        }
  return scaled(best, widening(rows, best, cover));
}

function cost(rows: readonly Off[], shares: Shares): number {
  return rows.reduce((sum, { errorMm, sharedMm, traces }) => {
    const u = Math.hypot(sharedMm, spreadMm(traces, shares), 1e-4);
    const z = errorMm / u;
    return sum + Math.log(u) + ((freedom + 1) / 2) * Math.log(1 + (z * z) / freedom);
  }, 0);
}

/** The factor on all shares at which as many as should lie within 1.96 u. */
function widening(rows: readonly Off[], shares: Shares, cover: number): number {
  const held = (k: number) =>
    rows.filter(
      ({ errorMm, sharedMm, traces }) =>
        Math.abs(errorMm) < 1.96 * Math.hypot(sharedMm, k * spreadMm(traces, shares)),
    ).length / rows.length;
  let k = 0.3;
  while (held(k) < cover && k < 10) k *= 1.02;
  return k;
}

const scaled = (shares: Shares, k: number): Shares => ({
  fit: rounded(k * shares.fit),
  apart: rounded(k * shares.apart),
  known: rounded(k * shares.known),
  pitch: rounded(k * shares.pitch),
  pixel: rounded(k * shares.pixel),
});
