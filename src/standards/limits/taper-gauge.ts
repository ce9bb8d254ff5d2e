import type { Thread } from '../thread';

/** A tapered thread is judged by how far its gauge ring runs on, not by its crests (ISO 7-2;
 *  ASME B1.20.1): the small end lies flush with the ring's face within a tolerance along the axis. */
export interface TaperGauge {
  readonly gaugeLengthMm: number;
  /** Either way, of a part as made. */
  readonly toleranceMm: number;
  readonly pitchMm: number;
}

export function taperGauge({ taperPlanes, pitchMm, series }: Thread): TaperGauge | null {
  // Of the metric taper we know the lengths too loosely to judge a part by.
  if (!taperPlanes || series === 'taper') return null;
  const { gaugeLengthMm, gaugeToleranceMm: toleranceMm } = taperPlanes;
  return { gaugeLengthMm, toleranceMm, pitchMm };
}
