import { type Connection, takesTube } from '../../standards/connections/connection';
import type { Thread } from '../../standards/thread';
import { anyConeAngle, coneAngleDeg, coneAngleDensity, coneAngleU } from './cone-angle';
import type { Reading } from './reading';
import type { EndType, Seat } from './reading-choices';
import { endTypes, seats } from './reading-choices';
import {
  bladeChances,
  closestBladeIndex,
  crestFormChance,
  flankChance,
  gaugedConeChance,
  hexDensity,
  lengthDensity,
  lengthReachMm,
  lengthUmm,
  markChance,
  misreadLengthDensity,
  misreadShare,
  occurrences,
  repeatedMisreadShare,
  resolutionMm,
  seatChance,
  taperChance,
  turnsDensity,
} from './reading-errors';

/** One reading, ready to be weighed against many threads. */
export interface ReadingModel {
  readonly reading: Reading;
  /** 1 when it is to be taken as misread. */
  readonly misread: number;
  /** Multiplies the whole when the reading is taken as misread. */
  readonly scale: number;
  /** Which end the reading's diameter belongs to; null for readings that are no crest diameter. */
  readonly lengthEnd: 'male' | 'female' | null;
  readonly stepMm: number;
  readonly bladeChances: (pitchMm: number) => Float64Array;
  readonly blade: number;
}

export function readingModels(
  readings: readonly Reading[],
  turns: number,
  misreadIndex: number | null,
): ReadingModel[] {
  const before = occurrences(readings);
  return readings.map((reading, i) => {
    const share = before[i] === 0 ? misreadShare : repeatedMisreadShare;
    const misread = i === misreadIndex ? 1 : share;
    return {
      reading,
      misread,
      scale: i === misreadIndex ? share : 1,
      lengthEnd: endOf(reading),
      stepMm: hasLength(reading) ? resolutionMm(reading.text) : 0,
      bladeChances: bladeTable(turns, misread),
      blade: reading.kind === 'pitch-gauge' ? closestBladeIndex(reading.pitchMm) : -1,
    };
  });
}

function hasLength(reading: Reading): boolean {
  return reading.kind === 'turns-over' || ('mm' in reading && reading.mm !== null);
}

function endOf(reading: Reading): 'male' | 'female' | null {
  if (reading.kind === 'caliper-od' || reading.kind === 'rule-od') return 'male';
  return reading.kind === 'caliper-id' ? 'female' : null;
}

export type LengthReading = Extract<Reading, { kind: 'caliper-od' | 'caliper-id' | 'rule-od' }>;

export function isLength(reading: Reading): reading is LengthReading {
  return endOf(reading) !== null;
}

const bladeCache = new Map<string, Map<number, Float64Array>>();

/** Chances of all blades by pitch, kept: the tables hold few pitches. */
function bladeTable(turns: number, misread: number): (pitchMm: number) => Float64Array {
  const engaged = Math.round(turns);
  const key = `${engaged}/${misread}`;
  const byPitch = bladeCache.get(key) ?? new Map<number, Float64Array>();
  bladeCache.set(key, byPitch);
  return (pitchMm) => {
    let chances = byPitch.get(pitchMm);
    if (!chances) {
      chances = bladeChances(pitchMm, engaged, misread);
      // Unlisted pitches are arbitrary numbers: keep the table from growing with them.
      if (byPitch.size > 2000) byPitch.clear();
      byPitch.set(pitchMm, chances);
    }
    return chances;
  };
}

export function cachedBladeChances(pitchMm: number, turns: number, misread: number): Float64Array {
  return bladeTable(turns, misread)(pitchMm);
}

/** What a reading says of the thread itself, diameters apart. */
export function threadFactor(model: ReadingModel, thread: Thread, end: 'male' | 'female'): number {
  const { reading } = model;
  switch (reading.kind) {
    case 'pitch-gauge':
      return gaugeFactor(model, thread.pitchMm);
    case 'turns-over':
      return turnsFactor(model, thread.pitchMm);
    case 'flank':
      return model.scale * flankChance(reading.flankDeg, thread.flankAngleDeg, model.misread);
    case 'crest-form':
      return model.scale * crestFormChance(reading.crest, thread.flankAngleDeg, model.misread);
    case 'hex':
      return model.scale * hexDensity(reading.mm, thread.basicMajorMm, end);
    case 'flange-thickness':
    case 'bolt-spacing':
      return model.scale * wrongEnd(reading.mm);
    case 'taper':
      return model.scale * taperChance(reading.taper, thread.taper, model.misread);
    case 'caliper-od':
    case 'caliper-id':
    case 'rule-od':
      return model.scale * (model.lengthEnd === end ? 1 : wrongEnd(reading.mm));
    default:
      return model.scale;
  }
}

function wrongEnd(mm: number): number {
  return misreadShare * misreadLengthDensity(mm);
}

