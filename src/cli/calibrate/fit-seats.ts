import { type SeatTraits, type SeatWeights, seatOdds } from '../../journey/4-limbs/seat-odds';
import { searchWeights } from './search-weights';

/** A place that was tried, and whether the thread lies there. */
export interface SeatSeen {
  readonly right: boolean;
  readonly traits: SeatTraits;
}

const names = ['base', 'score', 'evidence', 'share', 'hex'] as const;
/** What is usual comes from the tables, as a density: photos, drawn with few of their threads, may not sharpen it. */
const known = { size: 1 };
/** Weights stay small where seats say little: a ridge of so much per unit squared. */
const ridge = 0.01;

/** Weights under which the odds of a seat say how often it is right (logistic regression), by a search along each
 *  weight in turn. Every photo counts alike, however many seats were tried on it. */
export function fitSeats(photos: readonly (readonly SeatSeen[])[]): SeatWeights {
  const cost = (w: Record<(typeof names)[number], number>) => {
    let sum = 0;
    for (const seats of photos)
      for (const { right, traits } of seats) {
        const odds = seatOdds(traits, { ...w, ...known });
        sum += Math.log1p(Math.exp(right ? -odds : odds)) / seats.length;
      }
    return sum + ridge * names.reduce((t, name) => t + w[name] ** 2, 0);
  };
  const start = { base: 4, score: 1, evidence: 1, share: 1, hex: 1 };
  // What speaks for a seat never speaks against it.
  const sought = searchWeights(names, start, cost, (name) =>
    name === 'base' ? Number.NEGATIVE_INFINITY : 0,
  );
  return { ...sought, ...known };
}
