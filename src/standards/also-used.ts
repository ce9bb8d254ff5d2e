import type { Connection } from './connections/connection';

/** Users of a thread that no row stands for, since nothing that is read here tells them apart, or
 *  too little is known of them. From memory, but for the last. */
export type AlsoUsed = 'banjo' | 'universal-nose' | 'jis-cone-60';

const banjo = /^(M(8x1|10x1|12x1\.5|14x1\.5|16x1\.5|18x1\.5|22x1\.5)|G(1\/8|1\/4|3\/8|1\/2))$/;

export function alsoUsed(thread: string, end: Connection['end']): AlsoUsed[] {
  const metric15 = /^M\d+x(1\.5|2)$/.test(thread);
  return [
    ...(banjo.test(thread) && end === 'male' ? (['banjo'] as const) : []),
    ...(metric15 && end === 'female' ? (['universal-nose'] as const) : []),
    // Trade press, 2004, comparing the 60° cones of BS 5200 and JIS B 8363.
    ...(/^G/.test(thread) ? (['jis-cone-60'] as const) : []),
  ];
}
