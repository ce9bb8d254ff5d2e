import type { Connection } from './connections/connection';
import { connections } from './connections/connections';
import { lookAlikes } from './look-alikes';
import type { Thread } from './thread';
import { findThread, threads } from './threads';

/** What must not be joined to an end though it screws on, or starts to. */
export interface NeverJoin {
  /** Other connections on the same thread, as 'family size'. */
  readonly sameThread: readonly string[];
  /** Threads close enough to engage a few turns, by designation. */
  readonly nearThreads: readonly string[];
  readonly rules: readonly NeverRule[];
}

/** Pairs that are told in a sentence. */
export type NeverRule = 'npt-r' | 'taper-in-g' | 'nptf-npt' | 'npsm-npt' | 'flange-series';

/** Screws on and is meant to, with a bonded washer or a gauge's own (common practice). */
const allowed: readonly (readonly [male: string, female: string])[] = [
  ['ISO 8434-6', 'ISO 1179'],
  ['EN 837-1', 'ISO 1179'],
];

/** How far pitch and diameter may differ for two threads to start on each other and then bind or
 *  strip: at the four standard uncertainties of `lookAlikes`, 17 % of pitch and 4 % of diameter
 *  (judgement, set so that the pairs every counter warns of are in). */
const engages = { pitch: 0.04, diameter: 0.011, scale: 1e-4 };
/** Of one diameter, threads start on each other up to this ratio of their pitches. */
const sameDiameterPitchRatio = 1.36;

export function neverJoin(own: Connection): NeverJoin {
  return {
    sameThread: sameThread(own),
    nearThreads: own.thread === null ? [] : (nearThreads().get(own.thread) ?? []),
    rules: rulesOf(own),
  };
}

function sameThread(own: Connection): string[] {
  const others = connections.filter(
    (other) =>
      own.thread !== null &&
      other.thread === own.thread &&
      other.end !== own.end &&
      (other.family !== own.family || other.size !== own.size) &&
      !isAllowed(own, other),
  );
  // A parallel socket stands apart from the taper of its standard.
  const named = (c: Connection) =>
    c.form === 'Rp' ? `${c.family} Rp${c.size}` : `${c.family} ${c.size}`;
  return [...new Set(others.map(named))];
}

function isAllowed(a: Connection, b: Connection): boolean {
  const [male, female] = a.end === 'male' ? [a, b] : [b, a];
  return allowed.some(([m, f]) => m === male.family && f === female.family);
}

let near: Map<string, string[]> | undefined;

/** Of the threads that connections use, which engage with which. */
function nearThreads(): Map<string, string[]> {
  if (near) return near;
  const carried = [...new Set(connections.map((c) => c.thread))].flatMap((name) => {
    const thread = name === null ? null : findThread(name);
    // The metric taper has the parallel thread for its mate.
    return thread?.separable && thread.series !== 'taper' ? [thread] : [];
  });
  const pairs = [...lookAlikes(carried, engages), ...sameDiameter(carried)];
  const map = new Map<string, string[]>();
  const add = (from: Thread, to: Thread) => {
    const list = map.get(from.designation) ?? [];
    if (!list.includes(to.designation)) list.push(to.designation);
    map.set(from.designation, list);
  };
  for (const [a, b] of pairs) {
    add(a, b);
    add(b, a);
  }
  // A dryseal thread engages as its plain one does.
  for (const t of threads) {
    const plain = t.series === 'NPTF' ? t.designation.replace('NPTF', 'NPT') : null;
    if (plain) map.set(t.designation, map.get(plain) ?? []);
  }
  near = map;
  return map;
}

function sameDiameter(list: readonly Thread[]): [Thread, Thread][] {
  return list.flatMap((a, i) =>
    list
      .slice(i + 1)
      .filter((b) => Math.abs(b.basicMajorMm / a.basicMajorMm - 1) < 0.001)
      .filter((b) => {
        const ratio = b.pitchMm / a.pitchMm;
        return Math.max(ratio, 1 / ratio) < sameDiameterPitchRatio;
      })
      .map((b): [Thread, Thread] => [a, b]),
  );
}

function rulesOf(own: Connection): NeverRule[] {
  const { family, form, end } = own;
  if (own.flangeHead) return ['flange-series'];
  if (form === 'NPSM swivel') return ['npsm-npt'];
  const tapers = ['ISO 7-1', 'ASME B1.20.1', 'SAE J476'];
  const straightG =
    ['ISO 1179', 'ISO 8434-6', 'JIS B 8363'].includes(family) && own.thread?.[0] === 'G';
  if (straightG) return end === 'female' ? ['taper-in-g'] : [];
  if (!tapers.includes(family)) return [];
  return [
    'npt-r',
    ...(end === 'male' ? (['taper-in-g'] as const) : []),
    ...(family === 'ISO 7-1' ? [] : (['nptf-npt'] as const)),
    ...(family === 'ASME B1.20.1' && end === 'male' ? (['npsm-npt'] as const) : []),
  ];
}
