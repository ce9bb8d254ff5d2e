import type { ThreadMeasurement } from '../journey/5-measurement/thread-measurement';
import type { ConnectionEnd } from '../journey/6-candidates/candidate';
import { claimedSeat, coneAngle } from '../journey/6-candidates/end-seen';
import type { Conclusion } from '../journey/7-next-reading/decision';
import type { Identification } from '../journey/identification';
import type { Estimate } from '../quantity/estimate';
import { aliasesOf } from '../standards/aliases';
import { type AlsoUsed, alsoUsed } from '../standards/also-used';
import { rowsOf } from '../standards/connections/find-rows';
import { notesOn } from '../standards/families';
import { neverJoin } from '../standards/never-join';

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
      : `, ${measurement.end === 'female' ? 'mouth' : 'axis'} ${reference.axisHeightMm.toFixed(1)} mm above the card`;
  return [
    photo,
    ...measurementLines(measurement),
    `  scale           ${reference.pxPerMm.toFixed(2)} px/mm at the ${measurement.end === 'female' ? 'mouth' : 'axis'}${height}`,
    ...(notes.length > 0 ? [`  note            ${notes.join(', ')}`] : []),
    conclusionText(conclusion),
  ].join('\n');
}

function measurementLines(measurement: ThreadMeasurement): string[] {
  const { pitchMm, majorDiameterMm, taper, flankAngleDeg } = measurement;
  const noseHalfAngleDeg = coneAngle(measurement);
  const acrossFlats = measurement.hexAcrossFlatsMm;
  const seat = claimedSeat(measurement);
  const tpi = `(${(25.4 / pitchMm.value).toFixed(2)} tpi)`;
  const inch = `(${(majorDiameterMm.value / 25.4).toFixed(4)} in)`;
  return [
    `  pitch           ${withInterval(pitchMm, 4, 'mm')} ${tpi}`,
    `  ${measurement.end === 'female' ? 'minor' : 'major'} diameter  ${withInterval(majorDiameterMm, 3, 'mm')} ${inch}`,
    ...(taper ? [`  taper           ${withInterval(taper, 4, 'mm/mm')}`] : []),
    ...(flankAngleDeg ? [`  flank angle     ${withInterval(flankAngleDeg, 1, '°')}`] : []),
    ...looksLine(measurement),
    ...(noseHalfAngleDeg ? [`  nose half angle ${withInterval(noseHalfAngleDeg, 1, '°')}`] : []),
    ...(acrossFlats ? [`  across flats    ${withInterval(acrossFlats, 2, 'mm')}`] : []),
    ...(seat ? [`  end             the photo shows ${seat}`] : []),
    `  turns seen      ${measurement.turns.toFixed(1)}, hand ${measurement.hand ?? 'not resolved'}`,
  ];
}

/** The likeliest profile and taper by what the thread looks like, were all as common. */
function looksLine({ threadShows }: ThreadMeasurement): string[] {
  if (!threadShows) return [];
  const likeliest = (shares: Readonly<Record<string, number>>) => {
    const [kind, share] = Object.entries(shares).reduce((a, b) => (b[1] > a[1] ? b : a));
    return `${kind} ${(100 * share).toFixed(0)} %`;
  };
  const { profile, taper } = threadShows;
  return [`  looks like      profile ${likeliest(profile)}, ${likeliest(taper)}`];
}

/** ± is the 95 % interval of a normal distribution (JCGM 100, table G.1: 1.960 u). */
function withInterval({ value, u }: Estimate, decimals: number, unit: string): string {
  return `${value.toFixed(decimals)} ± ${(1.96 * u).toFixed(decimals)} ${unit}`;
}

export function conclusionText(conclusion: Conclusion): string {
  const { threads, connections, decision, hand, nearest } = conclusion;
  const likely = (probability: number) => probability >= 0.01;
  const percent = (probability: number) => `${(100 * probability).toFixed(1).padStart(5)} %`;
  // Shares among threads of which none fits say nothing.
  const lines = nearest
    ? []
    : [
        ...threads
          .filter((thread) => likely(thread.probability))
          .map(
            (t) =>
              `  ${percent(t.probability)}  ${t.system ? t.designation : 'none of the listed threads'}`,
          ),
        ...connections
          .filter((connection) => likely(connection.probability))
          .map((c) => `  ${percent(c.probability)}  ${connectionWords(c)}`),
      ];
  const { connection, missing, thread } = decision;
  return `${[
    ...lines,
    `  → ${decisionText(decision)}`,
    ...(nearest ? [`    ${nearestText(nearest)}`] : []),
    ...(missing ? [`    nothing at hand would settle it; ${missing.reading} would`] : []),
    ...(hand === 'left' ? ['    LEFT-HAND thread: no ordinary part of this size fits.'] : []),
    ...(connection ? connectionLines(connection, thread) : []),
  ].join('\n')}\n`;
}

function nearestText({ thread, end, offMm }: NonNullable<Conclusion['nearest']>): string {
  const way = offMm > 0 ? 'large' : 'small';
  return `nothing fits; the nearest is ${thread}, ${Math.abs(offMm).toFixed(1)} mm too ${way} for a ${end}`;
}

/** 'ISO 1179, size 1/2, male, stud, form E' */
function connectionWords({ family, size, end, endTypes, form }: ConnectionEnd): string {
  const made = endTypes.map((type) => type.replace('-', ' ')).join(' or ');
  return [family, `size ${size}`, end, made, form && `form ${form}`].filter(Boolean).join(', ');
}

const alsoUsedWords: Readonly<Record<AlsoUsed, string>> = {
  banjo: 'banjo bolts (a cross bore, a washer on either side of the eye)',
  'universal-nose': 'hose ends with a universal nose, for the 24° and the 60° cone',
  'jis-cone-60': 'male ends of JIS B 8363 with a hollow 60° seat',
};

/** What the standards and common practice hold of a settled connection, and what merely screws on. */
function connectionLines(connection: ConnectionEnd, thread: string | null): string[] {
  const rows = rowsOf(connection, thread);
  const never = rows.map(neverJoin);
  const called = [...new Set(rows.flatMap((row) => aliasesOf(row)))];
  const also = [
    ...new Set(rows.flatMap((row) => (row.thread ? alsoUsed(row.thread, row.end) : []))),
  ];
  const same = [...new Set(never.flatMap((n) => n.sameThread))];
  const near = [...new Set(never.flatMap((n) => n.nearThreads))];
  return [
    ...(called.length > 0 ? [`    Also called ${called.join(', ')}.`] : []),
    ...notesOn(connection).map((note) => `    ${note.en}`),
    ...(same.length > 0 ? [`    Screws on, and must not be joined: ${same.join(', ')}.`] : []),
    ...(near.length > 0 ? [`    Starts to screw on, and must not: ${near.join(', ')}.`] : []),
    ...also.map((use) => `    The same thread: ${alsoUsedWords[use]}.`),
  ];
}

function decisionText({ state, thread, connection, ask }: Conclusion['decision']): string {
  const settled = [
    ...(thread ? [thread] : []),
    ...(connection ? [connectionWords(connection)] : []),
  ].join(', ');
  if (state === 'unlisted') return 'measured, but no listed thread is like this';
  if (state === 'settled') return `settled: ${settled}. Confirm with a gauge before pressurising.`;
  const known = settled ? `${settled} is certain; ` : '';
  return ask ? `${known}still needed: ${ask.reading}. ${ask.why}` : `${known}still open`;
}
