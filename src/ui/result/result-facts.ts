import type { ConnectionEnd } from '../../journey/6-candidates/candidate';
import type { Reading } from '../../journey/6-candidates/reading';
import { shownSeats } from '../../journey/6-candidates/reading-likelihood';
import type { Sheet } from '../../journey/8-sheet/sheet-schema';
import { whatHolds } from '../../journey/8-sheet/what-holds';
import type { Connection, ORing } from '../../standards/connections/connection';
import { hasSeat, takesTube } from '../../standards/connections/connection';
import type { Thread } from '../../standards/thread';
import { endWords, orderLine } from '../identification/connection-words';
import { seatText } from '../identification/reading-text';
import type { Tables } from '../identification/table-rows';
import { bothUnits, number } from '../language/format';
import { t } from '../language/language';
import { tradeName } from '../language/trade-names';
import { type AssemblyKind, alwaysOf, assemblyKinds, hasElastomer } from './assembly';

export interface Fact {
  readonly name: string;
  readonly lines: readonly string[];
}

/** What the result says of a settled connection, in the reader's language; screen and print
 *  show the same. What its possible rows do not share is told form by form, or left out. */
export interface ResultFacts {
  readonly connection: ConnectionEnd;
  /** The rows that it may still be; the first stands for all in a drawing. */
  readonly rows: readonly Connection[];
  readonly thread: Thread | null;
  /** 'female, swivel nut': part of every headline. */
  readonly end: string;
  readonly facts: readonly Fact[];
  readonly assembly: readonly {
    readonly heading: string | null;
    readonly method: string;
    readonly steps: readonly string[];
  }[];
  readonly always: readonly string[];
  readonly hasElastomer: boolean;
}

export function resultFacts(sheet: Sheet, tables: Tables): ResultFacts | null {
  const { hand } = sheet.conclusion;
  const decision = whatHolds(sheet);
  const { connection } = decision;
  if (!connection) return null;
  const rows = asSeen(tables.rows(connection, decision.thread), sheet.readings);
  const row = rows[0];
  if (!row) return null;
  const name = decision.thread ?? row.thread;
  const thread = name ? tables.thread(name) : null;
  const { trade, result } = t();
  const kinds = [...new Set(rows.flatMap((one) => assemblyKinds(one, connection.endTypes)))];
  const byForm = (tell: (one: Connection) => string) => perForm(rows, tell);
  const ends = endWords(connection);
  const facts: Fact[] = [
    {
      name: result.family,
      lines: [`${connection.family} ${connection.size}`, ends, tradeName(row.tradeName)],
    },
    fact(trade.alsoCalled, [
      tables
        .aliases(row)
        .filter((name) => name !== tradeName(row.tradeName))
        .join(', '),
    ]),
    fact(trade.orderLine, [
      ...rows.map((one) =>
        orderLine(
          { ...connection, form: one.form ?? connection.form },
          one,
          thread,
          hand === 'left',
        ),
      ),
      row.endTypes.includes('stud') ? trade.toAdd.stud : trade.toAdd.other,
    ]),
    fact(result.dash, [row.dash === null ? '' : `−${row.dash}`]),
    fact(result.tube, [tubeText(row)]),
    fact(
      result.seat,
      byForm((one) => (hasSeat(one) ? seatText(one.seat, one.end) : '—')),
    ),
    fact(
      result.seal,
      byForm((one) => kindWords(one, connection, (kind) => trade.sealings[kind])),
    ),
    fact(
      result.oRing,
      byForm((one) => ringText(one)),
    ),
    fact(
      result.mating,
      byForm((one) => kindWords(one, connection, (kind) => trade.mates[kind][one.end])),
    ),
    fact(trade.pressure.title, [trade.pressure.none]),
    fact(trade.never.title, neverLines(rows, tables, hand)),
    fact(
      trade.also,
      tables.alsoUsed(row).map((key) => trade.alsoUsed[key]),
    ),
    fact(trade.notes, noteLines(row, tables)),
    fact(result.source, [[...new Set(rows.map((one) => shortSource(one.source)))].join(', ')]),
  ].filter(({ lines }) => lines.length > 0);
  const ringed = rows.some(hasElastomer);
  return {
    connection,
    rows,
    thread,
    end: ends,
    facts,
    assembly: kinds.map((kind) => ({
      heading: kinds.length > 1 ? headingOf(kind) : null,
      method: trade.methods[kind],
      steps: trade.steps[kind],
    })),
    always: alwaysOf(kinds, ringed).map((key) => trade.always[key]),
    hasElastomer: ringed,
  };
}

