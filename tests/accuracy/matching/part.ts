import type { Random } from '../../../src/quantity/random';
import type { Connection } from '../../../src/standards/connections/connection';
import { connections } from '../../../src/standards/connections/connections';
import type { Thread } from '../../../src/standards/thread';
import { findThread, threads } from '../../../src/standards/threads';

/** A simulated fitting: which thread and connection it truly is, and how this one was made. */
export interface Part {
  readonly kind: 'hydraulic' | 'plain' | 'unlisted';
  readonly designation: string | null;
  readonly connection: Connection | null;
  readonly end: 'male' | 'female';
  readonly pitchMm: number;
  /** Over the crests at the small (free) end; for a female end, across the crests at its mouth. */
  readonly crestAtEndMm: number;
  readonly taper: number;
  readonly flankDeg: 55 | 60;
  readonly lengthMm: number;
  /** Outward nose cone or chamfer, half angle; null for a plain end. */
  readonly noseDeg: number | null;
}

const matched = threads.filter((t) => t.separable);
const hydraulic = connections.filter((c) => c.thread !== null && c.family !== 'SAE J476');
const carried = new Set(hydraulic.map((c) => c.thread));
const plain = matched.filter((t) => !carried.has(t.designation));

/** Families equally likely, then sizes equally likely within the family: not the core's priors. */
export function drawHydraulic(random: Random, end: 'male' | 'female'): Part {
  const ofEnd = hydraulic.filter((c) => c.end === end);
  const named = random.pick([...new Set(ofEnd.map((c) => c.family))]);
  // A gauge says itself what it is, and brake and grease lines are seldom on a parts desk.
  const isSeldom = ['EN 837-1', 'ISO 15171', 'ISO 4038', 'DIN 3852-1'].includes(named);
  const family = isSeldom && random.uniform() > 0.2 ? 'ISO 1179' : named;
  const connection = random.pick(ofEnd.filter((c) => c.family === family));
  return make(random, findThread(connection.thread!)!, connection, end, 'hydraulic');
}

/** A listed thread on something that is no listed connection. */
export function drawPlain(random: Random, end: 'male' | 'female'): Part {
  return make(random, random.pick(plain), null, end, 'plain');
}

/** A thread in no table: any pitch and diameter, or a usual pitch on an odd diameter, or a usual
 *  diameter with an odd pitch. Redrawn where it comes out as good as a listed thread. */
export function drawUnlisted(random: Random): Part {
  for (;;) {
    const even = (low: number, high: number) => low * (high / low) ** random.uniform();
    const way = random.integer(3);
    const pitchMm = way === 1 ? random.pick(matched).pitchMm : even(0.7, 3.5);
    const basicMm = way === 2 ? random.pick(matched).basicMajorMm : even(8, 62);
    if (pitchMm < 0.6 || pitchMm > basicMm / 5 || basicMm > 80) continue;
    const same = matched.some(
      (t) => Math.abs(t.pitchMm / pitchMm - 1) < 0.002 && Math.abs(t.basicMajorMm - basicMm) < 0.25,
    );
    if (same) continue;
    const toleranceMm = 0.18 * pitchMm ** (2 / 3);
    return {
      kind: 'unlisted',
      designation: null,
      connection: null,
      end: 'male',
      pitchMm,
      crestAtEndMm: basicMm - 0.035 - toleranceMm * middling(random) - wear(random, pitchMm),
      taper: 0,
      flankDeg: random.uniform() < 0.3 ? 55 : 60,
      lengthMm: pitchMm * random.between(6, 10),
      noseDeg: null,
    };
  }
}

function make(
  random: Random,
  thread: Thread,
  connection: Connection | null,
  end: 'male' | 'female',
  kind: Part['kind'],
): Part {
  const limits = end === 'male' ? thread.crests : thread.bore;
  const made = limits.minMm + (limits.maxMm - limits.minMm) * middling(random);
  const worn = wear(random, thread.pitchMm);
  const planes = thread.taperPlanes;
  const atGauge = end === 'male' ? made - worn : made + 0.6 * worn;
  return {
    kind,
    designation: thread.designation,
    connection,
    end,
    pitchMm: thread.pitchMm * (1 + 0.0003 * random.normal()),
    crestAtEndMm: planes && end === 'male' ? atGauge - planes.gaugeLengthMm / 16 : atGauge,
    taper: thread.taper,
    flankDeg: thread.flankAngleDeg,
    lengthMm: planes
      ? planes.usefulLengthMm +
        (thread.series === 'taper' ? 0 : thread.pitchMm * random.between(1.5, 4))
      : thread.pitchMm * random.between(6, 10),
    noseDeg: nose(random, connection, end),
  };
}

/** Within the tolerance zone: makers aim at its middle. */
function middling(random: Random): number {
  const t = 0.5 + 0.2 * random.normal();
  return t < 0 || t > 1 ? random.uniform() : t;
}

/** On diameter: most are as new, some have rubbed or bruised crests. */
function wear(random: Random, pitchMm: number): number {
  if (random.uniform() < 0.15) return random.between(0.04, Math.min(0.34, 0.25 * pitchMm));
  return 0.01 * Math.abs(random.normal());
}

function nose(random: Random, connection: Connection | null, end: 'male' | 'female') {
  if (end === 'female') return null;
  if (connection?.coneOutwards) return connection.seatHalfAngleDeg;
  return random.uniform() < 0.08 ? random.pick([30, 45, 45]) + 2 * random.normal() : null;
}
