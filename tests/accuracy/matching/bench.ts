import {
  type AskableKind,
  endTypes,
  gaugedCones,
  marks,
  type Seat,
  seats,
} from '../../../src/journey/6-candidates/reading-choices';
import type { Random } from '../../../src/quantity/random';
import type { Part } from './part';

/** A reading as typed, and whether it has nothing to do with the part. */
export interface Taken {
  readonly text: string;
  readonly wrong: boolean;
}

/** A person at the bench who takes the asked reading, or null where it cannot be taken. Errors are
 *  made here in their own way, and 1.5 % of all readings are plain wrong. */
export function takeReading(kind: AskableKind, part: Part, random: Random): Taken | null {
  const wrong = random.uniform() < 0.015;
  const value = valueRead(kind, part, random, wrong);
  return value === null ? null : { text: `${kind}=${value}`, wrong };
}

function valueRead(kind: AskableKind, part: Part, random: Random, wrong: boolean): string | null {
  switch (kind) {
    case 'pitch-gauge':
      return wrong ? random.pick(bladeNames).name : fittingBlade(part, random);
    case 'caliper-od':
      return part.end === 'male' ? length(crest(part, random), 0.035, wrong, random) : null;
    case 'caliper-id':
      return part.end === 'female' ? length(crest(part, random), 0.06, wrong, random) : null;
    case 'rule-od': {
      if (part.end === 'female') return null;
      const mm = wrong ? random.between(5, 60) : crest(part, random) + 0.3 * random.normal();
      return `${(Math.round(mm * 2) / 2).toFixed(1)}mm`;
    }
    case 'tube-od': {
      const end = part.connection;
      const tubes = [end?.tubeOdMm ?? [], end?.metricTubesMm ?? []].flat();
      const stud = end?.endTypes.some((type) => type === 'stud' || type === 'port');
      if (tubes.length === 0 || stud) {
        return random.uniform() < 0.03 ? length(random.between(4, 40), 0, false, random) : 'none';
      }
      if (end?.endTypes.includes('swivel-nut') && random.uniform() < 0.5) return 'none';
      return random.uniform() < 0.003 ? 'none' : length(random.pick(tubes), 0.05, wrong, random);
    }
    case 'nose-od': {
      const end = part.connection;
      if (end?.seat !== 'cone-24' || !end.coneOutwards || end.tubeOdMm === null) return null;
      return length(end.tubeOdMm - random.between(0, 0.7), 0.1, wrong, random);
    }
    case 'seat':
      return wrong ? random.pick(seats) : seatOf(part, random, true);
    case 'taper': {
      const tapered = part.taper > 0;
      const slip = random.uniform() < (tapered ? 0.008 : 0.003);
      return (wrong ? random.uniform() < 0.5 : slip !== tapered) ? 'tapered' : 'straight';
    }
    case 'seat-gauge': {
      const shown = seatOf(part, random);
      const fits = gaugedCones.find((cone) => cone === shown) ?? 'none';
      return (wrong ? random.pick(gaugedCones) : fits).replace('cone-', '');
    }
    case 'cone-size': {
      const angle = /^cone-(30|37|45)$/.exec(part.connection?.seat ?? '')?.[1];
      if (!angle || part.end === 'female') return null;
      const wide = part.crestAtEndMm - 1.2 * part.pitchMm;
      const narrow = wide * random.between(0.5, 0.7);
      const over = (wide - narrow) / 2 / Math.tan((Number(angle) * Math.PI) / 180);
      const off = () => (wrong ? random.between(-1, 1) : 0.08 * random.normal());
      const [w, n, o] = [wide + off(), narrow + off(), over + 1.4 * off()];
      return w > n + 0.4 && o > 0.3
        ? `${w.toFixed(1)}-${n.toFixed(1)} over ${o.toFixed(1)}mm`
        : null;
    }
    case 'end-type':
      return wrong || !part.connection
        ? random.pick(endTypes)
        : random.pick(part.connection.endTypes);
    case 'turns-over': {
      const turns = Math.min(10, Math.max(3, Math.floor(part.lengthMm / part.pitchMm) - 1));
      const counted = turns + (random.uniform() < 0.02 ? random.pick([-1, 1]) : 0);
      const mm = wrong
        ? random.between(5, 30)
        : Math.round(2 * (counted * part.pitchMm + 0.25 * random.normal())) / 2;
      return `${turns} in ${Math.max(1, mm).toFixed(1)}mm`;
    }
    case 'crest-form': {
      const rounded = (part.flankDeg === 55) === random.uniform() > 0.1;
      return rounded ? 'rounded' : 'flat';
    }
    case 'flange-thickness':
    case 'bolt-spacing': {
      const head = part.connection?.flangeHead;
      if (!head) return null;
      return kind === 'bolt-spacing'
        ? length(head.boltsMm[0], 0.3, wrong, random)
        : length(head.thicknessMm, 0.1, wrong, random);
    }
    case 'marking': {
      const { family, size } = part.connection ?? { family: '', size: '' };
      if (wrong) return random.pick(marks.slice(0, 4));
      if (family !== 'ISO 8434-1' || random.uniform() > 0.4) return 'none';
      return size.endsWith('S') ? 'heavy' : 'light';
    }
    case 'hand':
      return 'right';
    case 'hex':
      return null;
    case 'flank':
      if (wrong) return random.pick(['55', '60']);
      return String(random.uniform() < 0.004 ? 115 - part.flankDeg : part.flankDeg);
  }
}

