import type { ClassLimits } from '../../standards/limits/thread-class';
import type { CrestHeight } from './crest-heights';
import { verdictOn } from './verdict';

/** How a single crest stands out: lower than the rest of its side, or all of it below the class. */
export type CrestState = 'short' | 'below' | 'as-others';

export function crestState(crest: CrestHeight, limits: ClassLimits | null): CrestState {
  if (crest.shortMm !== null) return 'short';
  if (!limits) return 'as-others';
  const { state } = verdictOn(
    { value: crest.heightMm, u: crest.u },
    { minMm: limits.major.minMm / 2, maxMm: limits.major.maxMm / 2 },
  );
  return state === 'below' ? 'below' : 'as-others';
}
