import type { WearAssessment } from '../../journey/wear/assess';
import type { WearFinding } from '../../journey/wear/finding';
import { canPass, guardFactor, type Verdict } from '../../journey/wear/verdict';
import type { Estimate } from '../../quantity/estimate';
import type { ClassLimits } from '../../standards/limits/thread-class';
import { number, plusMinus } from '../language/format';
import { t } from '../language/language';

export const levelWords = (level: WearFinding['level']): string =>
  t().wear.levels[level ?? 'nothing'];

export function verdictWords(verdict: Verdict): string {
  switch (verdict.state) {
    case 'within':
      return t().wear.verdicts.within;
    case 'below':
    case 'above':
      return t().wear.verdicts[verdict.state](plusMinus(verdict.by));
    case 'not-decidable':
      return t().wear.undecided[verdict.why];
  }
}

/** ± at 95 %, as everywhere on the screen. */
const expanded = (u: number): string => number(2 * u, 2);
const widthOf = ({ major }: ClassLimits): number => major.maxMm - major.minMm;

/** What a measurement must be worth before anyone relies on it. */
export function neededWords(limits: ClassLimits): string {
  const width = widthOf(limits);
  return t().wear.widthOf(limits.class, number(width, 2), number(width / guardFactor, 2));
}

/** What this photo is worth against the class. */
export function photoWords(diameterMm: Estimate, limits: ClassLimits): string {
  const [u, width] = [expanded(diameterMm.u), number(widthOf(limits), 2)];
  return canPass(diameterMm.u, limits.major)
    ? t().wear.photoCanDecide(u, width)
    : t().wear.photoDecidesNothing(u, width, number(guardFactor * diameterMm.u, 2));
}

export function overlapWords({
  leftMm,
  atLimitMm,
}: NonNullable<WearAssessment['overlap']>): string {
  if (leftMm <= 0) return t().wear.overlapNone;
  const share = `${number((100 * leftMm) / atLimitMm, 0)}\u00a0%`;
  return t().wear.overlap(number(leftMm, 2), number(atLimitMm, 2), share);
}

/** One line for a place with little room. */
export function findingLine({ finding }: WearAssessment): string {
  return t().wear.onSheet(levelWords(finding.level));
}

export const openInWords = ({ finding }: WearAssessment): string =>
  finding.open.map((question) => t().wear.questions[question].name).join(', ');
