import * as portable from '../../quantity/portable-math';
import type { Connection } from '../../standards/connections/connection';
import type { Thread } from '../../standards/thread';

export const regions = ['anywhere', 'north-america', 'europe', 'east-asia'] as const;
export const trades = ['any', 'mobile-hydraulics', 'automotive'] as const;

/** Everything believed before a measurement, in one place. A photo is sent when someone is in
 *  doubt, and the rare ones are overrepresented among the doubtful: so every listed connection
 *  starts equal, but for what the user says of region and trade. Shares are judgement (common
 *  practice), not statistics. Stage 7 settles nothing that a flat prior would leave open, so none
 *  of them can decide alone. */
export interface PriorOptions {
  readonly region?: (typeof regions)[number];
  readonly trade?: (typeof trades)[number];
}

/** Families that a region or trade meets more often. */
const regional: Record<NonNullable<PriorOptions['region']>, readonly string[]> = {
  anywhere: [],
  'north-america': ['ISO 8434-2', 'ISO 8434-3', 'ISO 11926', 'ASME B1.20.1', 'SAE J512'],
  europe: [
    'ISO 8434-1',
    'NF E 48-050',
    'ISO 1179',
    'ISO 8434-6',
    'ISO 6149',
    'ISO 7-1',
    'ISO 9974',
    'DIN 3852-1',
    'DIN 7631',
  ],
  'east-asia': ['JIS B 8363', 'ISO 7-1', 'ISO 1179'],
};

const ofTrade: Record<NonNullable<PriorOptions['trade']>, readonly string[]> = {
  any: [],
  'mobile-hydraulics': ['ISO 8434-3', 'ISO 8434-2', 'ISO 11926', 'ISO 6149', 'ISO 8434-1'],
  automotive: ['SAE J512', 'SAE J512 inverted', 'SAE J512 compression', 'ISO 4038'],
};

/** Nobody asks what a pressure gauge or a test point is, few brake lines lie on a parts desk, and
 *  metric tapers are met on grease lines rather than on hydraulic ones. */
const seldom: Readonly<Record<string, number>> = {
  'EN 837-1': 0.2,
  'ISO 15171': 0.2,
  'ISO 4038': 0.3,
  'DIN 3852-1': 0.2,
};

/** How much a region or trade may tip a family: twice each, no more. */
const tip = 2;

/** Of one connection end, its variants together. */
export function connectionPrior(connection: Connection, options: PriorOptions): number {
  const { family } = connection;
  let share = formShare(connection) * (seldom[family] ?? 1);
  if (regional[options.region ?? 'anywhere'].includes(family)) share *= tip;
  if (ofTrade[options.trade ?? 'any'].includes(family)) share *= tip;
  return share;
}

/** Variants of one end that share thread and size add up to 1. */
function formShare({ form, end }: Connection): number {
  if (end === 'female' || form === null) return 1;
  return { E: 0.4, A: 0.15, B: 0.25, 'G or H': 0.2 }[form] ?? 1;
}

/** Middle sizes (8 to 45 mm over the crests) are commoner than the extremes. */
function sizeShare(basicMajorMm: number): number {
  const octaves = portable.log2(basicMajorMm / 20);
  return portable.exp(-0.5 * octaves ** 2) + 0.12;
}

/** A listed thread that carries something else than its listed connections (a plug, a bolt, a
 *  maker's own end), against all that it carries. */
export const otherUseShare = 0.002;

/** All listed threads that no listed connection uses, together. */
export const plainThreadShare = 0.1;

/** Coarse and common series stand out among plain threads. */
export function plainThreadPrior(thread: Thread): number {
  const common = thread.series === 'UNC' || thread.series === 'UNF' || thread.series === 'coarse';
  return (common ? 4 : 1) * sizeShare(thread.basicMajorMm);
}

/** A thread that is in no table. Half of these have a standard pitch on an odd diameter. */
export const unlistedShare = 0.02;
export const unlistedWithStandardPitch = 0.5;

/** Without a photo: which end lies on the counter. */
export const endShare = { male: 0.6, female: 0.4 } as const;
