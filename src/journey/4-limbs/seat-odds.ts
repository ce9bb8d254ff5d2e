import * as portable from '../../quantity/portable-math';
import learnt from './allowances.json';
import type { CrestLines } from './crest-lines';
import type { PeriodTraits } from './period-odds';

/** What speaks for a thread lying where it was seated, whatever its period, each a logarithm: the surface's pattern,
 *  the turn of the axis that it would need, its size, crests on the limbs, their lying in one place, corners of a hex
 *  lying in one place beside it; and how narrowly a close look at the limbs places the crests, −u over the pitch. */
export interface SeatTraits {
  readonly score: number;
  readonly turn: number;
  readonly size: number;
  readonly evidence: number;
  readonly share: number;
  readonly hex: number;
  readonly close: number;
}

export interface SeatWeights extends SeatTraits {
  readonly base: number;
}

/** Set by `npm run calibrate` from seats of which the truth tells whether they are right. */
export const seatWeights: SeatWeights = learnt.seat;

/** Where a close look has shown nothing: as wide as it looks. */
export const nothingClose = -1;

export const seatTraits = (
  { score, turn, size }: PeriodTraits,
  { evidence, share }: CrestLines,
  hexShare: number,
): SeatTraits => ({
  score,
  turn,
  size,
  evidence,
  share: portable.log(share),
  hex: portable.log(hexShare),
  close: nothingClose,
});

/** Logarithm of the odds that a seat is right. */
export const seatOdds = (t: SeatTraits, w: SeatWeights = seatWeights): number =>
  w.base +
  w.score * t.score +
  w.turn * t.turn +
  w.size * t.size +
  w.evidence * t.evidence +
  w.share * t.share +
  w.hex * t.hex +
  w.close * t.close;
