import type { Thread } from '../thread';
import { metricLimits } from './metric-limits';
import { parallelPipeLimits } from './parallel-pipe-limits';
import { type ClassLimits, classesBySystem, type ThreadClass } from './thread-class';
import { unifiedLimits } from './unified-limits';

/** Classes that a thread may be judged by. None on a taper, which its gauge plane judges, nor on NPSM,
 *  whose limits we only know within a tenth of a millimetre. */
export function classesOf(thread: Thread): readonly ThreadClass[] {
  return thread.taper > 0 ? [] : classesBySystem[thread.system];
}

export function classLimits(thread: Thread, name?: string): ClassLimits | null {
  const classes = classesOf(thread);
  const wanted = name === undefined ? classes[0] : classes.find((one) => one === name);
  if (wanted === undefined) return null;
  const shared = { thread: thread.designation, class: wanted };
  switch (wanted) {
    case '2A':
    case '3A':
      return { ...shared, ...unifiedLimits(thread, wanted) };
    case '6g':
    case '6h':
      return { ...shared, ...metricLimits(thread, wanted) };
    case 'A':
    case 'B':
      return { ...shared, ...parallelPipeLimits(thread, wanted) };
  }
}
