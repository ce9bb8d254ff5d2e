import type { Block } from '../../handover/pdf-flow';
import type { ResultPage } from '../../handover/result-pdf';
import { connectionTitle } from '../identification/connection-words';
import { readingText } from '../identification/reading-text';
import { loadTables } from '../identification/table-rows';
import { dateTime, percent, plusMinusBoth } from '../language/format';
import { t } from '../language/language';
import { wearBlocks } from '../wear/wear-print';
import { nameOf, type SheetWithPhotos, stateOf } from '../work/open-sheet';
import { cautionOrder } from './Cautions';
import { elastomers } from './elastomers';
import { resultFacts } from './result-facts';
import { temperatureText } from './temperature-text';

const heading = (text: string): Block => ({ kind: 'heading', text });
const row = (label: string, value: string): Block => ({ kind: 'row', label, value });
const text = (words: string): Block => ({ kind: 'text', text: words });

/** The result screen as one printed page, in the language of the screen. */
export async function resultPage({ sheet, photos }: SheetWithPhotos): Promise<ResultPage> {
  const tables = await loadTables();
  const { decision, connections, end, hand } = sheet.conclusion;
  const facts = resultFacts(sheet, tables);
  const inchFirst = facts?.thread?.system === 'UN' || facts?.thread?.system === 'NPT';
  const words = t().result;
  const m = sheet.measurement;
  const shot = sheet.shots[0];
  const photo = photos[0];

  const left: Block[] = [
    heading(words.family),
    row(words.thread, decision.thread ?? t().identification.open),
  ];
  if (facts) {
    for (const { name, lines } of facts.facts) left.push(row(name, lines.join(' · ')));
  } else {
    for (const one of connections.slice(0, 4))
      left.push(row(connectionTitle(one), percent(one.probability)));
  }

  const right: Block[] = [];
  for (const { heading: title, method, steps } of facts?.assembly ?? [])
    right.push(
      heading(title ? `${words.assembly}: ${title}` : words.assembly),
      { kind: 'list', items: steps, numbered: true },
      text(method),
    );
  if (facts)
    right.push({ kind: 'list', items: facts.always, numbered: false }, text(words.assemblyNote));
  if (facts?.hasElastomer) {
    right.push(heading(words.elastomers));
    for (const one of elastomers)
      right.push(
        row(
          t().trade.fluids[one.fluid],
          `${one.suits.join(', ')} (${words.avoid}: ${one.avoid.join(', ')})`,
        ),
      );
    right.push(
      row(t().trade.temperature, temperatureText()),
      text(`${t().trade.epdm} ${words.elastomersNote}`),
    );
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
      row(t().inspection.pitch, plusMinusBoth(m.pitchMm, inchFirst)),
      row(t().inspection.major, plusMinusBoth(m.majorDiameterMm, inchFirst)),
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
    subheading: [
      decision.state === 'settled' ? '' : words.notSettled,
      hand === 'left' ? t().trade.leftHand : '',
      facts ? `${facts.connection.family} ${facts.connection.size}, ${facts.end}` : '',
    ]
      .filter(Boolean)
      .join(' · '),
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
