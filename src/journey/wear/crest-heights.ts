import type { z } from 'zod';
import { median } from '../../quantity/order';
import type { ReadOnly } from '../../quantity/read-only';
import type { Extent } from '../4-thread-signal/axis-frame';
import type { OutlinePoint } from '../4-thread-signal/outline-edges';
import type { ThreadFit } from '../5-measurement/fit-thread';
import type { crestHeightSchema } from './crest-height-schema';

/** One crest of the outline. A turn shows two, one on either side. */
export type CrestHeight = ReadOnly<z.infer<typeof crestHeightSchema>>;

/** Either way of a crest's middle, in pitches: the flat of a thread as made is 1/8 wide (ISO 68-1), that of a
 *  rubbed one wider. */
const halfWindow = 0.1;
/** Cuts are half a pixel apart, and what blurs one blurs its neighbours: so many count as one. */
const cutsPerEdge = 4;
const fewestCuts = 3;
/** A crest is short by more than chance (of some twenty, seldom one) and by more than crests of one thread
 *  differ as made, over the pitch. */
const beyondChance = 3;
const asMade = 0.02;

/** Height of each crest that the outline shows, on both sides. The fit gives the thread as it would be if
 *  every crest were like the rest, with what blur and slant make of it; what the cuts across one crest
 *  lie off that, in their middle, is that crest's own.
 *  Frame: axis frame of the points, mm. `uDiameterMm` is of the diameter over all crests, which they share. */
export function crestHeights(
  points: readonly OutlinePoint[],
  fit: ThreadFit,
  zone: Extent,
  uDiameterMm: number,
): CrestHeight[] {
  return (['left', 'right'] as const).flatMap((side) => {
    const own = points.filter((q) => q.side === side);
    const first = fit.crestS + (side === 'left' ? 0 : 0.5) * fit.pitchMm;
    const from = Math.ceil((zone.fromS - first) / fit.pitchMm);
    const to = Math.floor((zone.toS - first) / fit.pitchMm);
    const seen = Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => ({
      turn: i + 1,
      s: first + (from + i) * fit.pitchMm,
    })).flatMap(({ turn, s }) => {
      const near = own.filter((q) => Math.abs(q.s - s) < halfWindow * fit.pitchMm);
      if (near.length < fewestCuts) return [];
      const off = median(near.map((q) => q.r - fit.modelAt(side, q.s, q.slope)));
      const edges = Math.max(1, near.length / cutsPerEdge);
      const uOwnMm = Math.hypot(fit.scatterMm, median(near.map((q) => q.uMm))) / Math.sqrt(edges);
      const heightMm = fit.crestRadiusMm + fit.halfTaper * (s - fit.middleS) + off;
      const u = Math.hypot(uOwnMm, uDiameterMm / 2);
      return [{ side, turn, atMm: s - zone.fromS, heightMm, off, u, uOwnMm }];
    });
    const usual = median(seen.map(({ off }) => off));
    // The last turn runs out: it is lower as made.
    const whole = zone.toS - zone.fromS - fit.pitchMm;
    return seen.map(({ off, ...crest }) => {
      const short = crest.atMm > whole ? 0 : usual - off;
      const chance = Math.max(beyondChance * crest.uOwnMm, asMade * fit.pitchMm);
      return { ...crest, shortMm: short > chance ? short : null };
    });
  });
}
