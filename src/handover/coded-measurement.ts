import type {
  EndShows,
  SpreadPart,
  ThreadShows,
} from '../journey/5-measurement/thread-measurement';
import type { Sheet } from '../journey/8-sheet/sheet-schema';
import type { Coded } from './coded-schema';
import { digits, foldEstimate, given, unfoldEstimate } from './coded-values';

type Measurement = NonNullable<Sheet['measurement']>;

/** `parts`: whether its budget, and the parts of its taper's spread, go along. */
export function foldMeasurement(
  m: Measurement,
  parts: { readonly budget: boolean; readonly taper: boolean },
): NonNullable<Coded['m']> {
  return {
    p: foldEstimate(m.pitchMm),
    d: foldEstimate(m.majorDiameterMm),
    c: digits(m.correlation, 4),
    ...given('t', m.taper && foldEstimate(m.taper)),
    ...given('f', m.flankAngleDeg && foldEstimate(m.flankAngleDeg)),
    ...given('n', m.noseHalfAngleDeg && foldEstimate(m.noseHalfAngleDeg)),
    u: digits(m.turns, 3),
    ...given('h', m.hand),
    ...given('s', m.starts),
    ...given('e', m.middleFromEndMm === null ? null : digits(m.middleFromEndMm, 4)),
    b: (parts.budget ? m.budget : []).map((row) => [
      row.source,
      digits(row.pitchMm, 2),
      digits(row.majorDiameterMm, 2),
    ]),
    ...given('a', m.hexAcrossFlatsMm && foldEstimate(m.hexAcrossFlatsMm)),
    ...given('q', m.endShows && foldShows(m.endShows)),
    ...given('v', m.threadShows && foldLooks(m.threadShows)),
    ...given('g', m.end === 'female' ? (1 as const) : undefined),
    ...given('k', m.diameterParts?.map(pairOf)),
    ...given('l', parts.taper ? m.taperParts?.map(pairOf) : undefined),
    ...given(
      'o',
      m.otherPeriods?.length ? m.otherPeriods.map((q) => pair(q.ratio, q.share)) : undefined,
    ),
  };
}

const noses = ['cone-30', 'cone-37', 'cone-45'] as const;
const bases = ['o-ring', 'shoulder'] as const;
/** Shares in thousandths; that of none is what they leave. */
const foldShows = ({ nose, base }: EndShows): number[] => [
  ...noses.map((kind) => Math.round(1000 * nose[kind])),
  ...bases.map((kind) => Math.round(1000 * base[kind])),
];
const foldLooks = ({ profile, taper }: ThreadShows): number[] =>
  [profile['55'], profile.npt, taper.tapered].map((share) => Math.round(1000 * share));
function unfoldLooks(v: readonly number[]): ThreadShows {
  const [round, deep, tapered] = v.map((share) => share / 1000) as [number, number, number];
  return {
    profile: { '60': Math.max(0, 1 - round - deep), '55': round, npt: deep },
    taper: { straight: 1 - tapered, tapered },
  };
}
function unfoldShows(q: readonly number[]): EndShows {
  const named = <K extends string>(kinds: readonly K[], shares: readonly number[]) => ({
    none: Math.max(0, 1 - shares.reduce((a, b) => a + b, 0) / 1000),
    ...(Object.fromEntries(kinds.map((kind, i) => [kind, shares[i]! / 1000])) as Record<K, number>),
  });
  return { nose: named(noses, q.slice(0, 3)), base: named(bases, q.slice(3)) };
}

const pair = (a: number, b: number): [number, number] => [digits(a, 4), digits(b, 3)];
const pairOf = ({ share, u }: SpreadPart) => pair(share, u);
const partOf = ([share, u]: readonly [number, number]): SpreadPart => ({ share, u });

export function unfoldMeasurement(m: NonNullable<Coded['m']>) {
  return {
    ...(m.g && { end: 'female' as const }),
    pitchMm: unfoldEstimate(m.p),
    majorDiameterMm: unfoldEstimate(m.d),
    correlation: m.c,
    taper: m.t ? unfoldEstimate(m.t) : null,
    flankAngleDeg: m.f ? unfoldEstimate(m.f) : null,
    noseHalfAngleDeg: m.n ? unfoldEstimate(m.n) : null,
    turns: m.u,
    hand: m.h ?? null,
    starts: m.s ?? null,
    middleFromEndMm: m.e ?? null,
    budget: m.b.map(([source, pitchMm, majorDiameterMm]) => ({ source, pitchMm, majorDiameterMm })),
    ...given('endShows', m.q && unfoldShows(m.q)),
    ...given('threadShows', m.v && unfoldLooks(m.v)),
    ...given('hexAcrossFlatsMm', m.a && unfoldEstimate(m.a)),
    ...given('diameterParts', m.k?.map(partOf)),
    ...given('taperParts', m.l?.map(partOf)),
    ...given(
      'otherPeriods',
      m.o?.map(([ratio, share]) => ({ ratio, share })),
    ),
  };
}
