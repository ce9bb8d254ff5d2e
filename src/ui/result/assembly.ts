import type { Connection } from '../../standards/connections/connection';

export type AssemblyKind =
  | 'face-seal'
  | 'flare'
  | 'stud-o-ring'
  | 'face-ring'
  | 'cone-24'
  | 'cone-swivel'
  | 'taper'
  | 'flange';

/** Ends that are put together alike. */
export function assemblyKind(end: Connection): AssemblyKind {
  if (end.flangeHead) return 'flange';
  if (end.sealing === 'thread') return 'taper';
  if (end.sealing === 'face-ring' || end.sealing === 'metal-edge') return 'face-ring';
  switch (end.seat) {
    case 'flat-face-o-ring':
      return 'face-seal';
    case 'o-ring-at-hex':
      return 'stud-o-ring';
    case 'cone-24':
      return 'cone-24';
    case 'cone-37':
    case 'cone-45':
    case 'none':
      return 'flare';
    default:
      return 'cone-swivel';
  }
}
