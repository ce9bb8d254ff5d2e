import type { Estimate } from '../../quantity/estimate';
import { type TaperGauge, taperGauge } from '../../standards/limits/taper-gauge';
import type { ClassLimits } from '../../standards/limits/thread-class';
import type { Thread } from '../../standards/thread';
import type { ThreadMeasurement } from '../5-measurement/thread-measurement';
import { type CaliperFinding, judgeCaliper } from './caliper-places';
import type { CrestHeight } from './crest-heights';
import { foldFinding, type WearFinding } from './finding';
import { judgeGaugePlane } from './gauge-plane';
import { judgeCrest } from './judge';
import { leastOverlapMm, overlapMm } from './overlap';
import { resolvedMajor } from './resolved-major';
import { type Roundness, roundness } from './roundness';
import { canPass, type Verdict } from './verdict';
import type { WearReadings } from './wear-readings';

export interface WearCase {
  readonly thread: Thread;
  /** Null for the usual class of its standard. */
  readonly className: string | null;
  /** All photos combined; null without any. */
  readonly measurement: ThreadMeasurement | null;
  readonly shots: readonly {
    readonly measurement: ThreadMeasurement;
    readonly crests: readonly CrestHeight[];
  }[];
  readonly readings: WearReadings;
}

export interface PhotoFinding {
  readonly diameterMm: Estimate | null;
  readonly verdict: Verdict;
  /** Whether any part could be found within at this uncertainty; null where no class is known. */
  readonly couldPass: boolean | null;
}

export interface WearAssessment {
  readonly thread: Thread;
  /** Null on a taper, and where no class is known. */
  readonly limits: ClassLimits | null;
  /** The photo shows another pitch than this thread has: nothing of its crests is held against the class. */
  readonly anotherPitch: boolean;
  readonly gauge: TaperGauge | null;
  readonly photo: PhotoFinding | null;
  readonly caliper: CaliperFinding | null;
  readonly plane: Verdict | null;
  /** What counts of the two: a caliper knows the crest better. */
  readonly crest: Verdict | null;
  readonly overlap: {
    readonly crestDiameterMm: number;
    readonly leftMm: number;
    readonly atLimitMm: number;
  } | null;
  readonly roundness: Roundness | null;
  readonly shortCrests: readonly CrestHeight[];
  readonly finding: WearFinding;
}

/** Everything that can be said of one used thread. Nothing of it clears a part for pressure. */
export function assessWear(part: WearCase): WearAssessment {
  const { thread, className, measurement, shots, readings } = part;
  const gauge = taperGauge(thread);
  // On a taper every photo has its own place of the diameter.
  const round = gauge ? null : roundness(shots.map((shot) => shot.measurement));
  const whole = measurement && resolvedMajor(measurement);
  // Where the part is uneven round, its smallest diameter counts.
  const diameterMm = whole && round?.uneven ? round.smallestMm : whole;
  const { limits, verdict } = judgeCrest(thread, className ?? undefined, {
    diameterMm,
    pitchMm: measurement?.pitchMm ?? null,
  });
  const photo: PhotoFinding | null = measurement && {
    diameterMm,
    verdict,
    couldPass: limits && diameterMm && canPass(diameterMm.u, limits.major),
  };
  const plane =
    gauge && readings.ringTurns !== null ? judgeGaugePlane(readings.ringTurns, gauge) : null;
  const caliper = limits && judgeCaliper(readings, limits.major);
  const anotherPitch = verdict.state === 'not-decidable' && verdict.why === 'another-pitch';
  const crest = gauge ? null : ((anotherPitch ? null : caliper?.verdict) ?? photo?.verdict ?? null);
  const shortCrests = shots.flatMap((shot) => shot.crests.filter((one) => one.shortMm !== null));
  const crestDiameterMm = caliper?.smallest.diameterMm.value ?? diameterMm?.value;
  return {
    ...{ thread, limits, anotherPitch, gauge, photo, caliper, plane, crest, shortCrests },
    roundness: round,
    overlap:
      limits && !anotherPitch && crestDiameterMm !== undefined
        ? {
            crestDiameterMm,
            leftMm: overlapMm(crestDiameterMm, thread),
            atLimitMm: leastOverlapMm(limits, thread),
          }
        : null,
    finding: foldFinding({
      ...{ readings, plane, crest, shortCrests },
      uneven: (round?.uneven ?? false) || (caliper?.unevenMm ?? null) !== null,
      tapered: gauge !== null,
    }),
  };
}
