import type { Connection } from '../../standards/connections/connection';
import type { Thread } from '../../standards/thread';

/** Everything believed before a measurement, in one place. Shares are judgement of what lies on a
 *  hydraulic counter (common practice), not statistics; they are mild on purpose, and stage 7
 *  settles nothing that a flat prior would leave open, so none of them can decide alone. */
export interface PriorOptions {
  readonly region?: 'anywhere' | 'north-america' | 'europe' | 'east-asia';
  readonly trade?: 'any' | 'mobile-hydraulics' | 'automotive';
}

/** Share of each family. */
const familyShare: Record<string, number> = {
  'ISO 8434-2': 16, // the widest spread of the flares
  'ISO 8434-3': 14, // common on new machines
  'ISO 8434-1': 16, // Europe's usual tube connection
  'ISO 11926': 10,
  'ISO 1179': 9,
  'ISO 8434-6': 7,
  'ISO 6149': 7,
  'ASME B1.20.1': 9,
  'ISO 7-1': 6,
  'SAE J512': 7,
  'SAE J512 inverted': 4,
  'ISO 9974': 5,
  'DIN 7631': 3,
  'JIS B 8363': 6,
};

const regional: Record<NonNullable<PriorOptions['region']>, readonly string[]> = {
  anywhere: [],
  'north-america': ['ISO 8434-2', 'ISO 8434-3', 'ISO 11926', 'ASME B1.20.1', 'SAE J512'],
  europe: ['ISO 8434-1', 'ISO 1179', 'ISO 8434-6', 'ISO 6149', 'ISO 7-1', 'ISO 9974', 'DIN 7631'],
  'east-asia': ['JIS B 8363', 'ISO 7-1', 'ISO 1179'],
};

const ofTrade: Record<NonNullable<PriorOptions['trade']>, readonly string[]> = {
  any: [],
  'mobile-hydraulics': ['ISO 8434-3', 'ISO 8434-2', 'ISO 11926', 'ISO 6149', 'ISO 8434-1'],
  automotive: ['SAE J512', 'SAE J512 inverted'],
};

/** How much a region or trade may tip a family: three times, no more. */
const tip = 3;

export function familyPrior(family: string, options: PriorOptions): number {
  let share = familyShare[family] ?? 1;
  if (regional[options.region ?? 'anywhere'].includes(family)) share *= tip;
  if (ofTrade[options.trade ?? 'any'].includes(family)) share *= tip;
  return share;
}

/** Middle sizes (8 to 45 mm over the crests) are commoner than the extremes. */
export function sizePrior(basicMajorMm: number): number {
  const octaves = Math.log(basicMajorMm / 20) / Math.LN2;
  return Math.exp(-0.5 * (octaves / 1) ** 2) + 0.12;
}

/** Variants of one end that share thread and size. */
export function formPrior(connection: Connection): number {
  return connection.form === 'G or H' ? 0.3 : 1;
}

/** A listed thread that carries something else than its listed connections (a plug, a bolt, a
 *  maker's own end), against all that it carries. */
export const otherUseShare = 0.002;

/** All listed threads that no listed connection uses, together. */
export const plainThreadShare = 0.05;

/** Coarse and common series stand out among plain threads. */
export function plainThreadPrior(thread: Thread): number {
  const common = thread.series === 'UNC' || thread.series === 'UNF' || thread.series === 'coarse';
  return (common ? 4 : 1) * (thread.series === 'NPSM' ? 0.3 : 1) * sizePrior(thread.basicMajorMm);
}

/** A thread that is in no table. Half of these have a standard pitch on an odd diameter. */
export const unlistedShare = 0.04;
export const unlistedWithStandardPitch = 0.5;

/** Without a photo: which end lies on the counter. */
export const endShare = { male: 0.6, female: 0.4 } as const;
