import { type SeatTraits, type SeatWeights, seatOdds } from '../../journey/4-limbs/seat-odds';
import { searchWeights } from './search-weights';

/** A place that was tried, and whether the thread lies there. */
export interface SeatSeen {
  readonly right: boolean;
  readonly traits: SeatTraits;
}

const names = ['base', 'score', 'turn', 'size', 'evidence', 'share', 'hex', 'close'] as const;
/** Weights stay small where seats say little: a ridge of so much per unit squared. */
const ridge = 0.01;

/** Weights under which the odds of a seat say how often it is right (logistic regression), by a search along each
 *  weight in turn. Every photo counts alike, however many seats were tried on it. */
export function fitSeats(photos: readonly (readonly SeatSeen[])[]): SeatWeights {
  const cost = (w: SeatWeights) => {
    let sum = 0;
    for (const seats of photos)
      for (const { right, traits } of seats) {
        const odds = seatOdds(traits, w);
        sum += Math.log1p(Math.exp(right ? -odds : odds)) / seats.length;
      }
    return sum + ridge * names.reduce((t, name) => t + w[name] ** 2, 0);
  };
  const start = { base: 4, score: 1, turn: 1, size: 1, evidence: 1, share: 1, hex: 1, close: 5 };
  // What speaks for a seat never speaks against it.
  return searchWeights(names, start, cost, (name) =>
    name === 'base' ? Number.NEGATIVE_INFINITY : 0,
  );
}
