import type { Connection } from '../../standards/connections/connection';
import type { AssemblyWords } from '../language/assembly/en';

export type AssemblyKind = keyof AssemblyWords['steps'];

/** Ends that are put together alike. */
export function assemblyKind(end: Connection): AssemblyKind {
  if (end.flangeHead) return 'flange';
  if (end.sealing === 'thread') return 'taper';
  if (end.sealing === 'face-ring' || end.sealing === 'metal-edge') return 'face-ring';
  if (end.family === 'SAE J512 inverted') return 'inverted';
  switch (end.seat) {
    case 'flat-face-o-ring':
      return 'face-seal';
    case 'o-ring-at-hex':
      // Without a chamfer in the port the ring is held by a ring of its own (ISO 1179 G and H).
      return end.family === 'ISO 1179' ? 'stud-retained-ring' : 'stud-o-ring';
    case 'cone-24':
      return end.endType === 'swivel-nut' ? 'cone-24-hose' : 'cone-24';
    case 'cone-37':
    case 'cone-45':
      return 'flare';
    default:
      return 'cone-swivel';
  }
}

/** Where the O-ring of a joint lies, seen from this end. */
export function oRingPlace(end: Connection): 'here' | 'in-mating' | 'by-form' | 'none' {
  if (end.oRing) {
    const other = end.endType === 'port' || end.seat === 'flat-face-o-ring';
    return other && end.end === 'female' ? 'in-mating' : 'here';
  }
  return end.sealing === 'o-ring' || end.sealing === 'face-ring' ? 'by-form' : 'none';
}
