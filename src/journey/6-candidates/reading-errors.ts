import { erf } from '../../quantity/erf';
import { mmPerInch } from '../../quantity/length';
import * as portable from '../../quantity/portable-math';
import type { Reading } from './reading';
import type { GaugedCone, Mark, Seat } from './reading-choices';
import { gaugedCones, seats } from './reading-choices';

/** How readings go wrong. Every reading has a misread share: the value is then anything, so no
 *  single reading decides alone. A repeated reading of one kind repeats its mistakes, and counts
 *  for little. Figures by judgement of bench work, stated here, and tried by the simulator in
 *  tests/accuracy/matching, which makes its errors in its own way. */
export const misreadShare = 0.01;
export const repeatedMisreadShare = 0.25;

/** One standard uncertainty of the instrument and its handling, before rounding, mm. */
export const lengthUmm = {
  'caliper-od': 0.04,
  // Knife edges between the crests of an internal thread read a little small or tilted.
  'caliper-id': 0.08,
  'rule-od': 0.35,
  'tube-od': 0.06,
  // Mostly what makers' noses differ by (judgement).
  'nose-od': 0.4,
  // Heads are made to a quarter of a millimetre, and bolts are sighted from hole to hole.
  'flange-thickness': 0.15,
  'bolt-spacing': 0.4,
} as const;

const minMm = 3;
const maxMm = 170;
/** Of a misread length: even over the octaves. */
export function misreadLengthDensity(mm: number): number {
  return 1 / (Math.max(mm, 1) * portable.log(maxMm / minMm));
}

/** Step between neighbouring values written like this one. A fraction of an inch is taken as no
 *  finer than its denominator says, and no coarser than 1/16 (common practice at counters). */
