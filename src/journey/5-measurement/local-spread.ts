import { erf } from '../../quantity/erf';
import type { BudgetRow, SpreadPart } from './thread-measurement';

/** How the error of a length (mm) or a taper is spread: normally by `u`, by `far` on the share of photos that went
 *  astray, and farther still on those that lost it altogether. */
export interface Spread {
  readonly u: number;
  readonly astray: number;
  readonly far: number;
  readonly lost?: SpreadPart;
}

/** What one thread's outline, limbs and surface leave to doubt, beside what camera, height and print do. */
export interface LocalSpread {
  readonly rows: readonly BudgetRow[];
  /** Of diameter and taper, without what camera, height and print add. */
  readonly parts: { readonly diameter: Spread; readonly taper: Spread };
  /** Of the taper on diameter. */
  readonly uTaper: number;
}

/** The same of a length so many times as long. */
export const scaled = ({ u, astray, far, lost }: Spread, k: number): Spread => ({
  u: k * u,
  astray,
  far: k * far,
  ...(lost && { lost: { ...lost, u: k * lost.u } }),
});

/** All parts of a spread, with what else adds to either. */
export const partsOf = ({ u, astray, far, lost }: Spread, beside = 0): SpreadPart[] => {
  const kept = 1 - (lost?.share ?? 0);
  const parts = [
    { share: kept * (1 - astray), u },
    { share: kept * astray, u: far },
    ...(lost ? [lost] : []),
  ];
  return parts.map(({ share, u: own }) => ({ share, u: Math.hypot(beside, own) }));
};

/** The standard uncertainty of which 1.96 either way holds 95 % of the errors of all parts. */
export function covering(parts: readonly SpreadPart[]): number {
  const held = (by: number) =>
    parts.reduce((sum, { share, u }) => sum + share * erf((1.96 * by) / (u * Math.SQRT2)), 0);
  let [low, high] = [0, Math.max(...parts.map(({ u }) => u))];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (held(middle) < 0.95) low = middle;
    else high = middle;
  }
  return high;
}

/** Of a spread's own. */
export const coveringU = (spread: Spread): number => covering(partsOf(spread));
