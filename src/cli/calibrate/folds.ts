import { spreadOf } from '../../journey/5-measurement/learnt-spread';
import { coveringU } from '../../journey/5-measurement/local-spread';
import { median } from '../../quantity/order';
import { fitSpread, type Off } from './fit-spread';

/** What a spread is worth on photos that did not set it. */
export interface HeldOut {
  /** Share of errors within 1.96 of the stated u. */
  readonly held: number;
  /** Median of the stated u, pitches. */
  readonly medianU: number;
}

/** Every fold judged by weights that the others set. */
export function heldOut(rows: readonly Off[], folds = 5): HeldOut {
  const weights = Array.from({ length: folds }, (_, fold) =>
    fitSpread(rows.filter((_, i) => i % folds !== fold)),
  );
  const judged = rows.map(({ errorMm, sharedMm, traces }, i) => {
    const u = Math.hypot(sharedMm, coveringU(spreadOf(traces, weights[i % folds])));
    return { within: Math.abs(errorMm) < 1.96 * u, share: u / traces.pitchMm };
  });
  return {
    held: judged.filter(({ within }) => within).length / judged.length,
    medianU: median(judged.map(({ share }) => share)),
  };
}