export function gaugeFactor(model: ReadingModel, pitchMm: number): number {
  if (model.reading.kind !== 'pitch-gauge') return 1;
  return model.scale * model.bladeChances(pitchMm)[model.blade]!;
}

export function turnsFactor(model: ReadingModel, pitchMm: number): number {
  const { reading, misread } = model;
  if (reading.kind !== 'turns-over') return 1;
  const { overMm, turns } = reading;
  const clean = misread < 1 ? turnsDensity(overMm, turns, pitchMm, model.stepMm) : 0;
  return model.scale * ((1 - misread) * clean + misread * misreadLengthDensity(overMm));
}

/** What `lengthOnPart` is for crests anywhere from `lowMm` to `highMm`, where that is one number. */
export function sameLengthOnPart(
  model: ReadingModel,
  end: 'male' | 'female',
  lowMm: number,
  highMm: number,
): number | null {
  const { reading } = model;
  if (model.lengthEnd !== end || !isLength(reading)) return 1;
  const reach = lengthReachMm(lengthUmm[reading.kind], model.stepMm);
  const isOut = reading.mm < lowMm - reach || reading.mm > highMm + reach;
  return isOut || model.misread === 1 ? lengthOnPart(model, end, reading.mm + 2 * reach) : null;
}

/** Density of a diameter reading for crests at `diameterMm`; 1 where it is of the other end. */
export function lengthOnPart(
  model: ReadingModel,
  end: 'male' | 'female',
  diameterMm: number,
): number {
  const { reading } = model;
  if (model.lengthEnd !== end || !isLength(reading)) return 1;
  const clean =
    model.misread < 1
      ? lengthDensity(reading.mm, diameterMm, lengthUmm[reading.kind], model.stepMm)
      : 0;
  return (1 - model.misread) * clean + model.misread * misreadLengthDensity(reading.mm);
}

type ByUse = Map<Connection | null, number>;

const useFactors = new WeakMap<Reading, Map<number, ByUse>>();

/** What a reading says of the connection that the thread carries; kept, since one conclusion weighs
 *  every reading several times over. */
export function useFactor(model: ReadingModel, connection: Connection | null): number {
  if (!speaksOfUse(model)) return 1;
  const { reading, misread } = model;
  const kept: Map<number, ByUse> = useFactors.get(reading) ?? new Map();
  useFactors.set(reading, kept);
  const known: ByUse = kept.get(misread) ?? new Map();
  kept.set(misread, known);
  const factor = known.get(connection) ?? factorOfUse(model, connection);
  known.set(connection, factor);
  return factor;
}

export const speaksOfUse = ({ reading }: ReadingModel): boolean => saysOfUse.has(reading.kind);

const saysOfUse: ReadonlySet<Reading['kind']> = new Set([
  'seat',
  'other-seat',
  'seat-gauge',
  'cone-size',
  'end-type',
  'marking',
  'tube-od',
  'nose-od',
]);

function factorOfUse(model: ReadingModel, connection: Connection | null): number {
  const { reading, misread } = model;
  switch (reading.kind) {
    case 'seat':
      return overShown(connection, (shown) => seatChance(reading.seat, shown, misread));
    case 'other-seat':
      return overShown(connection, (shown) => 1 - seatChance(reading.seat, shown, misread));
    case 'seat-gauge':
      return overShown(connection, (shown) => gaugedConeChance(reading.cone, shown, misread));
    case 'cone-size': {
      const { wideMm, narrowMm, overMm } = reading;
      if (connection === null) return anyConeAngle;
      if (connection.end === 'female') return misread * anyConeAngle;
      const deg = coneAngleDeg(wideMm, narrowMm, overMm);
      const u = coneAngleU(wideMm, narrowMm, overMm);
      return overShown(connection, (shown) => coneAngleDensity(deg, u, shown, misread));
    }
    case 'end-type':
      return endTypeChance(reading.type, connection, misread);
    case 'marking':
      return markChance(reading.mark, seriesOf(connection));
    case 'tube-od':
      return tubeDensity(model, reading.mm, connection);
    case 'nose-od':
      return noseDensity(model, reading.mm, connection);
    default:
      return 1;
  }
}

function overShown(connection: Connection | null, chance: (shown: Seat) => number): number {
  return shownSeats(connection).reduce((sum, [shown, share]) => sum + share * chance(shown), 0);
}

const otherSeats: readonly (readonly [Seat, number])[] = seats.map((seat) => [
  seat,
  seat === 'none' ? 0.6 : seat === 'flat-washer-face' ? 0.16 : 0.24 / (seats.length - 2),
]);

/** Ends whose looks vary (common practice): tapered male ends may carry a 60° chamfer inside for a
 *  swivel; an inverted-flare nut ends in a slope or a round; a compression body opens in a chamfer
 *  for its sleeve; a gauge end has a washer under its spigot. */
