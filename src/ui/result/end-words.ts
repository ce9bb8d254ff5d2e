import type { Conclusion } from '../../journey/7-next-reading/decision';
import type { Connection } from '../../standards/connections/connection';
import { tubesOf } from '../../standards/connections/tubes';
import { t } from '../language/language';
import { type AssemblyKind, oRingPlace } from './assembly';

type Named = Pick<NonNullable<Conclusion['decision']['connection']>, 'end' | 'endType' | 'form'>;

/** 'male, stud, form E'; what is open is left out. */
export function endWords({ end, endType, form }: Named): string {
  const words = t().assembly;
  return [
    end ? words.ends[end] : '',
    endType ? words.endTypes[endType] : '',
    form ? `${words.form} ${form}` : '',
  ]
    .filter((word) => word !== '')
    .join(', ');
}

/** LH belongs to the designation (ASME B1.1 and ISO 965-1 write it last). */
export function threadName(
  designation: string,
  hand: Conclusion['decision']['hand'] | undefined,
): string {
  return hand === 'left' ? `${designation}-LH` : designation;
}

/** What must be read before this end is joined to anything. */
export function endWarnings(
  decision: Pick<Conclusion['decision'], 'hand' | 'thread'>,
  row: Connection | null,
): string[] {
  const words = t().assembly;
  const thread = row?.thread ?? decision.thread ?? '';
  return [
    ...(decision.hand === 'left' ? [words.leftHand] : []),
    ...(/ NPTF?$/.test(thread) ? [words.nptf] : []),
    ...(/^R\d/.test(thread) ? [words.tapers] : []),
  ];
}

/** Of an end that names no ring of its own. */
export function oRingText(end: Connection, kind: AssemblyKind | null): string {
  if (kind === null) return t().assembly.formOpen;
  return oRingPlace(end) === 'by-form' ? t().assembly.byForm : t().result.noORing;
}

/** Metric tubes beside the first. */
export function otherTubes(end: Connection): readonly number[] {
  return tubesOf(end).slice(1);
}
