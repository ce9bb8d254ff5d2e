import type { Measured } from '../journey/identification';
import { type CrestJudgement, judgeCrest } from '../journey/wear/judge';
import { leastOverlapMm, overlapMm } from '../journey/wear/overlap';
import { canPass, guardFactor, type Undecided } from '../journey/wear/verdict';
import type { Estimate } from '../quantity/estimate';
import type { Expected } from './expected-thread';

const expanded = ({ u }: Estimate) => (1.96 * u).toFixed(2);

const undecided: Readonly<Record<Undecided, string>> = {
  'near-limit': 'too near a limit: a caliper across the crests at three places decides',
  'too-uncertain':
    'the photo is less sure than the class is wide: use a caliper across the crests at three places',
  tapered: 'a tapered thread is judged by its gauge ring, not by its crests',
  'no-class': 'no class of this thread is known here: use its gauges',
  'another-pitch': 'the photo shows another pitch than this thread has',
  unresolved: 'the photo does not resolve the diameter: use a caliper across the crests',
};

/** What `measure --expect` says of wear, as a person reads it in a terminal. */
export function wearText(
  { thread, className }: Expected,
  { measurement, crests }: Measured,
  diameterMm: Estimate | null,
): string {
  const judged = judgeCrest(thread, className ?? undefined, {
    diameterMm,
    pitchMm: measurement.pitchMm,
  });
  const { limits } = judged;
  const short = crests.filter(({ shortMm }) => shortMm !== null);
  return [
    `  wear            ${[thread.designation, limits?.class].filter(Boolean).join(', ')}`,
    ...(limits
      ? [
          `  class           ${limits.major.minMm.toFixed(3)} to ${limits.major.maxMm.toFixed(3)} mm over the crests`,
        ]
      : []),
    ...(limits && diameterMm && !canPass(diameterMm.u, limits.major)
      ? [`  beforehand      at u = ${diameterMm.u.toFixed(3)} mm no part could be found within`]
      : []),
    `  crest           ${crestWords(judged)}`,
    ...short.map(
      ({ side, turn, shortMm }) =>
        `  crest short     ${side}, turn ${turn}: by ${shortMm!.toFixed(2)} mm`,
    ),
    ...(limits && diameterMm
      ? [
          `  overlap         ${overlapMm(diameterMm.value, thread).toFixed(2)} mm a side over the widest bore; ${leastOverlapMm(limits, thread).toFixed(2)} at the class limit`,
        ]
      : []),
    '  The crest says nothing of the pitch diameter, nor of the seat. Depressurise before you loosen',
    '  anything, look at the seat first, and confirm with GO and NOT GO gauges before pressurising.\n',
  ].join('\n');
}

function crestWords({ verdict }: CrestJudgement): string {
  switch (verdict.state) {
    case 'within':
      return `within class (guard band ${guardFactor} u); this does not pass the thread`;
    case 'below':
      return `below its class by ${verdict.by.value.toFixed(2)} ± ${expanded(verdict.by)} mm`;
    case 'above':
      return `above its class by ${verdict.by.value.toFixed(2)} ± ${expanded(verdict.by)} mm: burr, plating or another thread`;
    case 'not-decidable':
      return `not decidable: ${undecided[verdict.why]}`;
  }
}
