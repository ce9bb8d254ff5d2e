import * as portable from '../../quantity/portable-math';
import type { Connection } from '../../standards/connections/connection';
import { coneAngleDensity } from '../6-candidates/cone-angle';
import {
  type AskableKind,
  endTypes,
  gaugedCones,
  marks,
  type Seat,
  seats,
} from '../6-candidates/reading-choices';
import {
  blades,
  crestFormChance,
  flankChance,
  gaugedConeChance,
  lengthUmm,
  markChance,
  misreadShare,
  repeatedMisreadShare,
  seatChance,
  taperChance,
} from '../6-candidates/reading-errors';
import {
  cachedBladeChances,
  endTypeChance,
  noseMm,
  noTubeChance,
  seriesOf,
  shownSeats,
  strayTubeShare,
  tubeShare,
  tubesOf,
} from '../6-candidates/reading-likelihood';
import { unlistedParts } from '../6-candidates/unlisted';
import { diameterPosterior, type Evidence } from '../6-candidates/weigh';
import type { Scenario } from './scenario';

/** What a reading could say, and how likely each scenario makes each outcome. */
export interface OutcomeTable {
  readonly kind: AskableKind;
  /** As a reading is written, or an interval for lengths. */
  readonly outcomes: readonly string[];
  /** [scenario][outcome] */
  readonly chances: readonly ArrayLike<number>[];
}

/** Null where the reading cannot be taken: the wrong end, no tube. */
export function outcomeTable(
  kind: AskableKind,
  evidence: Evidence,
  scenarios: readonly Scenario[],
): OutcomeTable | null {
  const given = evidence.readings.some((r) => r.kind === kind);
  const misread = given ? repeatedMisreadShare : misreadShare;
  switch (kind) {
    case 'seat':
      return byShown(kind, seats, scenarios, (seen, shown) => seatChance(seen, shown, misread));
    case 'seat-gauge':
      return byShown(kind, gaugedCones, scenarios, (cone, shown) =>
        gaugedConeChance(cone, shown, misread),
      );
    case 'cone-size':
      return coneAngles(evidence, scenarios, misread);
    case 'end-type': {
      const chances = scenarios.map(({ connection }) =>
        endTypes.map((type) => endTypeChance(type, connection, misread)),
      );
      return { kind, outcomes: endTypes, chances };
    }
    case 'marking': {
      const chances = scenarios.map(({ connection }) =>
        marks.map((mark) => markChance(mark, seriesOf(connection))),
      );
      return { kind, outcomes: marks, chances };
    }
    case 'crest-form': {
      const outcomes = ['rounded', 'flat'] as const;
      const chances = scenarios.map(({ thread }) =>
        outcomes.map((o) =>
          thread
            ? crestFormChance(o, thread.flankAngleDeg, misread)
            : mix(unlistedParts.whitworth, (yes) => crestFormChance(o, yes ? 55 : 60, misread)),
        ),
      );
      return { kind, outcomes, chances };
    }
    case 'flange-thickness':
      return lengthsOf(kind, ({ flangeHead }) => flangeHead?.thicknessMm, scenarios, misread);
    case 'bolt-spacing':
      return lengthsOf(kind, ({ flangeHead }) => flangeHead?.boltsMm[0], scenarios, misread);
    case 'nose-od':
      return lengthsOf(kind, noseMm, scenarios, misread);
    case 'hand':
    case 'hex':
      return null;
    case 'taper': {
      const outcomes = ['tapered', 'straight'] as const;
      const chances = scenarios.map(({ thread }) =>
        outcomes.map((o) =>
          thread
            ? taperChance(o, thread.taper, misread)
            : mix(unlistedParts.taper, (yes) => taperChance(o, yes ? 1 / 16 : 0, misread)),
        ),
      );
      return { kind, outcomes, chances };
    }
    case 'flank': {
      const outcomes = [55, 60] as const;
      const chances = scenarios.map(({ thread }) =>
        outcomes.map((o) =>
          thread
            ? flankChance(o, thread.flankAngleDeg, misread)
            : mix(unlistedParts.whitworth, (yes) => flankChance(o, yes ? 55 : 60, misread)),
        ),
      );
      return { kind, outcomes: outcomes.map(String), chances };
    }
    case 'pitch-gauge': {
      const turns = evidence.photo?.turns ?? 6;
      const chances = scenarios.map(({ thread }) =>
        thread
          ? cachedBladeChances(thread.pitchMm, turns, misread)
          : unlistedBlades(evidence, turns, misread),
      );
      return { kind, outcomes: bladeNames, chances };
    }
    case 'turns-over': {
      const chances = scenarios.map(({ thread }) =>
        thread
          ? countedChances(thread.pitchMm, misread)
          : new Float64Array(blades.length).fill(1 / blades.length),
      );
      return { kind, outcomes: bladeNames, chances };
    }
    case 'tube-od':
      return tubes(scenarios, misread);
    default:
      return lengths(kind, evidence, scenarios, misread);
  }
}

