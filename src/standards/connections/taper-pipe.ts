import { nptThreads } from '../npt-threads';
import { rThreads } from '../r-threads';
import type { Thread } from '../thread';
import { type Connection, connection } from './connection';

/** Pipe threads that seal in the thread: R (ISO 7-1), NPT (ASME B1.20.1), dryseal NPTF (SAE J476),
 *  and the straight NPSM swivel nut, whose nipple seals on the 60° chamfer inside a male NPT end.
 *  Every size of the thread tables, up to 6 in. */
const fittingSizes = (size: string) => !['1/16'].includes(size);

function ends(
  { designation: thread, source }: Thread,
  family: string,
  tradeName: string,
  forms?: { readonly male: string; readonly female: string },
) {
  return (['male', 'female'] as const).map((end) =>
    connection({
      family,
      tradeName,
      size: sizeOf(thread),
      end,
      endTypes: end === 'male' ? ['fixed', 'stud'] : ['port', 'fixed'],
      form: forms?.[end] ?? null,
      thread,
      seat: 'none',
      sealing: 'thread',
      source,
    }),
  );
}

const sizeOf = (designation: string) => designation.replace(/^R| [A-Z]+$/g, '');

export const taperPipe: readonly Connection[] = [
  ...rThreads.flatMap((t) => ends(t, 'ISO 7-1', 'taper pipe (BSPT)', { male: 'R', female: 'Rc' })),
  // A parallel socket has the thread of G, within wider limits: no reading tells them apart.
  ...rThreads.map((t) =>
    connection({
      family: 'ISO 7-1',
      tradeName: 'parallel socket for taper pipe (Rp)',
      form: 'Rp',
      size: sizeOf(t.designation),
      end: 'female',
      endTypes: ['port', 'fixed'],
      thread: t.designation.replace('R', 'G'),
      seat: 'none',
      sealing: 'thread',
      source: t.source,
    }),
  ),
  ...nptThreads
    .filter((t) => t.series === 'NPT')
    .flatMap((t) => ends(t, 'ASME B1.20.1', 'taper pipe (NPT)')),
  ...nptThreads
    .filter((t) => t.series === 'NPTF')
    .flatMap((t) => ends(t, 'SAE J476', 'dryseal taper pipe (NPTF)')),
  ...nptThreads
    .filter((t) => t.series === 'NPSM' && fittingSizes(sizeOf(t.designation)))
    .map((t) =>
      connection({
        family: 'ASME B1.20.1',
        tradeName: 'straight pipe swivel (NPSM)',
        form: 'NPSM swivel',
        size: sizeOf(t.designation),
        end: 'female',
        endTypes: ['swivel-nut'],
        thread: t.designation,
        seat: 'cone-60',
        seatHalfAngleDeg: 30,
        coneOutwards: true,
        sealing: 'metal-cone',
        source: `${t.source}; swivel nut: SAE J514 (from memory)`,
      }),
    ),
];
