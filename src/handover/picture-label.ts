import type { Stamp } from '../journey/8-sheet/what-holds';
import type { DrawnSeat, EndFeature, PhotoPoint } from '../journey/overlay';
import { arrowHead, plateFrom, type ThreadCrop } from './crop-drawing';

/** What the margin of a shared picture says, in the sender's language. */
export interface PictureLabel {
  readonly stamp: { readonly kind: Stamp; readonly word: string };
  readonly heading: string;
  /** Most important first; what finds no room is cut off from the end of `more`. */
  readonly lines: readonly string[];
  /** Remarks, readings, answer. */
  readonly more: readonly string[];
  /** Date, number, and where the picture is opened. */
  readonly foot: readonly string[];
  readonly dimensions: { readonly diameter: string; readonly pitch: string } | null;
  /** What is drawn of a seat, and its name. */
  readonly seats?: {
    readonly features: readonly EndFeature[];
    readonly nameOf: (seat: DrawnSeat) => string;
  };
}

interface Box {
  readonly xPx: number;
  readonly yPx: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

type Context = OffscreenCanvasRenderingContext2D;
const font = (px: number, weight: number) => `${weight} ${px}px system-ui, sans-serif`;
const leading = 1.3;

export function drawLabel(
  context: Context,
  box: Box,
  label: PictureLabel,
  cropped: { readonly crop: ThreadCrop; readonly image: OffscreenCanvas } | null,
): void {
  if (box.widthPx < 40 || box.heightPx < 40) return;
  context.save();
  context.textBaseline = 'top';
  context.fillStyle = '#000';
  const wide = box.widthPx > 1.5 * box.heightPx;
  const gap = box.heightPx * 0.04;
  const sideWidth = wide ? Math.min(box.widthPx * 0.42, box.heightPx * 1.1) : 0;
  const stampPx = box.heightPx * 0.075;
  const stampWidth = drawStamp(context, label.stamp, box, stampPx);
  if (wide && cropped) {
    const scale = sideWidth / cropped.crop.width;
    const at = [box.xPx + box.widthPx - sideWidth, box.yPx + 2.4 * stampPx] as const;
    drawCrop(context, at, scale, cropped, label);
  }
  drawText(context, box, label, {
    widthPx: box.widthPx - (wide ? sideWidth + gap : 0),
    headingPx: wide ? box.widthPx - sideWidth - gap : box.widthPx - stampWidth - gap,
  });
  context.restore();
}

function drawText(
  context: Context,
  box: Box,
  label: PictureLabel,
  room: { widthPx: number; headingPx: number },
): void {
  const rows = (unitPx: number) => {
    const set = (texts: readonly string[], px: number, weight: number, widthPx = room.widthPx) =>
      texts.flatMap((text) => {
        context.font = font(px, weight);
        return wrapped(context, text, widthPx).map((line) => ({ line, px, weight }));
      });
    return {
      head: [
        ...set([label.heading], unitPx * 1.35, 650, Math.min(room.headingPx, room.widthPx)),
        ...set(label.lines, unitPx, 500),
      ],
      more: set(label.more, unitPx * 0.9, 400),
      foot: set(label.foot, unitPx * 0.8, 400),
    };
  };
  const tall = (list: readonly { px: number }[]) =>
    list.reduce((sum, { px }) => sum + px * leading, 0);
  const least = box.heightPx / 26;
  let unitPx = box.heightPx / 13;
  let laid = rows(unitPx);
  while (unitPx > least && tall([...laid.head, ...laid.more, ...laid.foot]) > box.heightPx) {
    unitPx *= 0.94;
    laid = rows(unitPx);
  }
  const more = [...laid.more];
  while (more.length > 0 && tall([...laid.head, ...more, ...laid.foot]) > box.heightPx) more.pop();
  if (more.length < laid.more.length && more.length > 0) {
    const last = more[more.length - 1];
    more[more.length - 1] = { ...last, line: `${last.line.slice(0, -2)} …` };
  }
  let y = box.yPx;
  const write = ({ line, px, weight }: { line: string; px: number; weight: number }) => {
    context.font = font(px, weight);
    context.fillText(line, box.xPx, y);
    y += px * leading;
  };
  for (const row of [...laid.head, ...more]) write(row);
  y = Math.max(y, box.yPx + box.heightPx - tall(laid.foot));
  context.fillStyle = '#333';
  for (const row of laid.foot) write(row);
}

/** A number stays beside its unit, and a sign beside what it stands for. */
const apart = /(?<![±⌀=])\s+(?!(?:mm|in|tpi)\b)/;

/** Lines that fit; a word wider than the room is broken. */
function wrapped(context: Context, text: string, widthPx: number): string[] {
  const fits = (line: string) => context.measureText(line).width <= widthPx;
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(apart).flatMap((one) => broken(one, fits))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  return line === '' ? lines : [...lines, line];
}

function broken(word: string, fits: (line: string) => boolean): string[] {
  const parts: string[] = [];
  let rest = word;
  while (rest.length > 1 && !fits(rest)) {
    let n = rest.length - 1;
    while (n > 1 && !fits(rest.slice(0, n))) n--;
    parts.push(rest.slice(0, n));
    rest = rest.slice(n);
  }
  return [...parts, rest];
}

/** Each state has its own frame and sign, so that it is told apart in grey too: dashed with a
 *  question mark, double frame, filled with a tick, filled with a cross. Gives back its width. */
function drawStamp(context: Context, stamp: PictureLabel['stamp'], box: Box, px: number): number {
  const colour = { open: '#54595e', settled: '#17613a', confirmed: '#17613a', rejected: '#a3201a' };
  const sign = { open: '?', settled: '', confirmed: '✓', rejected: '✕' }[stamp.kind];
  const filled = stamp.kind === 'confirmed' || stamp.kind === 'rejected';
  context.font = font(px, 700);
  const text = sign ? `${sign} ${stamp.word}` : stamp.word;
  const pad = px * 0.6;
  const widthPx = context.measureText(text).width + 2 * pad;
  const heightPx = px * 1.9;
  const x = box.xPx + box.widthPx - widthPx;
  const y = box.yPx;
  context.save();
  context.fillStyle = colour[stamp.kind];
  context.strokeStyle = colour[stamp.kind];
  context.lineWidth = Math.max(2, px * 0.09);
  if (filled) context.fillRect(x, y, widthPx, heightPx);
  else {
    if (stamp.kind === 'open') context.setLineDash([px * 0.35, px * 0.25]);
    context.strokeRect(x + 2, y + 2, widthPx - 4, heightPx - 4);
    if (stamp.kind === 'settled') {
      const inset = 2 + px * 0.22;
      context.strokeRect(x + inset, y + inset, widthPx - 2 * inset, heightPx - 2 * inset);
    }
  }
  if (filled) context.fillStyle = '#fff';
  context.textBaseline = 'middle';
  context.fillText(text, x + pad, y + heightPx * 0.53);
  context.restore();
  return widthPx;
}

function drawCrop(
  context: Context,
  [x, y]: readonly [number, number],
  scale: number,
  { crop, image }: { readonly crop: ThreadCrop; readonly image: OffscreenCanvas },
  { dimensions, seats: named }: PictureLabel,
): void {
  context.save();
  context.translate(x, y);
  context.scale(scale, scale);
  context.drawImage(image, 0, 0, crop.width, crop.height);
  const seats = crop.features.flatMap(({ lines }) => lines);
  const leaders = crop.features.map(({ leader }) => leader);
  trace(context, [...crop.lines, ...leaders], '#ffffffcc', 3.6);
  trace(context, seats, '#ffffffcc', 5);
  trace(context, [...crop.lines, ...leaders], '#000', 1.3);
  trace(context, seats, '#000', 2.4);
  context.fillStyle = '#000';
  for (const arrow of crop.arrows) {
    context.beginPath();
    for (const point of arrowHead(arrow)) context.lineTo(...point);
    context.fill();
  }
  context.font = font(14, 600);
  context.textBaseline = 'middle';
  const plates = [
    ...(dimensions ? crop.plates.map((plate) => ({ plate, text: dimensions[plate.of] })) : []),
    ...(named ? crop.features.map(({ plate, seat }) => ({ plate, text: named.nameOf(seat) })) : []),
  ];
  for (const { plate, text } of plates) {
    const width = context.measureText(text).width + 8;
    const from = plateFrom(plate, width, crop);
    context.fillStyle = '#fff';
    context.fillRect(from, plate.at[1] - 10, width, 20);
    context.fillStyle = '#000';
    context.fillText(text, from + 4, plate.at[1] + 1);
  }
  context.strokeStyle = '#777';
  context.lineWidth = 1;
  context.strokeRect(0, 0, crop.width, crop.height);
  context.restore();
}

function trace(
  context: Context,
  lines: readonly (readonly PhotoPoint[])[],
  colour: string,
  width: number,
): void {
  context.strokeStyle = colour;
  context.lineWidth = width;
  context.beginPath();
  for (const [from, ...rest] of lines) {
    context.moveTo(...from);
    for (const at of rest) context.lineTo(...at);
  }
  context.stroke();
}
