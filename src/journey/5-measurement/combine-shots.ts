import type { Estimate } from '../../quantity/estimate';
import { ok, type Result, refuse } from '../../quantity/result';
import type { BudgetRow, EndShows, ThreadMeasurement, ThreadShows } from './thread-measurement';

/** Errors that several photos of one fitting share: the same print, the same card on the same
 *  table, the same part lying the same way, the same lens and the same light. They do not average
 *  out. A lens found anew in each photo, or a part turned between photos, would share less; to
 *  count them as shared errs on the wide side. */
const shared: readonly BudgetRow['source'][] = [
  'print-scale',
  'card-bow',
  'thread-form',
  'edge-bias',
  'focal-length',
  'height',
];

/** Photos of one part agree to this many standard uncertainties of their difference. */
const disagreement = 4;

interface Split {
  readonly value: number;
  readonly u: number;
  /** By shared source, mm. */
  readonly common: readonly number[];
  /** What is left of the variance, mm². */
  readonly own: number;
}

/** One measurement out of several photos of the same fitting: weighted means, whose independent
 *  errors average and whose shared ones do not. Weights are by each photo's own variance (not the
 *  generalised least squares ones, which go wild where shared errors dominate); where that would
 *  be worse than the best photo alone, that photo stands.
 *  u² = Σₛ(Σᵢ wᵢ cₛᵢ)² + Σᵢ wᵢ² oᵢ², JCGM 100:2008, 5.2.2 with r = 1 between photos for each
 *  shared source s. On a taper, diameters are first brought to the first photo's place. */
export function combineShots(
  shots: readonly ThreadMeasurement[],
): Result<ThreadMeasurement, 'no-photo' | 'photos-disagree'> {
  const [first] = shots;
  if (!first) return refuse('no-photo', 'Add a photo of the fitting.');
  if (shots.length === 1) return ok(first);
  const taper = mean(shots.map((shot) => shot.taper));
  const pitch = shots.map((shot) => split(shot, 'pitchMm', shot.pitchMm.value));
  const major = shots.map((shot) =>
    split(shot, 'majorDiameterMm', shot.majorDiameterMm.value + toFirstPlace(first, shot, taper)),
  );
  if (disagree(pitch) || disagree(major))
    return refuse(
      'photos-disagree',
      'The photos do not agree: make sure that all show the same fitting.',
    );
  const p = combine(pitch);
  const d = combine(major);
  const commonCovariance = shared.reduce((sum, _, s) => sum + p.common[s] * d.common[s], 0);
  const ownCovariance = shots.reduce((sum, shot, i) => {
    const total = shot.correlation * pitch[i].u * major[i].u;
    const common = shared.reduce((c, _, s) => c + pitch[i].common[s] * major[i].common[s], 0);
    const most = Math.sqrt(pitch[i].own * major[i].own);
    return sum + p.weights[i] * d.weights[i] * clamp(total - common, -most, most);
  }, 0);
  const most = shots.reduce((a, b) => (b.turns > a.turns ? b : a));
  return ok({
    pitchMm: { value: p.value, u: p.u },
    majorDiameterMm: { value: d.value, u: d.u },
    correlation: clamp((commonCovariance + ownCovariance) / (p.u * d.u), -1, 1),
    taper,
    flankAngleDeg: mean(shots.map((shot) => shot.flankAngleDeg)),
    noseHalfAngleDeg: mean(shots.map((shot) => shot.noseHalfAngleDeg)),
    ...endShownBy(shots),
    ...threadShownBy(shots),
    hexAcrossFlatsMm: mean(shots.map((shot) => shot.hexAcrossFlatsMm ?? null)),
    turns: most.turns,
    hand: agreed(shots.map((shot) => shot.hand)),
    starts: agreed(shots.map((shot) => shot.starts)),
    middleFromEndMm: first.middleFromEndMm,
    budget: [
      ...shared.map((source, s) => ({
        source,
        pitchMm: p.common[s],
        majorDiameterMm: d.common[s],
      })),
      { source: 'edge-noise', pitchMm: Math.sqrt(p.own), majorDiameterMm: Math.sqrt(d.own) },
    ],
    ...otherPeriodsOf(shots),
  });
}

/** What all photos that show it leave likely, as if each had been looked at by other eyes. */
function together<K extends string>(
  each: readonly Readonly<Record<K, number>>[],
): Record<K, number> {
  const kinds = Object.keys(each[0]!) as K[];
  const products = kinds.map((kind) => each.reduce((product, one) => product * one[kind], 1));
  const sum = products.reduce((a, b) => a + b, 0);
  return Object.fromEntries(kinds.map((kind, i) => [kind, products[i]! / sum])) as Record<
    K,
    number
  >;
}

function endShownBy(shots: readonly ThreadMeasurement[]): { readonly endShows?: EndShows } {
  const seen = shots.flatMap(({ endShows }) => (endShows ? [endShows] : []));
  if (seen.length === 0) return {};
  return {
    endShows: {
      nose: together(seen.map(({ nose }) => nose)),
      base: together(seen.map(({ base }) => base)),
    },
  };
}