const variedSeats: Readonly<Record<string, readonly (readonly [Seat, number])[]>> = {
  'thread/male': [
    ['none', 0.9],
    ['cone-60', 0.1],
  ],
  'SAE J512 inverted/male': [
    ['none', 0.55],
    ['cone-inverted', 0.4],
    ['cone-45', 0.05],
  ],
  'ISO 4038/male': [
    ['none', 0.55],
    ['cone-inverted', 0.4],
    ['cone-45', 0.05],
  ],
  'SAE J512 compression/male': [
    ['none', 0.55],
    ['cone-24', 0.25],
    ['cone-60', 0.2],
  ],
  'SAE J512 compression/female': [
    ['none', 0.9],
    ['flat-washer-face', 0.1],
  ],
  'EN 837-1/male': [
    ['none', 0.97],
    ['flat-washer-face', 0.03],
  ],
};

const shownCache = new WeakMap<Connection, readonly (readonly [Seat, number])[]>();

/** What an end shows, with shares. */
export function shownSeats(connection: Connection | null): readonly (readonly [Seat, number])[] {
  if (connection === null) return otherSeats;
  const known = shownCache.get(connection);
  if (known) return known;
  const { family, sealing, end, seat } = connection;
  const shown = variedSeats[`${sealing === 'thread' ? sealing : family}/${end}`] ?? [
    [seat, 1] as const,
  ];
  shownCache.set(connection, shown);
  return shown;
}

/** Names of ends are used loosely: what a row may be called, and anything else now and then. */
const looseName = 0.03;

export function endTypeChance(
  called: EndType,
  connection: Connection | null,
  misread: number,
): number {
  if (connection === null) return 1 / endTypes.length;
  const own = connection.endTypes;
  const loose = Math.max(looseName, misread);
  return own.includes(called)
    ? (1 - loose) / own.length
    : loose / (endTypes.length - own.length || 1);
}

export function seriesOf(connection: Connection | null): 'light' | 'heavy' | null {
  if (connection?.family !== 'ISO 8434-1') return null;
  return connection.size.endsWith('S') ? 'heavy' : 'light';
}

/** Tubes that an end takes, mm OD. */
export function tubesOf(connection: Connection | null): readonly number[] {
  if (connection === null || !takesTube(connection)) return [];
  const { tubeOdMm, metricTubesMm } = connection;
  return [...new Set(tubeOdMm === null ? metricTubesMm : [tubeOdMm, ...metricTubesMm])];
}

/** An inch end takes its own tube as often as all metric ones together. */
export function tubeShare(mm: number, connection: Connection | null): number {
  const others = tubesOf(connection).length - 1;
  if (others === 0) return 1;
  return mm === connection?.tubeOdMm ? 0.5 : 0.5 / others;
}

/** Someone measures a tube, or a bore, where the end takes none. */
export const strayTubeShare = 0.05;
/** Nuts sit on hoses as well as on tubes, and a flare or a flat face meets the tube's sleeve: that
 *  such an end takes no tube says nothing against it. */
const withoutTubeShare = 0.6;
const takesTheTubeIn: ReadonlySet<string> = new Set(['cone-24', 'cone-inverted', 'none']);

/** Chance of 'it takes no tube'. */
export function noTubeChance(connection: Connection | null, misread: number): number {
  if (tubesOf(connection).length === 0) return 1 - Math.max(strayTubeShare, misread / 2);
  const isIn = connection !== null && takesTheTubeIn.has(connection.seat);
  return isIn && !connection.endTypes.includes('swivel-nut') ? misread / 2 : withoutTubeShare;
}

function tubeDensity(
  model: ReadingModel,
  mm: number | null,
  connection: Connection | null,
): number {
  const tubes = tubesOf(connection);
  const none = noTubeChance(connection, model.misread);
  if (mm === null) return none;
  const broad = misreadLengthDensity(mm);
  if (tubes.length === 0) return (1 - none) * broad;
  const clean = tubes.reduce(
    (sum, t) =>
      sum + tubeShare(t, connection) * lengthDensity(mm, t, lengthUmm['tube-od'], model.stepMm),
    0,
  );
  return (1 - model.misread) * clean + model.misread * broad;
}

/** Narrow end of the 24° cone under a nut, mm. The cone it sits in narrows to the tube's bore, so it
 *  ends at about the tube's diameter, or a little below (geometry of ISO 8434-1; judgement). Noses of
 *  other angles follow no rule that we know. */
export function noseMm(connection: Connection | null): number | null {
  if (connection?.seat !== 'cone-24' || !connection.coneOutwards) return null;
  return connection.tubeOdMm === null ? null : connection.tubeOdMm - belowTheTubeMm;
}

const belowTheTubeMm = 0.3;

function noseDensity(model: ReadingModel, mm: number, connection: Connection | null): number {
  const own = noseMm(connection);
  const broad = misreadLengthDensity(mm);
  if (own === null) return broad;
  const clean = lengthDensity(mm, own, lengthUmm['nose-od'], model.stepMm);
  return (1 - model.misread) * clean + model.misread * broad;
}
