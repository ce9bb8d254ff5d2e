import type { BudgetRow } from './thread-measurement';

/** What one thread's outline, limbs and surface leave to doubt, beside what camera, height and print do. */
export interface LocalSpread {
  readonly rows: readonly BudgetRow[];
  /** Of the taper on diameter. */
  readonly uTaper: number;
}
