import { type SurfaceSpread, surfaceU } from '../../journey/5-measurement/learnt-spread';
import { rounded } from './rounded';
import { searchWeights } from './search-weights';

/** How far off the surface's pitch is, a share of it; `shared`: uncertainty that camera, height and print account for. */
export interface SurfaceOff {
  readonly error: number;
  readonly shared: number;
  readonly turns: number;
}

const names = ['even', 'drift'] as const;
/** Logarithms. */
const start: Readonly<Record<(typeof names)[number], number>> = { even: -7, drift: -4 };
/** Share of surfaces whose pattern is another one's, and how far off such a pitch may be. */
const other = { share: 0.05, within: 0.02 };

/** The spread under which the errors are likeliest. */
export function fitSurface(rows: readonly SurfaceOff[]): SurfaceSpread {
  const spread = (w: typeof start): SurfaceSpread => ({
    even: Math.exp(w.even),
    drift: Math.exp(w.drift),
  });
  const cost = (w: typeof start) =>
    -rows.reduce((sum, { error, shared, turns }) => {
      const u = Math.hypot(shared, surfaceU(turns, spread(w)));
      const bell = Math.exp(-0.5 * (error / u) ** 2) / (u * Math.sqrt(2 * Math.PI));
      return sum + Math.log((1 - other.share) * bell + other.share / (2 * other.within));
    }, 0);
  const best = spread(searchWeights(names, start, cost, () => -12));
  return { even: rounded(best.even), drift: rounded(best.drift) };
}
