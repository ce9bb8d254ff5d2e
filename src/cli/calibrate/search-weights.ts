import { rounded } from './rounded';

/** Falls of the cost below this are none. */
const noFall = 0.05;

/** Weights of least cost by a search along each in turn, by ever smaller steps, and once more from there as long as that
 *  brings something; `least` keeps one from falling below what it can mean. */
export function searchWeights<Name extends string>(
  names: readonly Name[],
  start: Readonly<Record<Name, number>>,
  costOf: (weights: Readonly<Record<Name, number>>) => number,
  least: (name: Name) => number = () => 0,
  most: (name: Name) => number = () => Number.POSITIVE_INFINITY,
): Readonly<Record<Name, number>> {
  let best = start;
  let cost = costOf(best);
  let before: number;
  do {
    before = cost;
    for (let hop = 1; hop > 0.01; hop /= 2)
      for (let pass = 0; pass < 8; pass++)
        for (const name of names)
          for (const d of [hop, -hop]) {
            const tried = {
              ...best,
              [name]: Math.min(most(name), Math.max(least(name), best[name] + d)),
            };
            const value = costOf(tried);
            if (value < cost) {
              cost = value;
              best = tried;
            }
          }
  } while (cost < before - noFall);
  return Object.fromEntries(names.map((name) => [name, rounded(best[name])])) as Record<
    Name,
    number
  >;
}
