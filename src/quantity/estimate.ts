/** A measured quantity: best value and one standard uncertainty, same unit (JCGM 100:2008, 3.1). */
export interface Estimate {
  readonly value: number;
  readonly u: number;
}
