import type { Estimate } from '../../quantity/estimate';
import type { OutlinePoint } from '../4-thread-signal/outline-edges';
import type { ThreadFit } from './fit-thread';
import { covarianceOf } from './outline-parameters';
import { formsNear, type ThreadForm } from './thread-form';
import { onWholeFlanks } from './whole-flanks';

/** One more fit, of these points, going on from another, taking a form for given. */
export type Refit = (
  points: readonly OutlinePoint[],
  warm: ThreadFit,
  form: ThreadForm,
) => ThreadFit;

export interface FitAsMade {
  readonly points: readonly OutlinePoint[];
  readonly fit: ThreadFit;
  /** By how much the crest radius depends on which of the likely forms the thread has. */
  readonly uFormMm: number;
}

const mostCuts = 2;

/** The last fits of a thread. Only when pitch, diameter and taper are known do the tables tell which crests
 *  and roots to expect; and only against a fit does a flank show that it is not whole. */
export function fitAsMade(
  points: readonly OutlinePoint[],
  found: ThreadFit,
  refit: Refit,
): FitAsMade {
  const [likeliest, ...others] = formsNear(
    found.pitchMm,
    2 * found.crestRadiusMm,
    taperSeen(found),
  ).sort((a, b) => b.share - a.share);
  let kept = points;
  let fit = refit(kept, found, likeliest.form);
  for (let cut = 0; cut < mostCuts; cut++) {
    const whole = onWholeFlanks(kept, fit);
    if (whole.length === kept.length) break;
    kept = whole;
    fit = refit(kept, fit, likeliest.form);
  }
  const variance = others.reduce((sum, { form, share }) => {
    const apart = refit(kept, fit, form).crestRadiusMm - fit.crestRadiusMm;
    return sum + share * apart * apart;
  }, 0);
  return { points: kept, fit, uFormMm: Math.sqrt(variance) };
}

/** Taper on diameter as far as the outline tells it. */
function taperSeen(fit: ThreadFit): Estimate | null {
  const u = Math.hypot(2 * Math.sqrt(covarianceOf(fit, 'halfTaper')), 0.003);
  return u < 0.01 ? { value: 2 * fit.halfTaper, u } : null;
}
