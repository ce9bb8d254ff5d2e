import type { ThreadMeasurement } from '../../journey/5-measurement/thread-measurement';
import type { ThreadCandidate } from '../../journey/6-candidates/candidate';
import type { Estimate } from '../../quantity/estimate';
import type { CrestRange, Thread } from '../../standards/thread';
import { endOf } from '../end/end-choice';
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
  row: Pick<Thread, 'taper' | 'crests' | 'bore'> | null,
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
  if (!tapered && endOf(measured) === 'male')
    found.push(overCrests(candidate, measured.majorDiameterMm, row?.crests ?? null));
  if (!tapered && endOf(measured) === 'female' && row)
    found.push(inside(measured.majorDiameterMm, row.bore));
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
  return found;
}

function overCrests(
  { basicMajorMm }: ListedThread,
  { value: major, u }: Estimate,
  made: CrestRange | null,
): Evidence {
  const say = t().identification.evidence;
  const under = basicMajorMm - major;
  const mm = `${number(Math.abs(under), 2)} mm`;
  const least = made?.minMm ?? basicMajorMm * 0.975;
  if (under < -3 * u) return { speaks: 'against', text: say.diameterOver(mm) };
  if (major < least - 3 * u) return { speaks: 'against', text: say.diameterOff(mm) };
  return { speaks: 'for', text: say.diameterFits(mm) };
}

function inside({ value: minor, u }: Estimate, bore: CrestRange): Evidence {
  const say = t().end.evidence;
  const mm = (off: number) => `${number(off, 2)} mm`;
  if (minor < bore.minMm - 3 * u)
    return { speaks: 'against', text: say.under(mm(bore.minMm - minor)) };
  if (minor > bore.maxMm + 3 * u)
    return { speaks: 'against', text: say.over(mm(minor - bore.maxMm)) };
  return { speaks: 'for', text: say.fits };
}
