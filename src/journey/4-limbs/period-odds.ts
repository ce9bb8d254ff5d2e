import learnt from './allowances.json';

/** What speaks for a period as the pitch, each a logarithm: the share of the surface that climbs with it,
 *  the turn of the axis that its climb would need, its size for a thread of this diameter, and that
 *  it is no multiple of another. */
export interface PeriodTraits {
  readonly score: number;
  readonly turn: number;
  readonly size: number;
  readonly multiple: number;
}

/** How much each counts, and the outline's own voice; set by `npm run calibrate`. */
export interface PeriodWeights extends PeriodTraits {
  readonly outline: number;
}

export const periodWeights: PeriodWeights = learnt.odds.period;

/** Logarithm of the odds of a period against others, up to a constant. */
export const logOdds = (t: PeriodTraits, w: PeriodTraits = periodWeights): number =>
  w.score * t.score + w.turn * t.turn + w.size * t.size + w.multiple * t.multiple;
