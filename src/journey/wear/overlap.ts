import type { ClassLimits } from '../../standards/limits/thread-class';
import type { Thread } from '../../standards/thread';

/** How much of the crest still bears, mm a side, over the widest bore that the internal thread may have. */
export function overlapMm(crestDiameterMm: number, { bore }: Thread): number {
  return Math.max(0, (crestDiameterMm - bore.maxMm) / 2);
}

/** What the smallest part within its class has. */
export function leastOverlapMm(limits: ClassLimits, thread: Thread): number {
  return overlapMm(limits.major.minMm, thread);
}
