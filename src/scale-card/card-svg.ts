import { type Area, type CardWords, cardAreas, cardLine } from './card-drawing';
import { card, type Field } from './geometry';

/** The card as a standalone SVG of 184 mm × 136 mm; user units are card mm. */
export function cardSvg(field: Field, words: CardWords): string {
  const { widthMm, heightMm } = card;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${widthMm}mm" height="${heightMm}mm" viewBox="0 0 ${widthMm} ${heightMm}">`,
    `<path fill="#fff" d="M0 0H${widthMm}V${heightMm}H0Z"/>`,
    ...cardAreas(field).map((area) => `<path fill-rule="evenodd" d="${pathData(area)}"/>`),
    `<text x="${cardLine.xMm}" y="${cardLine.baselineMm}" font-family="Helvetica, Arial, sans-serif" font-size="${cardLine.sizeMm}">${escapeXml(cardLine.text(field, words))}</text>`,
    '</svg>',
  ].join('\n');
}

function pathData(area: Area): string {
  return area
    .map((outline) => `M${outline.map(([x, y]) => `${round(x)} ${round(y)}`).join('L')}Z`)
    .join('');
}

const round = (mm: number) => Number(mm.toFixed(4));

const escapeXml = (text: string) => text.replace(/[&<>"']/g, (char) => `&#${char.codePointAt(0)};`);
