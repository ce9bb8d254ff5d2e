import type { ThreadMeasurement } from '../../journey/5-measurement/thread-measurement';
import type { ThreadCandidate } from '../../journey/6-candidates/candidate';
import { profileOf } from '../../journey/6-candidates/photo-likelihood';
import type { Estimate } from '../../quantity/estimate';
import type { Thread } from '../../standards/thread';
import { number } from '../language/format';
import { t } from '../language/language';

export interface Evidence {
  readonly speaks: 'for' | 'against';
  readonly text: string;
}

export type ListedThread = Extract<ThreadCandidate, { designation: string }>;

const percentOf = (share: number) => {
  const p = Math.abs(share) * 100;
  return `${number(p, p < 1 ? 2 : 1)} %`;
};

/** What the photo's numbers say about one thread, in words. The judgement is the matching
 *  core's; this only shows the differences behind it. Beyond 3 u a difference speaks against. */
export function evidenceFor(
  candidate: ListedThread,
  measured: ThreadMeasurement,
  row: Pick<Thread, 'system' | 'flankAngleDeg' | 'taper' | 'crests' | 'bore'> | null,
): Evidence[] {
  const say = t().identification.evidence;
  const found: Evidence[] = [];
  const pitch = measured.pitchMm.value / candidate.pitchMm - 1;
  const uPitch = measured.pitchMm.u / measured.pitchMm.value;
  found.push(
    Math.abs(pitch) <= 3 * uPitch
      ? { speaks: 'for', text: say.pitchFits(percentOf(pitch)) }
      : { speaks: 'against', text: say.pitchOff(percentOf(pitch)) },
  );
  const tapered = (row?.taper ?? 0) > 0;
  // A taper thread's diameter depends on where it is read, so it is not compared with one basic value.
  if (!tapered && measured.end !== 'female')
    found.push(majorEvidence(candidate.basicMajorMm, measured.majorDiameterMm, row));
  if (!tapered && measured.end === 'female' && row)
    found.push(minorEvidence(measured.majorDiameterMm, row));
  if (measured.taper && measured.taper.u < 0.02) {
    const seen = measured.taper.value;
    const off = (from: number) => Math.abs(seen - from) > 3 * measured.taper!.u;
    if (tapered)
      found.push(
        off(1 / 16)
          ? { speaks: 'against', text: say.taperMissing }
          : { speaks: 'for', text: say.taperFits },
      );
    else if (off(0) && seen > 0) found.push({ speaks: 'against', text: say.taperOff });
  }
  if (row && measured.threadShows) found.push(...looksEvidence(row, measured));
  return found;
}

/** Shares from which on a look speaks for a kind, and up to which against it, in words. */
const plain = { for: 0.6, against: 0.1 } as const;

/** What the thread looks like: its teeth, and its taper where that was not measured. */
function looksEvidence(
  row: Pick<Thread, 'system' | 'flankAngleDeg' | 'taper'>,
  { threadShows, taper: measured }: ThreadMeasurement,
): Evidence[] {
  const say = t().identification.evidence;
  const { profile, taper } = threadShows!;
  const own = profile[profileOf(row)];
  const found: Evidence[] = [];
  if (own > plain.for) found.push({ speaks: 'for', text: say.profileFits });
  if (own < plain.against) found.push({ speaks: 'against', text: say.profileOff });
  if (measured && measured.u < 0.02) return found;
  if (row.taper > 0 && taper.tapered > plain.for)
    found.push({ speaks: 'for', text: say.taperFits });
  if (row.taper > 0 && taper.tapered < plain.against)
    found.push({ speaks: 'against', text: say.taperMissing });
  if (row.taper === 0 && taper.straight < plain.against)
    found.push({ speaks: 'against', text: say.taperOff });
  return found;
}

function majorEvidence(
  basicMm: number,
  { value, u }: Estimate,
  row: Pick<Thread, 'crests'> | null,
): Evidence {
  const say = t().identification.evidence;
  const under = basicMm - value;
  const mm = `${number(Math.abs(under), 2)} mm`;
  const least = row?.crests.minMm ?? basicMm * 0.975;
  if (under < -3 * u) return { speaks: 'against', text: say.diameterOver(mm) };
  if (value < least - 3 * u) return { speaks: 'against', text: say.diameterOff(mm) };
  return { speaks: 'for', text: say.diameterFits(mm) };
}

function minorEvidence({ value, u }: Estimate, { bore }: Pick<Thread, 'bore'>): Evidence {
  const say = t().identification.evidence;
  const off = Math.max(bore.minMm - value, value - bore.maxMm);
  return off > 3 * u
    ? { speaks: 'against', text: say.minorOff(`${number(off, 2)} mm`) }
    : { speaks: 'for', text: say.minorFits };
}
