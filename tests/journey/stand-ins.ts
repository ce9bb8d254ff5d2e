import { isBlack, modulesPerSide } from '../../src/scale-card/dictionary';
import { card, type Field, markers } from '../../src/scale-card/geometry';
import type { GreyImage } from '../../src/vision/grey-image';

/** Images that must be refused, made from nothing or from a photo. Not photographs. */

/** The card alone, seen square-on from `pxPerMm`, on a grey table, nothing in its window. */
export function cardAlone(field: Field, pxPerMm: number): GreyImage {
  const marginMm = 15;
  const width = Math.round((card.widthMm + 2 * marginMm) * pxPerMm);
  const height = Math.round((card.heightMm + 2 * marginMm) * pxPerMm);
  const paint = (xMm: number, yMm: number): number => {
    if (xMm < 0 || yMm < 0 || xMm > card.widthMm || yMm > card.heightMm) return 110;
    const { window } = card;
    const inWindow =
      xMm > window.xMm &&
      yMm > window.yMm &&
      xMm < window.xMm + window.widthMm &&
      yMm < window.yMm + window.heightMm;
    if (inWindow) return field === 'dark' ? 25 : 225;
    return isMarkerBlack(xMm, yMm) ? 30 : 225;
  };
  return sampled(width, height, (x, y) => paint(x / pxPerMm - marginMm, y / pxPerMm - marginMm));
}

function isMarkerBlack(xMm: number, yMm: number): boolean {
  const half = card.markerSideMm / 2;
  const marker = markers.find((m) => Math.abs(xMm - m.xMm) < half && Math.abs(yMm - m.yMm) < half);
  if (!marker) return false;
  const cell = (offset: number) =>
    Math.min(modulesPerSide - 1, Math.floor((offset + half) / card.moduleMm));
  return isBlack(marker.id, cell(yMm - marker.yMm), cell(xMm - marker.xMm));
}

/** Box-filtered 3 × 3 and a little noise, as no camera is free of it. */
function sampled(
  width: number,
  height: number,
  paint: (x: number, y: number) => number,
): GreyImage {
  const data = new Uint8Array(width * height);
  const offsets = [-1 / 3, 0, 1 / 3];
  let noise = 1;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (const dy of offsets) for (const dx of offsets) sum += paint(x + dx, y + dy);
      noise = (Math.imul(noise, 1103515245) + 12345) & 0x7fffffff;
      data[y * width + x] = sum / 9 + ((noise >> 16) % 5) - 2;
    }
  }
  return { width, height, data };
}

/** Something that is no card at all: soft blobs of all sizes. */
export function noCard(width: number, height: number): GreyImage {
  return sampled(
    width,
    height,
    (x, y) => 128 + 50 * Math.sin(x / 37) * Math.cos(y / 53) + 40 * Math.sin((x + 2 * y) / 211),
  );
}

export function cropped(
  image: GreyImage,
  left: number,
  top: number,
  width: number,
  height: number,
): GreyImage {
  const data = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    const from = (top + y) * image.width + left;
    data.set(image.data.subarray(from, from + width), y * width);
  }
  return { width, height, data };
}

/** As shot through glass from behind. */
export function mirrored({ width, height, data }: GreyImage): GreyImage {
  const flipped = new Uint8Array(data.length);
  for (let i = 0; i < data.length; i++) {
    flipped[i] = data[i - (i % width) + width - 1 - (i % width)];
  }
  return { width, height, data: flipped };
}
