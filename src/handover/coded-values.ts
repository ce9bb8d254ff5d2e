import type { Estimate } from '../quantity/estimate';

/** How values are written in a picture's code: no more digits than they are worth, no key without something to say. */

export const foldEstimate = ({ value, u }: Estimate): [number, number] => [
  digits(value, 7),
  digits(u, 3),
];
export const unfoldEstimate = ([value, u]: readonly [number, number]): Estimate => ({ value, u });

export function digits(value: number, significant: number): number {
  return Number(value.toPrecision(significant));
}

/** A key only where there is something to say. */
export function given<K extends string, T>(
  key: K,
  value: T | null | undefined | '',
): { [k in K]?: T } {
  return (value === null || value === undefined || value === '' ? {} : { [key]: value }) as {
    [k in K]?: T;
  };
}
