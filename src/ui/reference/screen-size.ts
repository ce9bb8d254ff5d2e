import { createSignal } from 'solid-js';
import * as z from 'zod/mini';
import { card } from '../../scale-card/geometry';
import type { CardCheck } from '../card/card-checks';
import { keepText, keptText } from '../widgets/kept-text';

/** ISO/IEC 7810, ID-1. */
export const id1Mm = { long: 85.6, short: 53.98, corner: 3.18 } as const;

/** CSS pixels per mm of screens: from a large one far zoomed out to a phone zoomed in. */
export const pxPerMmBounds = { least: 2, most: 12 } as const;

/** A frame set against a card by eye keeps to ±0.5 mm of 85.6 (common practice): 0.3 %. The picture lies 0.5 to
 *  1.5 mm under the glass (common practice), which is 0.3 % at usual distances. */
const uScale = Math.hypot(0.003, 0.003);

/** Smaller than this no thread has enough room. */
const leastShare = 0.4;

const key = 'crestwise.screen';
const kept = z.object({
  pxPerMm: z.number().check(z.minimum(pxPerMmBounds.least), z.maximum(pxPerMmBounds.most)),
  screen: z.string(),
});

/** Which screen it was set on: another one, or another zoom, has another size. */
export const thisScreen = (): string => {
  const [a, b] = [screen.width, screen.height].sort((p, q) => p - q);
  return `${a} × ${b} × ${Math.round(100 * devicePixelRatio) / 100}`;
};

function read(): number | null {
  try {
    const parsed = kept.safeParse(JSON.parse(keptText(key) ?? 'null'));
    return parsed.success && parsed.data.screen === thisScreen() ? parsed.data.pxPerMm : null;
  } catch {
    return null;
  }
}

const [size, setSize] = createSignal(read());
export const screenPxPerMm = size;

export function keepScreenSize(pxPerMm: number): void {
  setSize(pxPerMm);
  keepText(key, JSON.stringify({ pxPerMm, screen: thisScreen() }));
}

/** How large the card can be shown: 1 is its printed size, null too small to be of use. Turned where the room is
 *  taller than wide. */
export function shownShare(pxPerMm: number, room: { width: number; height: number }) {
  const turned = room.height > room.width;
  const [long, short] = turned ? [room.height, room.width] : [room.width, room.height];
  const share = Math.min(1, long / (card.widthMm * pxPerMm), short / (card.heightMm * pxPerMm));
  return share < leastShare ? null : { share, turned };
}

/** The card on the screen as one that was printed at another size. */
export function screenCheck(name: string, share: number): CardCheck {
  const horizontalMm = share * card.bars.horizontal.lengthMm;
  const verticalMm = share * card.bars.vertical.lengthMm;
  return { name, horizontalMm, verticalMm, uMm: uScale * Math.hypot(horizontalMm, verticalMm) };
}