export function resolutionMm(text: string): number {
  const number = text.replace(/\s*(mm|in|inch|inches|"|″)$/i, '');
  const unitMm = /mm$/i.test(text) ? 1 : mmPerInch;
  const denominator = /\/\s*(\d+)$/.exec(number)?.[1];
  if (denominator !== undefined) return mmPerInch / Math.max(16, Number(denominator));
  const places = /[.,](\d+)$/.exec(number)?.[1]?.length ?? 0;
  return Math.min(unitMm * Number(`1e-${places}`), unitMm === 1 ? 1 : mmPerInch / 16);
}

/** Density of reading `mm` when the length is `trueMm`: Gaussian of standard uncertainty `uMm`,
 *  then rounded to `stepMm`. */
export function lengthDensity(mm: number, trueMm: number, uMm: number, stepMm: number): number {
  const high = (mm + stepMm / 2 - trueMm) / (uMm * Math.SQRT2);
  const low = (mm - stepMm / 2 - trueMm) / (uMm * Math.SQRT2);
  if (low > farZ || high < -farZ) return 0;
  return Math.max(0, erf(high) - erf(low)) / (2 * stepMm);
}

/** Beyond this the error function is 1 to eleven digits. */
const farZ = 5;

/** A true length farther than this from the reading has no density. */
export function lengthReachMm(uMm: number, stepMm: number): number {
  return farZ * uMm * Math.SQRT2 + stepMm / 2;
}

const metricBlades = [
  0.4, 0.45, 0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6,
];
const inchBlades = [
  4, 4.5, 5, 6, 7, 8, 9, 10, 11, 11.5, 12, 13, 14, 16, 18, 19, 20, 24, 27, 28, 32, 36, 40, 44, 48,
  56, 64, 72, 80,
];
/** Pitches of a full set of gauges, mm. */
export const blades: readonly number[] = [
  ...metricBlades,
  ...inchBlades.map((tpi) => mmPerInch / tpi),
];

/** A blade rocks once its pitch error, summed over the engaged turns, is this share of a pitch. */
const seenShareOfPitch = 0.08;
const nearbyShare = 1 / 3;

/** Chance of each of `blades` being called the one that fits, misreads included. */
export function bladeChances(pitchMm: number, turns: number, misread: number): Float64Array {
  const engaged = Math.min(Math.max(turns, 3), 8);
  const fit = new Float64Array(blades.length);
  let fits = 0;
  let near = 0;
  for (let i = 0; i < blades.length; i++) {
    const z = ((blades[i]! - pitchMm) * engaged) / (seenShareOfPitch * pitchMm);
    fit[i] = portable.exp(-0.5 * z * z);
    fits += fit[i]!;
    if (isNear(blades[i]!, pitchMm)) near++;
  }
  // No blade of the set fits: the closest ones are called.
  if (fits < 1e-12) return bladeChances(closestBlade(pitchMm), turns, Math.max(misread, 0.3));
  for (let i = 0; i < blades.length; i++) {
    const stray =
      (near > 0 && isNear(blades[i]!, pitchMm) ? nearbyShare / near : 0) +
      (near > 0 ? 1 - nearbyShare : 1) / blades.length;
    fit[i] = ((1 - misread) * fit[i]!) / fits + misread * stray;
  }
  return fit;
}

function isNear(bladeMm: number, pitchMm: number): boolean {
  return Math.abs(bladeMm / pitchMm - 1) < 0.12;
}

function closestBlade(pitchMm: number): number {
  return blades.reduce((a, b) => (Math.abs(b - pitchMm) < Math.abs(a - pitchMm) ? b : a));
}

export function closestBladeIndex(pitchMm: number): number {
  return blades.indexOf(closestBlade(pitchMm));
}

/** Seats that look alike, and how often one is taken for another by eye (judgement): 7° and 8° lie
 *  between the flares; an inside cone of 24° is seldom taken for one of 60°. */
const alike: readonly { readonly seats: readonly Seat[]; readonly taken: number }[] = [
  { seats: ['cone-30', 'cone-37', 'cone-45'], taken: 0.2 },
  { seats: ['cone-24', 'cone-60'], taken: 0.005 },
  { seats: ['flat-face-o-ring', 'flat-washer-face', 'o-ring-at-hex'], taken: 0 },
];
/** How much seldomer two seats that look nothing like each other are mistaken (judgement). */
const unlikeShare = 0.2;

/** Chance of calling `seen`, by eye, when the end shows `shown`. */
export function seatChance(seen: Seat, shown: Seat, misread: number): number {
  if (seen !== shown) return mistakenSeat(seen, shown, misread);
  return 1 - seats.reduce((sum, s) => sum + (s === shown ? 0 : mistakenSeat(s, shown, misread)), 0);
}

function mistakenSeat(seen: Seat, shown: Seat, misread: number): number {
  const stray = misread / (seats.length - 1);
  const group = alike.find((g) => g.seats.includes(seen) && g.seats.includes(shown));
  if (group) return stray + (1 - misread) * group.taken;
  // 'none' is what one calls a seat that one does not see.
  return seen === 'none' || shown === 'none' ? stray : unlikeShare * stray;
}

/** Chance of a seat gauge's blade sitting on what the end shows. */
export function gaugedConeChance(called: GaugedCone, shown: Seat, misread: number): number {
  const others = gaugedCones.length - 1;
  const only = (right: GaugedCone, share: number) =>
    called === right ? share : (1 - share) / others;
  // The inverted flare's own 42° passes for the next blade, or for none.
  if (shown === 'cone-inverted') {
    return 0.5 * only('cone-45', 1 - misread) + 0.5 * only('none', 1 - misread);
  }
  const right = gaugedCones.find((cone) => cone === shown);
  // Where there is no cone, few lay a gauge and believe it.
  return right ? only(right, 1 - misread) : only('none', 1 - misread / 2);
}

/** Few parts are marked; what is marked is seldom wrong (judgement). */
const marked = { series: 0.4, other: 0.002 };

/** Chance of finding a mark on a connection of this size's series. */
export function markChance(mark: Mark, series: 'light' | 'heavy' | null): number {
  if (mark === 'light' || mark === 'heavy') return mark === series ? marked.series : marked.other;
  // Left hand and dryseal are marks of the thread, judged apart.
  if (mark !== 'none') return marked.other;
  return series === null ? 1 : 1 - marked.series;
}

/** One standard uncertainty of a length laid beside the crests, mm, and how often one turn too
 *  many or too few is counted. */
const turnsError = { uMm: 0.3, miscount: 0.03 };

/** Density of a pitch got by counting `turns`, in mm of the length they cover. */
export function turnsDensity(
  overMm: number,
  turns: number,
  pitchMm: number,
  stepMm: number,
): number {
  const at = (n: number) => lengthDensity(overMm, n * pitchMm, turnsError.uMm, stepMm);
  const { miscount } = turnsError;
  return (1 - 2 * miscount) * at(turns) + miscount * (at(turns - 1) + at(turns + 1));
}

/** Chance of calling crests rounded or flat: worn flats look round, and burrs make rounds flat. */
export function crestFormChance(called: 'rounded' | 'flat', flankDeg: 55 | 60, misread: number) {
  const right = 0.88 * (1 - misread) + misread / 2;
  return (called === 'rounded') === (flankDeg === 55) ? right : 1 - right;
}

/** Density of a hex across its flats, mm, for a thread of this major diameter: weak, since bodies
 *  and nuts of one thread come in several sizes (common practice). */
export function hexDensity(hexMm: number, majorMm: number, end: 'male' | 'female'): number {
  const usual = end === 'male' ? 1.22 : 1.3;
  const spread = 0.2;
  const z = portable.log(hexMm / (usual * majorMm)) / spread;
  const bell = portable.exp(-0.5 * z * z) / (hexMm * spread * Math.sqrt(2 * Math.PI));
  return 0.8 * bell + 0.2 * misreadLengthDensity(hexMm);
}

/** Chance of calling a thread tapered: short tapers look straight more often than the reverse. */
export function taperChance(called: 'tapered' | 'straight', taper: number, misread: number) {
  // A misread of two choices is still right half the time.
  const right = 1 - misread / 2 - (taper > 0 ? 0.007 : 0.002);
  const calledRight = (called === 'tapered') === taper > 0;
  return calledRight ? right : 1 - right;
}

/** Chance of the 55° or 60° form gauge being called the one without light. */
export function flankChance(called: 55 | 60, flankDeg: 55 | 60, misread: number): number {
  const right = 1 - misread / 2 - 0.004;
  return called === flankDeg ? right : 1 - right;
}

export function occurrences(readings: readonly Reading[]): number[] {
  return readings.map((r, i) => readings.slice(0, i).filter((q) => q.kind === r.kind).length);
}