function byShown<T extends string>(
  kind: AskableKind,
  outcomes: readonly T[],
  scenarios: readonly Scenario[],
  chance: (seen: T, shown: Seat) => number,
): OutcomeTable {
  const chances = scenarios.map(({ connection }) => {
    const shown = shownSeats(connection);
    return outcomes.map((seen) =>
      shown.reduce((sum, [s, share]) => sum + share * chance(seen, s), 0),
    );
  });
  return { kind, outcomes, chances };
}

/** A count over ten turns tells pitches to a twentieth of a millimetre: the blade that it would
 *  have named. */
function countedChances(pitchMm: number, misread: number): Float64Array {
  const uMm = 0.05;
  const row = Float64Array.from(blades, (mm) => portable.exp(-0.5 * ((mm - pitchMm) / uMm) ** 2));
  const sum = row.reduce((total, w) => total + w, 0) || 1;
  return row.map((w) => ((1 - misread) * w) / sum + misread / blades.length);
}

/** Angles that measuring a cone would tell; null where an end shows none outside. */
function coneAngles(
  { readings }: Evidence,
  scenarios: readonly Scenario[],
  misread: number,
): OutcomeTable | null {
  if (readings.some((r) => r.kind === 'caliper-id')) return null;
  const angles = [30, 37, 45] as const;
  // Of a small cone; larger ones are told better.
  const u = 3;
  const chances = scenarios.map(({ connection }) => {
    if (connection?.end === 'female') return [0, 0, 0, 1];
    const row = angles.map((deg) =>
      shownSeats(connection).reduce(
        (sum, [seat, share]) => sum + 7.5 * share * coneAngleDensity(deg, u, seat, misread),
        0,
      ),
    );
    return [...row, Math.max(0, 1 - row.reduce((sum, chance) => sum + chance, 0))];
  });
  return { kind: 'cone-size', outcomes: [...angles.map(String), 'other'], chances };
}

/** Parts whose length a caliper tells apart, of those that have it; null where hardly anything has. */
function lengthsOf(
  kind: AskableKind,
  lengthOf: (connection: Connection) => number | null | undefined,
  scenarios: readonly Scenario[],
  misread: number,
): OutcomeTable | null {
  const own = scenarios.map((s) => (s.connection && lengthOf(s.connection)) ?? null);
  const share = scenarios.reduce((sum, s, i) => sum + (own[i] === null ? 0 : s.probability), 0);
  if (share < leastEndShare) return null;
  const sizes = [...new Set(own.filter((mm) => mm !== null))].sort((a, b) => a - b);
  const chances = own.map((mm) => {
    const row = new Float64Array(sizes.length + 1).fill(mm === null ? 0 : misread / sizes.length);
    if (mm === null) row[sizes.length] = 1;
    else row[sizes.indexOf(mm)]! += 1 - misread;
    return row;
  });
  return { kind, outcomes: [...sizes.map((mm) => `${round(mm)}mm`), 'other'], chances };
}

const bladeNames: readonly string[] = blades.map((mm, i) =>
  i < 20 ? `${mm}mm` : `${Number((25.4 / mm).toFixed(1))}tpi`,
);

function mix(share: number, chance: (yes: boolean) => number): number {
  return share * chance(true) + (1 - share) * chance(false);
}

/** An unlisted thread: any pitch the photo allows, or any at all. */
function unlistedBlades(evidence: Evidence, turns: number, misread: number): ArrayLike<number> {
  const pitch = evidence.photo?.pitchMm;
  if (!pitch) return new Float64Array(blades.length).fill(1 / blades.length);
  const seen = [-1.5, 0, 1.5].map((k) =>
    cachedBladeChances(pitch.value + k * pitch.u, turns, misread),
  );
  return blades.map((_, i) => seen.reduce((sum, chances) => sum + chances[i]! / 3, 0));
}