function threadShownBy(shots: readonly ThreadMeasurement[]): {
  readonly threadShows?: ThreadShows;
} {
  const seen = shots.flatMap(({ threadShows }) => (threadShows ? [threadShows] : []));
  if (seen.length === 0) return {};
  return {
    threadShows: {
      profile: together(seen.map(({ profile }) => profile)),
      taper: together(seen.map(({ taper }) => taper)),
    },
  };
}

/** Periods within this of each other, relative, are one. */
const samePeriod = 0.03;
/** What a photo that does not name a period leaves to it, and below which none is carried on. */
const leastShare = 0.002;

/** Other periods that all photos leave possible, each photo weighed alike: the product of what each says. Photos
 *  that say nothing of periods, as beside a rule, say nothing here. */
function otherPeriodsOf(
  shots: readonly ThreadMeasurement[],
): Pick<ThreadMeasurement, 'otherPeriods'> {
  const told = shots.flatMap(({ otherPeriods }) => (otherPeriods ? [otherPeriods] : []));
  if (told.length === 0) return {};
  const sameAs = (ratio: number) => (other: { ratio: number }) =>
    Math.abs(other.ratio / ratio - 1) < samePeriod;
  const ratios: number[] = [];
  for (const { ratio } of told.flat())
    if (!ratios.some((one) => sameAs(one)({ ratio }))) ratios.push(ratio);
  const odds = ratios.map((ratio) =>
    told.reduce((product, others) => {
      const own = 1 - others.reduce((sum, { share }) => sum + share, 0);
      return (product * (others.find(sameAs(ratio))?.share ?? leastShare)) / own;
    }, 1),
  );
  const all = 1 + odds.reduce((sum, one) => sum + one, 0);
  return {
    otherPeriods: ratios.flatMap((ratio, i) =>
      odds[i] / all < leastShare ? [] : [{ ratio, share: odds[i] / all }],
    ),
  };
}

function split(shot: ThreadMeasurement, key: 'pitchMm' | 'majorDiameterMm', value: number): Split {
  const { u } = shot[key];
  const common = shared.map((source) =>
    shot.budget.reduce((sum, row) => (row.source === source ? sum + Math.abs(row[key]) : sum), 0),
  );
  const sharedVariance = common.reduce((sum, c) => sum + c * c, 0);
  return { value, u, common, own: Math.max(0, u * u - sharedVariance) };
}

function combine(parts: readonly Split[]) {
  // The floor keeps photos without errors of their own in equal parts.
  const raw = parts.map(({ own, u }) => 1 / (own + 1e-6 * u * u));
  const sum = raw.reduce((a, b) => a + b, 0);
  const together = weighted(
    parts,
    raw.map((w) => w / sum),
  );
  const best = parts.reduce((a, b) => (b.u < a.u ? b : a));
  return together.u <= best.u
    ? together
    : weighted(
        parts,
        parts.map((part) => Number(part === best)),
      );
}

function weighted(parts: readonly Split[], weights: readonly number[]) {
  const common = shared.map((_, s) =>
    parts.reduce((total, part, i) => total + weights[i] * part.common[s], 0),
  );
  const own = parts.reduce((total, part, i) => total + weights[i] ** 2 * part.own, 0);
  const value = parts.reduce((total, part, i) => total + weights[i] * part.value, 0);
  const u = Math.sqrt(own + common.reduce((total, c) => total + c * c, 0));
  return { value, u, weights, common, own };
}

function disagree(parts: readonly Split[]): boolean {
  return parts.some((a, i) =>
    parts
      .slice(i + 1)
      .some((b) => Math.abs(a.value - b.value) > disagreement * Math.hypot(a.u, b.u)),
  );
}

/** How much larger or smaller the first photo's place on the taper is than this one's, mm. */
function toFirstPlace(
  first: ThreadMeasurement,
  shot: ThreadMeasurement,
  taper: Estimate | null,
): number {
  if (!taper || first.middleFromEndMm === null || shot.middleFromEndMm === null) return 0;
  return taper.value * (first.middleFromEndMm - shot.middleFromEndMm);
}

/** Angles and taper come from edges alone, whose errors are each photo's own. */
function mean(estimates: readonly (Estimate | null)[]): Estimate | null {
  const known = estimates.filter((one) => one !== null);
  if (known.length === 0) return null;
  const weight = known.reduce((sum, { u }) => sum + 1 / (u * u), 0);
  const value = known.reduce((sum, one) => sum + one.value / (one.u * one.u), 0) / weight;
  return { value, u: 1 / Math.sqrt(weight) };
}

function agreed<T>(values: readonly (T | null)[]): T | null {
  const known = values.filter((one) => one !== null);
  return known.length > 0 && known.every((one) => one === known[0]) ? known[0] : null;
}

const clamp = (x: number, low: number, high: number) => Math.min(high, Math.max(low, x));
