import { type BendSpread, bendDensity } from '../../journey/4-limbs/lens-by-thread';
import { rounded } from './rounded';
import { searchWeights } from './search-weights';

/** How far a thread's pattern bends about a true camera, periods, and how the view leans along its axis. */
export interface Bend {
  readonly bend: number;
  readonly lean: number;
}

const names = ['drawn', 'straight', 'leaning', 'astray'] as const;
type Sought = Readonly<Record<(typeof names)[number], number>>;
/** All but the first: logarithms, and the logit of a share. */
const start: Sought = { drawn: 0, straight: -3.5, leaning: -1, astray: -2 };

/** The spread under which the bends are likeliest. */
export function fitBend(rows: readonly Bend[]): BendSpread {
  const spread = (w: Sought): BendSpread => ({
    drawn: w.drawn,
    straight: Math.exp(w.straight),
    leaning: Math.exp(w.leaning),
    astray: 1 / (1 + Math.exp(-w.astray)),
  });
  const cost = (w: Sought) =>
    -rows.reduce((sum, { bend, lean }) => sum + Math.log(bendDensity(bend, lean, spread(w))), 0);
  const best = spread(searchWeights(names, start, cost, () => -9));
  return {
    drawn: rounded(best.drawn),
    straight: rounded(best.straight),
    leaning: rounded(best.leaning),
    astray: rounded(best.astray),
  };
}