/** Forms of one end that seal differently are told apart by a look. */
function asSeen(rows: readonly Connection[], readings: readonly Reading[]): readonly Connection[] {
  const looks = readings.flatMap((reading) => (reading.kind === 'seat' ? [reading.seat] : []));
  const kept = rows.filter((row) =>
    looks.every((look) => shownSeats(row).some(([seat]) => seat === look)),
  );
  return kept.length > 0 ? kept : rows;
}

function fact(name: string, lines: readonly string[]): Fact {
  return { name, lines: [...new Set(lines)].filter((line) => line !== '') };
}

function headingOf(kind: AssemblyKind): string {
  const known: Readonly<Record<string, string>> = t().trade.assemblyOf;
  const heading = known[kind] ?? t().trade.sealings[kind];
  return heading[0]!.toUpperCase() + heading.slice(1);
}

/** One line where all forms say the same, else a line for each. */
function perForm(rows: readonly Connection[], tell: (row: Connection) => string): string[] {
  const told = rows.map((row) => ({ row, text: tell(row) }));
  if (new Set(told.map(({ text }) => text)).size === 1) return [told[0]!.text];
  return told.map(({ row, text }) => (row.form ? `${row.form}: ${text}` : text));
}

function kindWords(
  row: Connection,
  { endTypes }: ConnectionEnd,
  words: (kind: AssemblyKind) => string,
): string {
  return [...new Set(assemblyKinds(row, endTypes).map(words))].join('; ');
}

function tubeText(row: Connection): string {
  if (!takesTube(row)) return '';
  const mm = row.tubeOdMm ?? row.hoseBoreMm;
  if (mm === null) return '';
  const metric = row.metricTubesMm.filter((one) => one !== row.tubeOdMm);
  const also = metric.length > 0 ? ` (${metric.join(', ')} mm)` : '';
  return `${bothUnits(mm, row.dash !== null)}${also}`;
}

function ringText(row: Connection): string {
  const { trade, result } = t();
  if (!row.oRing) return row.sealing === 'o-ring' ? '—' : result.noORing;
  const text = ringWords(row.oRing);
  const captive = row.family === 'ISO 8434-3' ? ` ${trade.captive}` : '';
  if (row.oRingOn === 'this-end') return `${text}${captive ? `.${captive}` : ''}`;
  return row.endTypes.includes('port') ? trade.inTheStud(text) : trade.inTheMate(text);
}

function ringWords({ designation, innerDiameterMm, sectionMm, hardnessShoreA }: ORing): string {
  const size = `${number(innerDiameterMm, 2)} × ${number(sectionMm, 2)} mm`;
  const hard = hardnessShoreA === null ? '' : ` · ${t().result.shore(String(hardnessShoreA))}`;
  return `${designation} · ${size}${hard}`;
}

/** The English stands in the tables; a language without a sentence shows that. */
function noteLines(row: Connection, tables: Tables): string[] {
  const words = t().trade.familyNotes;
  return tables.notes(row).map(({ key, en }) => words[key.replace('family.', '')] ?? en);
}

const mostNames = 8;

function neverLines(
  rows: readonly Connection[],
  tables: Tables,
  hand: Sheet['conclusion']['hand'],
): string[] {
  const { never, leftHandWarning, dryseal } = t().trade;
  const all = rows.map(tables.neverJoin);
  const same = [...new Set(all.flatMap((one) => one.sameThread))].map(tables.called);
  const near = [...new Set(all.flatMap((one) => one.nearThreads))];
  const rules = [...new Set(all.flatMap((one) => one.rules))];
  const listed = (names: readonly string[]) =>
    names.length > mostNames ? `${names.slice(0, mostNames).join(', ')} …` : names.join(', ');
  const isNpt = rows.some((row) => row.family === 'ASME B1.20.1' && row.sealing === 'thread');
  return [
    ...(hand === 'left' ? [leftHandWarning] : []),
    ...(same.length > 0 ? [never['same-thread'](listed(same))] : []),
    ...(near.length > 0 ? [never['near-thread'](listed(near))] : []),
    ...rules.map((rule) => never[rule]),
    ...(isNpt ? [dryseal] : []),
  ];
}

/** The standard alone: how well we know it belongs to the tables, not on a customer's sheet. */
function shortSource(source: string): string {
  return source
    .replace(/\s*\([^)]*(memory|practice)[^)]*\)/g, '')
    .split(/;\s*(?=[^;]*(practice|formulas|from memory))/)[0]!
    .split(';')[0]!
    .trim();
}
