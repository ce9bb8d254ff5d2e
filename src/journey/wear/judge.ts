import type { Estimate } from '../../quantity/estimate';
import { classLimits } from '../../standards/limits/class-limits';
import type { ClassLimits } from '../../standards/limits/thread-class';
import type { Thread } from '../../standards/thread';
import { type Verdict, verdictOn } from './verdict';

/** What a photo or a caliper says of a thread that may be worn. */
export interface CrestSeen {
  readonly diameterMm: Estimate | null;
  /** Of a photo; a caliper does not say. */
  readonly pitchMm: Estimate | null;
}

export interface CrestJudgement {
  readonly limits: ClassLimits | null;
  readonly verdict: Verdict;
}

/** A pitch this many u off, and by more than this share, is another thread's. */
const anotherPitch = { u: 4, share: 0.005 };

/** The diameter over the crests against the class of the thread that the part is said to have. */
export function judgeCrest(
  thread: Thread,
  className: string | undefined,
  { diameterMm, pitchMm }: CrestSeen,
): CrestJudgement {
  const limits = classLimits(thread, className);
  const open = (why: Extract<Verdict, { state: 'not-decidable' }>['why']): CrestJudgement => ({
    limits,
    verdict: { state: 'not-decidable', why },
  });
  if (thread.taper > 0) return open('tapered');
  if (!limits) return open('no-class');
  if (pitchMm) {
    const off = Math.abs(pitchMm.value - thread.pitchMm);
    if (off > Math.max(anotherPitch.u * pitchMm.u, anotherPitch.share * thread.pitchMm))
      return open('another-pitch');
  }
  if (!diameterMm) return open('unresolved');
  return { limits, verdict: verdictOn(diameterMm, limits.major) };
}
