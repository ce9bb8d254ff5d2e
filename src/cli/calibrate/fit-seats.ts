import { type SeatTraits, type SeatWeights, seatOdds } from '../../journey/4-limbs/seat-odds';
import { rounded } from './rounded';

/** A place that was tried, and whether the thread lies there. */
export interface SeatSeen {
  readonly right: boolean;
  readonly traits: SeatTraits;
}

const names = ['base', 'score', 'turn', 'size', 'evidence', 'share'] as const;
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
  let best: SeatWeights = { base: 4, score: 1, turn: 1, size: 1, evidence: 1, share: 1 };
  let least = cost(best);
  for (let hop = 1; hop > 0.01; hop /= 2)
    for (let pass = 0; pass < 8; pass++)
      for (const name of names)
        for (const d of [hop, -hop]) {
          const moved = best[name] + d;
          // What speaks for a seat never speaks against it.
          const tried = { ...best, [name]: name === 'base' ? moved : Math.max(0, moved) };
          const value = cost(tried);
          if (value < least) {
            least = value;
            best = tried;
          }
        }
  return Object.fromEntries(
    names.map((name) => [name, rounded(best[name])]),
  ) as unknown as SeatWeights;
}
