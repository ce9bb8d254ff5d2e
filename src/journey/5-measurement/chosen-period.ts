import * as portable from '../../quantity/portable-math';
import { logOdds, periodWeights } from '../4-limbs/period-odds';
import type { RatedPeriod } from '../4-limbs/seat-thread';
import type { Extent } from '../4-thread-signal/axis-frame';
import type { OutlinePoint } from '../4-thread-signal/outline-edges';
import { type PeriodStart, startPeriod } from './start-period';
import type { OtherPeriod } from './thread-measurement';
import type { Rival } from './thread-solution';

/** Less likely ones are not carried on. */
const leastShare = 0.002;
/** Independent edges per turn: neighbouring cuts share their light and their scratches. */
const perTurn = 2;
/** Share of an outline that is none, highlights and shadows, which some period or other explains. */
const shownByChance = 0.6;
/** First harmonic of a 55 or 60 degree profile's outline, pitches; and how far it is met on photos. */
const usualAmplitude = 0.25;
const uLnAmplitude = 0.4;

/** Of periods that the surface leaves possible, the one that surface and outline together speak for: the
 *  two sides of a thread are half a pitch apart, those of twice or half the pitch are not. An outline too scarce for
 *  any period says nothing. */
export function withOutline(
  points: readonly OutlinePoint[],
  middleS: number,
  zone: Extent,
  rivals: readonly RatedPeriod[],
): {
  /** Axial position of a crest on the left side, mm. */
  readonly crestS: number;
  readonly period: RatedPeriod;
  readonly others: readonly OtherPeriod[];
  readonly rivals: readonly Rival[];
} {
  const independent = perTurn * ((zone.toS - zone.fromS) / rivals[0].periodMm);
  const tried = rivals.map((period) => {
    const near = Array.from({ length: 9 }, (_, i) => period.periodMm * (1 + 0.0015 * (i - 4)));
    const begun = startPeriod(points, middleS, near);
    const spoken = begun ? spokenBy(begun, period.periodMm, independent) : 0;
    const odds = logOdds(period.traits) + periodWeights.outline * spoken;
    return { crestS: begun?.crestS ?? middleS, period, spoken, odds };
  });
  const [best] = tried.sort((a, b) => b.odds - a.odds);
  const weights = tried.map(({ odds }) => portable.exp(odds - best.odds));
  const all = weights.reduce((sum, w) => sum + w, 0);
  const others = tried.flatMap(({ period }, i) => {
    const share = weights[i] / all;
    const ratio = period.periodMm / best.period.periodMm;
    return i === 0 || share < leastShare ? [] : [{ ratio, share }];
  });
  return { ...best, others, rivals: tried };
}

/** What an outline says for a period, a logarithm: how much of it the period explains, as a tooth of that pitch. */
function spokenBy(begun: PeriodStart, periodMm: number, independent: number): number {
  const outline = (-independent / 2) * portable.log(Math.max(0.02, 1 - begun.explained));
  // What is no tooth of this pitch has another height, whatever it explains.
  const z = portable.log(Math.max(1e-3, begun.amplitudeMm / (usualAmplitude * periodMm)));
  const tooth = -0.5 * Math.min(9, (z / uLnAmplitude) ** 2);
  const junk = (-independent / 2) * portable.log(1 - shownByChance);
  return portable.log(portable.exp(outline + tooth) + portable.exp(junk));
}
