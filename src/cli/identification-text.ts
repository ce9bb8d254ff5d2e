import type { ThreadMeasurement } from '../journey/5-measurement/thread-measurement';
import type { Conclusion } from '../journey/7-next-reading/decision';
import type { Identification } from '../journey/identification';
import type { Estimate } from '../quantity/estimate';
import { connections as listed } from '../standards/connections/connections';
import { type ConnectionName, rowsOf } from '../standards/connections/find-connection';
import { notesOn } from '../standards/families';
import { confusions, screwsOnButMustNot } from '../standards/look-alikes';
import { threads as allThreads } from '../standards/threads';

/** A photo's answer as a person reads it in a terminal. */
export function identificationText(photo: string, identification: Identification): string {
  if (identification.outcome === 'refused') {
    const { reason, advice } = identification.refusal;
    return `${photo}\n  not measured (${reason}): ${advice}\n`;
  }
  const { reference, measurement, conclusion, notes } = identification;
  const height =
    reference.axisHeightMm === null
      ? ''
      : `, axis ${reference.axisHeightMm.toFixed(1)} mm above the card`;
  return [
    photo,
    ...measurementLines(measurement),
    `  scale           ${reference.pxPerMm.toFixed(2)} px/mm at the axis${height}`,
    ...(notes.length > 0 ? [`  note            ${notes.join(', ')}`] : []),
    conclusionText(conclusion),
  ].join('\n');
}

function measurementLines(measurement: ThreadMeasurement): string[] {
  const { pitchMm, majorDiameterMm, taper, flankAngleDeg, noseHalfAngleDeg } = measurement;
  const tpi = `(${(25.4 / pitchMm.value).toFixed(2)} tpi)`;
  const inch = `(${(majorDiameterMm.value / 25.4).toFixed(4)} in)`;
  return [
    `  pitch           ${withInterval(pitchMm, 4, 'mm')} ${tpi}`,
    `  major diameter  ${withInterval(majorDiameterMm, 3, 'mm')} ${inch}`,
    ...(taper ? [`  taper           ${withInterval(taper, 4, 'mm/mm')}`] : []),
    ...(flankAngleDeg ? [`  flank angle     ${withInterval(flankAngleDeg, 1, '°')}`] : []),
    ...(noseHalfAngleDeg ? [`  nose half angle ${withInterval(noseHalfAngleDeg, 1, '°')}`] : []),
    `  turns seen      ${measurement.turns.toFixed(1)}, hand ${measurement.hand ?? 'not resolved'}`,
  ];
}

/** ± is the 95 % interval of a normal distribution (JCGM 100, table G.1: 1.960 u). */
function withInterval({ value, u }: Estimate, decimals: number, unit: string): string {
  return `${value.toFixed(decimals)} ± ${(1.96 * u).toFixed(decimals)} ${unit}`;
}

export function conclusionText({ threads, connections, decision }: Conclusion): string {
  const likely = (probability: number) => probability >= 0.01;
  const percent = (probability: number) => `${(100 * probability).toFixed(1).padStart(5)} %`;
  const lines = [
    ...threads
      .filter((thread) => likely(thread.probability))
      .map(
        (t) =>
          `  ${percent(t.probability)}  ${t.system ? t.designation : 'none of the listed threads'}`,
      ),
    ...connections
      .filter((connection) => likely(connection.probability))
      .map((c) => `  ${percent(c.probability)}  ${c.family}, size ${c.size}`),
  ];
  const { connection } = decision;
  return `${[
    ...lines,
    `  → ${decisionText(decision)}`,
    ...(decision.hand === 'left'
      ? ['    LEFT-HAND THREAD (LH): no right-hand part fits; order it as LH.']
      : []),
    ...(connection ? connectionLines({ ...connection, thread: decision.thread }) : []),
  ].join('\n')}\n`;
}

/** What the standards and common practice hold of a settled connection, and what merely screws on. */
function connectionLines(name: ConnectionName & Pick<Conclusion['decision'], 'thread'>): string[] {
  const [own] = rowsOf(name, listed);
  const alike = own?.thread ? (confusions(allThreads, listed).get(own.thread) ?? []) : [];
  const intruders = own ? screwsOnButMustNot(own, listed) : [];
  const names = [...new Set(intruders.map((c) => `${c.family} ${c.size}`))];
  return [
    ...(own ? notesOn(own).map((note) => `    ${note.en}`) : []),
    ...(names.length > 0 ? [`    Screws on, and must not be joined: ${names.join(', ')}.`] : []),
    ...(alike.length > 0 ? [`    Looks alike, never force together: ${alike.join(', ')}.`] : []),
    ...(/ NPTF?$/.test(own?.thread ?? '')
      ? ['    NPT and NPTF cannot be told apart by measuring: see the marks.']
      : []),
  ];
}

function connectionName({ family, size, end, endType, form }: DecidedConnection): string {
  const rest = [end, endType?.replace('-', ' '), form && `form ${form}`].filter(Boolean);
  return rest.length > 0 ? `${family} ${size} (${rest.join(', ')})` : `${family} ${size}`;
}

type DecidedConnection = NonNullable<Conclusion['decision']['connection']>;

function decisionText({ state, thread, connection, hand, ask }: Conclusion['decision']): string {
  const settled = [
    ...(thread ? [hand === 'left' ? `${thread}-LH` : thread] : []),
    ...(connection ? [connectionName(connection)] : []),
  ].join(', ');
  if (state === 'unlisted') return 'measured, but no listed thread is like this';
  if (state === 'settled') return `settled: ${settled}. Confirm with a gauge before pressurising.`;
  const known = settled ? `${settled} is certain; ` : '';
  return ask ? `${known}still needed: ${ask.reading}. ${ask.why}` : `${known}still open`;
}
