import type { Connection } from '../../standards/connections/connection';
import { tubesOf } from '../../standards/connections/tubes';
import type { Thread } from '../../standards/thread';
import type { Reading, Seat } from './reading';
import { seats } from './reading';
import {
  bladeChances,
  closestBladeIndex,
  flankChance,
  lengthDensity,
  lengthUmm,
  misreadLengthDensity,
  misreadShare,
  occurrences,
  repeatedMisreadShare,
  resolutionMm,
  seatChance,
  taperChance,
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
    return {
      reading,
      misread: i === misreadIndex ? 1 : share,
      scale: i === misreadIndex ? share : 1,
      lengthEnd: endOf(reading),
      stepMm: 'mm' in reading && reading.mm !== null ? resolutionMm(reading.text) : 0,
      bladeChances: bladeTable(turns, i === misreadIndex ? 1 : share),
      blade: reading.kind === 'pitch-gauge' ? closestBladeIndex(reading.pitchMm) : -1,
    };
  });
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
    case 'flank':
      return model.scale * flankChance(reading.flankDeg, thread.flankAngleDeg, model.misread);
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

/** What a reading says of the connection that the thread carries. */
export function useFactor(model: ReadingModel, connection: Connection | null): number {
  const { reading } = model;
  if (reading.kind === 'seat') {
    return shownSeats(connection).reduce(
      (sum, [shown, share]) =>
        sum + share * seatChance(reading.seat, shown, model.misread, reading.byEye),
      0,
    );
  }
  if (reading.kind === 'tube-od') return tubeDensity(model, reading.mm, connection);
  return 1;
}

const otherSeats: readonly (readonly [Seat, number])[] = seats.map((seat) => [
  seat,
  seat === 'none' ? 0.6 : seat === 'flat-washer-face' ? 0.16 : 0.24 / (seats.length - 2),
]);

const shownCache = new WeakMap<Connection, readonly (readonly [Seat, number])[]>();

/** What an end shows, with shares. Tapered male ends may carry a 60° chamfer inside for a swivel;
 *  an inverted-flare nut ends in a slope (common practice). */
export function shownSeats(connection: Connection | null): readonly (readonly [Seat, number])[] {
  if (connection === null) return otherSeats;
  const known = shownCache.get(connection);
  if (known) return known;
  const shown: readonly (readonly [Seat, number])[] =
    connection.sealing === 'thread' && connection.end === 'male'
      ? [
          ['none', 0.94],
          ['cone-60', 0.06],
        ]
      : connection.family === 'SAE J512 inverted' && connection.end === 'male'
        ? [
            ['none', 0.98],
            ['cone-45', 0.02],
          ]
        : [[connection.seat, 1]];
  shownCache.set(connection, shown);
  return shown;
}

/** Of swivel ends whose tube was asked for: a hose end, which takes none. */
export const hoseShare = 0.5;

/** Someone measures a tube, or a bore, where the end takes none. */
export const strayTubeShare = 0.05;

function tubeDensity(
  model: ReadingModel,
  mm: number | null,
  connection: Connection | null,
): number {
  const tubes = tubesOf(connection);
  const stray = Math.max(strayTubeShare, model.misread / 2);
  // That a swivel takes no tube says nothing: nuts sit on tubes and on hoses.
  if (mm === null) {
    if (connection?.endType === 'swivel-nut' && tubes.length > 0) return hoseShare;
    return tubes.length === 0 ? 1 - stray : model.misread / 2;
  }
  const broad = misreadLengthDensity(mm);
  if (tubes.length === 0) return stray * broad;
  const clean =
    tubes.reduce((sum, t) => sum + lengthDensity(mm, t, lengthUmm['tube-od'], model.stepMm), 0) /
    tubes.length;
  const withTube = connection?.endType === 'swivel-nut' ? 1 - hoseShare : 1;
  return withTube * ((1 - model.misread) * clean + model.misread * broad);
}
