import type { Connection, EndType } from '../../standards/connections/connection';
import type { tradeEn } from '../language/trade/en';

export type AssemblyKind = keyof typeof tradeEn.steps;

/** How an end is put together. A 24° end takes a tube under a cutting ring, or a hose end: both,
 *  unless its nut says which. */
export function assemblyKinds(row: Connection, types: readonly EndType[]): AssemblyKind[] {
  if (row.seat !== 'cone-24') return [kindOf(row)];
  const is = (type: EndType) => types.includes(type);
  if (row.end === 'female' && is('tube-nut') && !is('swivel-nut')) return ['cone-24'];
  if (row.end === 'female' && is('swivel-nut') && !is('tube-nut')) return ['cone-24-hose'];
  return row.endTypes.includes('swivel-nut') || row.end === 'male'
    ? ['cone-24', 'cone-24-hose']
    : ['cone-24'];
}

function kindOf(row: Connection): AssemblyKind {
  const { family, seat, sealing } = row;
  if (row.flangeHead) return 'flange';
  if (family === 'SAE J476') return 'dryseal';
  if (row.form === 'NPSM swivel') return 'npsm';
  if (family === 'DIN 3852-1') return 'taper-metric';
  if (family === 'ISO 15171') return 'test-point';
  if (sealing === 'thread') return family === 'ISO 7-1' ? 'taper-iso' : 'taper-npt';
  if (family === 'SAE J512 compression') return 'compression';
  if (family === 'EN 837-1') return 'gauge';
  if (sealing === 'face-ring') return 'face-ring';
  if (sealing === 'metal-edge') return 'cutting-edge';
  if (sealing === 'washer') return 'washer';
  switch (seat) {
    case 'flat-face-o-ring':
      return 'face-seal';
    case 'o-ring-at-hex':
      return 'stud-o-ring';
    case 'cone-inverted':
      return 'inverted';
    case 'cone-37':
    case 'cone-45':
      return 'flare';
    default:
      return 'cone-swivel';
  }
}

/** What holds for every joint of its kind, whatever its figures. */
export function alwaysOf(kinds: readonly AssemblyKind[], hasRing: boolean) {
  const rigid: readonly AssemblyKind[] = ['flange', 'gauge', 'test-point'];
  return [
    'pressure',
    ...(kinds.every((kind) => rigid.includes(kind)) ? [] : (['spanner'] as const)),
    ...(hasRing ? (['ring'] as const) : []),
    'leak',
  ] as const;
}

/** Kinds whose seal is made of rubber, or may be. */
export function hasElastomer(row: Connection): boolean {
  return row.oRing !== null || row.sealing === 'o-ring' || row.sealing === 'face-ring';
}