/** Over the widest of a few crests; on a taper wherever the jaws happen to sit. */
function crest(part: Part, random: Random): number {
  if (part.taper === 0 || part.end === 'female') return part.crestAtEndMm;
  return part.crestAtEndMm + part.taper * part.lengthMm * random.between(0.25, 0.8);
}

/** As this person writes lengths: tenths or hundredths of a millimetre, thousandths or
 *  sixty-fourths of an inch. */
function length(trueMm: number, uMm: number, wrong: boolean, random: Random): string {
  const mm = wrong ? random.between(4, 60) : trueMm + uMm * random.normal();
  const style = random.uniform();
  if (style < 0.5) return `${mm.toFixed(1)}mm`;
  if (style < 0.75) return `${(Math.round(mm * 20) / 20).toFixed(2)}mm`;
  if (style < 0.92) return `${(mm / 25.4).toFixed(3)}in`;
  const parts = Math.max(1, Math.round((mm / 25.4) * 64));
  const whole = Math.floor(parts / 64);
  return parts % 64 === 0 ? `${whole}in` : `${whole > 0 ? `${whole} ` : ''}${parts % 64}/64in`;
}

const bladeNames = [
  ...[0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6].map(
    (mm) => ({
      name: `${mm}mm`,
      mm,
    }),
  ),
  ...[
    4, 4.5, 5, 6, 7, 8, 9, 10, 11, 11.5, 12, 13, 14, 16, 18, 19, 20, 24, 27, 28, 32, 36, 40, 44, 48,
    56, 64, 72, 80,
  ].map((tpi) => ({ name: `${tpi}tpi`, mm: 25.4 / tpi })),
];

/** Tries the closest blades and keeps the one that seems to rock least over the engaged turns;
 *  the eye judges the gap with an error of about a fifteenth of a pitch. */
function fittingBlade(part: Part, random: Random): string {
  const engaged = Math.min(7, Math.max(3, part.lengthMm / part.pitchMm - 1));
  const close = bladeNames
    .toSorted((a, b) => Math.abs(a.mm - part.pitchMm) - Math.abs(b.mm - part.pitchMm))
    .slice(0, 5);
  let best = close[0]!;
  let least = Number.POSITIVE_INFINITY;
  for (const blade of close) {
    const gap = (blade.mm - part.pitchMm) * engaged + (part.pitchMm / 15) * 0.7 * random.normal();
    if (Math.abs(gap) < least) {
      least = Math.abs(gap);
      best = blade;
    }
  }
  return best.name;
}

function seatOf(part: Part, random: Random, byEye = false): Seat {
  const seat = part.connection?.seat;
  // Flares look alike to the eye: every third is called by a neighbour's name.
  if (seat && /^cone-(30|37|45)$/.test(seat) && byEye && random.uniform() < 0.35)
    return random.pick((['cone-30', 'cone-37', 'cone-45'] as const).filter((s) => s !== seat));
  if (seat === 'cone-inverted') {
    if (part.end === 'male') return random.uniform() < 0.6 ? 'none' : 'cone-inverted';
    return 'cone-inverted';
  }
  if (seat === undefined) return random.uniform() < 0.7 ? 'none' : random.pick(seats);
  if (seat !== 'none' || part.end === 'female') return seat;
  // Some tapered ends carry a chamfer inside for a swivel; some nuts end in a slope.
  if (random.uniform() > 0.03) return 'none';
  return part.taper > 0 ? 'cone-60' : 'cone-45';
}

/** The two readings everyone takes first: across the crests, and the blade that fits. */
export function firstReadings(part: Part, random: Random): Taken[] {
  const diameter: AskableKind = part.end === 'male' ? 'caliper-od' : 'caliper-id';
  const kinds: readonly AskableKind[] = [diameter, 'pitch-gauge'];
  return kinds.flatMap((kind) => takeReading(kind, part, random) ?? []);
}
