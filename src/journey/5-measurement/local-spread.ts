import type { BudgetRow } from './thread-measurement';

/** How the error of a length (mm) or a taper is spread: normally by `u`, by `far` on the share of photos that went
 *  astray. */
export interface Spread {
  readonly u: number;
  readonly astray: number;
  readonly far: number;
}

/** What one thread's outline, limbs and surface leave to doubt, beside what camera, height and print do. */
export interface LocalSpread {
  readonly rows: readonly BudgetRow[];
  /** Of diameter and taper, without what camera, height and print add; where they are known as such. */
  readonly parts?: { readonly diameter: Spread; readonly taper: Spread };
  /** Of the taper on diameter. */
  readonly uTaper: number;
}
