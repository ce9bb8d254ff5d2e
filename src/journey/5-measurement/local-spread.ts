import type { BudgetRow } from './thread-measurement';

/** How a length's error is spread: normally by `uMm`, by `farMm` on the share of photos that went astray. */
export interface Spread {
  readonly uMm: number;
  readonly astray: number;
  readonly farMm: number;
}

/** What one thread's outline, limbs and surface leave to doubt, beside what camera, height and print do. */
export interface LocalSpread {
  readonly rows: readonly BudgetRow[];
  /** Of the diameter, without what the rows of camera, height and print add; where it is known as such. */
  readonly diameter?: Spread;
  /** Of the taper on diameter. */
  readonly uTaper: number;
}
