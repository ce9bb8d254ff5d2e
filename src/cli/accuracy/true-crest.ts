import type { Truth } from './truth';

type Crest = Pick<Truth, 'crest_major_at_start_mm' | 'crest_major_at_end_mm' | 'taper'>;

/** True radius over the crests so far from the thread's start along its axis, mm: that of a taper grows until it meets the
 *  cylinder that the thread is cut into, on which its last crests lie flat. */
export function trueCrestMm(
  { crest_major_at_start_mm: start, crest_major_at_end_mm: end, taper }: Crest,
  alongMm: number,
): number {
  return taper === 0 ? (start + end) / 4 : Math.min(start + taper * alongMm, end) / 2;
}
