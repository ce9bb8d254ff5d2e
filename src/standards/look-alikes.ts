import type { Thread } from './thread';

export interface Uncertainty {
  /** Relative, of pitch and of diameter alone, and of the scale that both share. */
  readonly pitch: number;
  readonly diameter: number;
  readonly scale: number;
}

/** Below this many standard uncertainties two threads are not surely told apart. */
const separable = 4;

/** Every pair of threads that a measurement of a given uncertainty cannot tell apart. */
export function lookAlikes(threads: readonly Thread[], u: Uncertainty): [Thread, Thread][] {
  const sorted = threads.filter((t) => t.separable).toSorted((a, b) => a.pitchMm - b.pitchMm);
  const farthest = Math.exp(separable * Math.hypot(u.pitch, u.scale));
  const found: [Thread, Thread][] = [];
  for (let i = 0; i < sorted.length; i++) {
    for (let j = i + 1; j < sorted.length; j++) {
      const [a, b] = [sorted[i]!, sorted[j]!];
      if (b.pitchMm / a.pitchMm > farthest) break;
      if (distanceBetween(a, b, u) < separable) found.push([a, b]);
    }
  }
  return found;
}

/** Crest diameters that a photo or caliper may meet: on a taper, anywhere along it. */
function crestRange({ crests, taper, taperPlanes }: Thread): { low: number; high: number } {
  if (taperPlanes === null) return { low: crests.minMm, high: crests.maxMm };
  const half = (crests.maxMm - crests.minMm) / 2;
  const small = taperPlanes.majorAtSmallEndMm;
  return { low: small - half, high: small + half + taper * taperPlanes.usefulLengthMm };
}

/** Mahalanobis distance in (ln pitch, ln diameter) between the nearest pair of made parts. */
function distanceBetween(a: Thread, b: Thread, u: Uncertainty): number {
  const pitch = Math.log(b.pitchMm / a.pitchMm);
  const [ra, rb] = [crestRange(a), crestRange(b)];
  const low = Math.log(rb.low / ra.high);
  const high = Math.log(rb.high / ra.low);
  const varPitch = u.pitch ** 2 + u.scale ** 2;
  const shared = u.scale ** 2;
  const varDiameter = u.diameter ** 2 + shared;
  // Given the pitch difference, the diameter difference that fits best, kept to what can be.
  const diameter = Math.min(high, Math.max(low, (pitch * shared) / varPitch));
  const rest = diameter - (pitch * shared) / varPitch;
  return Math.hypot(
    pitch / Math.sqrt(varPitch),
    rest / Math.sqrt(varDiameter - shared ** 2 / varPitch),
  );
}
