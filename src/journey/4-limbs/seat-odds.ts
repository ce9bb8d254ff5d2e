import * as portable from '../../quantity/portable-math';
import learnt from './allowances.json';
import type { CrestLines } from './crest-lines';
import type { PeriodTraits } from './period-odds';

/** What speaks for a thread lying where it was seated, whatever its period, each a logarithm: the surface's pattern,
 *  its size, crests on the limbs, their lying in one place, and corners of a hex lying in one place beside it. */
export interface SeatTraits {
  readonly score: number;
  readonly size: number;
  readonly evidence: number;
  readonly share: number;
  readonly hex: number;
}

export interface SeatWeights extends SeatTraits {
  readonly base: number;
}

/** Set by `npm run calibrate` from seats of which the truth tells whether they are right. */
export const seatWeights: SeatWeights = learnt.odds.seat;

export const seatTraits = (
  { score, size }: PeriodTraits,
  { evidence, share }: CrestLines,
  hexShare: number,
): SeatTraits => ({
  score,
  size,
  evidence,
  share: portable.log(share),
  hex: portable.log(hexShare),
});

/** Logarithm of the odds that a seat is right. */
export const seatOdds = (t: SeatTraits, w: SeatWeights = seatWeights): number =>
  w.base +
  w.score * t.score +
  w.size * t.size +
  w.evidence * t.evidence +
  w.share * t.share +
  w.hex * t.hex;
