import { card } from '../../scale-card/geometry';
import { type LengthUnit, typedLengthMm } from '../identification/bench-input';
import { t } from '../language/language';

/** A printer stretches both ways nearly alike; more than this between the bars is a misreading. */
const mostApart = 0.015;
/** Farther from nominal is another unit, or a page fitted to the paper. */
const mostOff = 0.1;

export interface TypedBars {
  readonly horizontalMm: number;
  readonly verticalMm: number;
  /** What is wrong with each, in the reader's words. */
  readonly wrong: { readonly long: string | null; readonly short: string | null };
}

export function typedBars(long: string, short: string, unit: LengthUnit): TypedBars {
  const { horizontal, vertical } = card.bars;
  const read = (typed: string, nominalMm: number) => {
    const mm = typedLengthMm(typed, unit);
    if (mm === null) return { mm: 0, share: 1, problem: t().card.notNumber };
    const share = mm / nominalMm;
    return { mm, share, problem: Math.abs(share - 1) > mostOff ? t().card.bad : null };
  };
  const one = read(long, horizontal.lengthMm);
  const other = read(short, vertical.lengthMm);
  const apart =
    !one.problem && !other.problem && Math.abs(one.share / other.share - 1) > mostApart
      ? t().loop.uncheckedCard.disagree
      : null;
  return {
    horizontalMm: one.mm,
    verticalMm: other.mm,
    wrong: { long: one.problem, short: other.problem ?? apart },
  };
}