/** Tubes whose diameters a caliper tells apart, 'none', and one outcome for anything else. */
function tubes(scenarios: readonly Scenario[], misread: number): OutcomeTable | null {
  const sizes = [...new Set(scenarios.flatMap((s) => tubesOf(s.connection)))].sort((a, b) => a - b);
  // Nobody measures the tube of a stud or a port.
  const tubed = scenarios.filter((s) => tubesOf(s.connection).length > 0);
  const share = tubed.reduce((sum, s) => sum + s.probability, 0);
  if (sizes.length === 0 || share < leastTubedShare) return null;
  const groups: number[] = [];
  for (const mm of sizes) if (mm - (groups.at(-1) ?? 0) > 0.25) groups.push(mm);
  const nearest = (mm: number) => groups.findLastIndex((g) => g <= mm);
  const none = groups.length;
  const chances = scenarios.map(({ connection }) => {
    const own = tubesOf(connection);
    const row = new Float64Array(groups.length + 2);
    const tubed = 1 - noTubeChance(connection, misread);
    for (const mm of own) row[nearest(mm)]! += tubed * (1 - misread) * tubeShare(mm, connection);
    const stray = own.length === 0 ? Math.max(strayTubeShare, misread / 2) : misread / 2;
    row[none]! += noTubeChance(connection, misread);
    row[none + 1]! += 0.6 * stray;
    for (let i = 0; i < groups.length; i++) row[i]! += (0.4 * stray) / groups.length;
    return row;
  });
  const outcomes = [...groups.map((mm) => `${round(mm)}mm`), 'none', 'other'];
  return { kind: 'tube-od', outcomes, chances };
}

const leastTubedShare = 0.5;
const mostCells = 90;
/** Nobody measures over the crests of an end that is surely female. */
const leastEndShare = 0.1;

function lengths(
  kind: 'caliper-od' | 'caliper-id' | 'rule-od',
  evidence: Evidence,
  scenarios: readonly Scenario[],
  misread: number,
): OutcomeTable | null {
  const end = kind === 'caliper-id' ? 'female' : 'male';
  const ofThisEnd = scenarios
    .filter((s) => s.weighed?.hypothesis.end === end)
    .reduce((sum, s) => sum + s.probability, 0);
  if (ofThisEnd < leastEndShare) return null;
  const u = Math.hypot(lengthUmm[kind], kind === 'rule-od' ? 0.3 : 0.03);
  const posteriors = scenarios.map((s) =>
    s.weighed?.hypothesis.end === end ? diameterPosterior(s.weighed.hypothesis, evidence) : null,
  );
  let low = Number.POSITIVE_INFINITY;
  let high = 0;
  for (const p of posteriors) {
    if (!p) continue;
    low = Math.min(low, p.firstMm - 2 * u);
    high = Math.max(high, p.firstMm + p.weights.length * p.stepMm + 2 * u);
  }
  const cellMm = Math.max(1.5 * u, (high - low) / mostCells);
  const cells = Math.ceil((high - low) / cellMm);
  const outcomes = Array.from({ length: cells }, (_, i) => {
    const from = low + i * cellMm;
    return `${from.toFixed(2)}…${(from + cellMm).toFixed(2)}mm`;
  });
  const cached = new Map<unknown, Float64Array>();
  const chances = scenarios.map((s, i) => {
    const known = cached.get(s.weighed);
    if (known) return known;
    const posterior = posteriors[i];
    const row = new Float64Array(cells).fill(posterior ? misread / cells : 1 / cells);
    if (posterior) spread(posterior, 1 - misread, u, { row, low, cellMm });
    cached.set(s.weighed, row);
    return row;
  });
  return { kind, outcomes, chances };
}

/** Adds a diameter posterior to cells, blurred by the reading's own uncertainty: three points at
 *  −√3 u, 0, +√3 u with weights 1/6, 2/3, 1/6 carry a Gaussian's first five moments. */
function spread(
  p: { firstMm: number; stepMm: number; weights: Float64Array },
  share: number,
  u: number,
  { row, low, cellMm }: { row: Float64Array; low: number; cellMm: number },
): void {
  for (let k = 0; k < p.weights.length; k++) {
    const w = p.weights[k]! * share;
    if (w < 1e-9) continue;
    const at = (p.firstMm + k * p.stepMm - low) / cellMm;
    const off = (Math.sqrt(3) * u) / cellMm;
    for (const [shift, part] of [
      [-off, 1 / 6],
      [0, 2 / 3],
      [off, 1 / 6],
    ] as const) {
      const cell = Math.min(row.length - 1, Math.max(0, Math.floor(at + shift)));
      row[cell]! += w * part;
    }
  }
}

function round(mm: number): string {
  return String(Number(mm.toFixed(2)));
}
