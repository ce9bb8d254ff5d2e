import type { Block } from '../../handover/pdf-flow';
import type { ResultPage } from '../../handover/result-pdf';
import { tubesOf } from '../../standards/connections/tubes';
import { readingText } from '../identification/reading-text';
import { loadTables } from '../identification/table-rows';
import { dateTime, number, percent, plusMinus } from '../language/format';
import { t } from '../language/language';
import { tradeName } from '../language/trade-names';
import { wearBlocks } from '../wear/wear-print';
import { nameOf, type SheetWithPhotos, stateOf } from '../work/open-sheet';
import { oRingPlace } from './assembly';
import { cautionOrder } from './Cautions';
import { elastomers } from './elastomers';
import { endWarnings, endWords, oRingText, threadName } from './end-words';
import { settledEnd } from './settled-end';

const heading = (text: string): Block => ({ kind: 'heading', text });
const row = (label: string, value: string): Block => ({ kind: 'row', label, value });
const text = (words: string): Block => ({ kind: 'text', text: words });

/** The result screen as one printed page, in the language of the screen. */
export async function resultPage({ sheet, photos }: SheetWithPhotos): Promise<ResultPage> {
  const tables = await loadTables();
  const { decision, connections, end } = sheet.conclusion;
  const settled = settledEnd(sheet, tables);
  const connection = settled?.row ?? null;
  const kind = settled?.kind ?? null;
  const words = t().result;
  const m = sheet.measurement;
  const shot = sheet.shots[0];
  const photo = photos[0];

  const left: Block[] = [
    heading(words.family),
    row(
      words.thread,
      decision.thread ? threadName(decision.thread, decision.hand) : t().identification.open,
    ),
    ...endWarnings(decision, connection).map(text),
  ];
  if (connection && decision.connection) {
    left.push(row(words.family, `${connection.family} ${connection.size}`));
    left.push(row(t().assembly.endRow, endWords(decision.connection)));
    if (connection.dash) left.push(row(words.dash, `-${connection.dash}`));
    const tube = tubesOf(connection)[0] ?? connection.hoseBoreMm;
    if (tube) left.push(row(words.tube, `${number(tube, 2)} mm, ${number(tube / 25.4, 3)} in`));
    left.push(row(words.seal, kind ? t().assembly.sealings[kind] : t().assembly.formOpen));
    if (connection.oRing) {
      const { designation, innerDiameterMm, sectionMm, hardnessShoreA } = connection.oRing;
      left.push(
        row(
          words.oRing,
          `${designation}, ${number(innerDiameterMm, 2)} x ${number(sectionMm, 2)} mm`,
        ),
      );
      if (oRingPlace(connection) === 'in-mating') left.push(text(t().assembly.inMating));
      if (hardnessShoreA) left.push(row(words.hardness, words.shore(String(hardnessShoreA))));
    } else left.push(row(words.oRing, oRingText(connection, kind)));
    if (kind) left.push(row(words.mating, t().assembly.mates[kind][connection.end]));
    const never = tables.neverWith(connection);
    if (never.length > 0) left.push(row(words.neverWith, never.join(', ')));
    const alike = connection.thread ? tables.passesFor(connection.thread) : [];
    if (alike.length > 0) left.push(row(t().assembly.lookAlikes, alike.join(', ')));
    left.push(row(words.source, connection.source));
  } else {
    for (const one of connections.slice(0, 4))
      left.push(row(`${one.family} ${one.size}`, percent(one.probability)));
  }

  const right: Block[] = [];
  if (kind)
    right.push(
      heading(words.assembly),
      { kind: 'list', items: [...t().assembly.steps[kind]], numbered: true },
      text(words.assemblyNote),
    );
  if (connection?.sealing === 'o-ring' || connection?.sealing === 'face-ring') {
    right.push(heading(words.elastomers));
    for (const one of elastomers)
      right.push(
        row(
          words.fluids[one.fluid],
          `${one.suits.join(', ')} (${words.avoid}: ${one.avoid.join(', ')})`,
        ),
      );
    right.push(text(words.elastomersNote));
  }
  right.push(...wearBlocks(sheet));
  const { counter } = sheet;
  if (counter) {
    right.push(heading(words.counter));
    right.push(
      row(
        t().sheet.state,
        counter.verdict === 'open' ? words.verdict.none : words.verdict[counter.verdict],
      ),
    );
    if (counter.parts.length > 0)
      right.push(text(counter.parts.map((part) => part.number).join(', ')));
    if (counter.remarks) right.push(text(counter.remarks));
  }

  const beside: Block[] = [heading(words.numbers)];
  if (m)
    beside.push(
      row(t().inspection.pitch, plusMinus(m.pitchMm, 'mm')),
      row(t().inspection.major, plusMinus(m.majorDiameterMm, 'mm')),
      text(t().inspection.numbersNote),
    );
  else beside.push(text(t().sheet.noPhoto));
  if (sheet.readings.length > 0)
    beside.push(heading(words.readings), {
      kind: 'list',
      items: sheet.readings.map((reading) => readingText(reading, end)),
      numbered: false,
    });

  if (sheet.remarks) beside.push(text(sheet.remarks));

  return {
    paper: /-(US|CA|MX)\b/.test(navigator.language) ? 'letter' : 'a4',
    heading: sheet.title || (nameOf(sheet) ?? t().drawer.untitled),
    subheading:
      decision.state === 'settled'
        ? connection
          ? tradeName(connection.tradeName)
          : ''
        : words.notSettled,
    photo:
      shot && photo
        ? { jpeg: photo, orientation: shot.photo.orientation, overlay: shot.overlay }
        : null,
    beside,
    left,
    right,
    cautions: { title: words.cautions, items: cautionOrder.map((key) => words.caution[key]) },
    titleBlock: [
      { label: t().sheet.number, value: sheet.id.slice(0, 8) },
      { label: t().sheet.date, value: dateTime(sheet.createdAt) },
      {
        label: t().sheet.reference,
        value: shot ? t().sheet[shot.reference.kind] : t().sheet.readings,
      },
      { label: t().sheet.state, value: t().sheet.states[stateOf(sheet)] },
    ],
  };
}
