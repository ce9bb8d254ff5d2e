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
  const marker = markerNear.get(placeKey(xMm, yMm));
  if (!marker) return false;
  const [dx, dy] = [xMm - marker.xMm, yMm - marker.yMm];
  if (Math.abs(dx) >= half || Math.abs(dy) >= half) return false;
  const cell = (offset: number) =>
    Math.min(modulesPerSide - 1, Math.floor((offset + half) / card.moduleMm));
  return isBlack(marker.id, cell(dy), cell(dx));
}

/** Markers stand 16 mm apart, the first at (12, 12): each has a cell of its own. */
const placeKey = (xMm: number, yMm: number) =>
  100 * Math.round((yMm - 12) / 16) + Math.round((xMm - 12) / 16);
const markerNear = new Map(markers.map((marker) => [placeKey(marker.xMm, marker.yMm), marker]));

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

/** Something that is no card at all: a table of dark and light boards. */
export function noCard(width: number, height: number): GreyImage {
  return sampled(
    width,
    height,
    (x, y) =>
      ((Math.floor(x / 97) + Math.floor((x + 3 * y) / 131)) % 2 === 0 ? 70 : 170) +
      30 * Math.sin((x + 2 * y) / 211),
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

/** Side by side, the second under the first's height. */
export function besides(first: GreyImage, second: GreyImage): GreyImage {
  const width = first.width + second.width;
  const height = Math.max(first.height, second.height);
  const data = new Uint8Array(width * height).fill(110);
  for (let y = 0; y < first.height; y++) {
    data.set(first.data.subarray(y * first.width, (y + 1) * first.width), y * width);
  }
  for (let y = 0; y < second.height; y++) {
    const row = second.data.subarray(y * second.width, (y + 1) * second.width);
    data.set(row, y * width + first.width);
  }
  return { width, height, data };
}

/** Markers of the same dictionary in another order and place than the card's: a plain grid. */
export function foreignMarkers(width: number, height: number): GreyImage {
  const sidePx = 90;
  const stepPx = 130;
  return sampled(width, height, (x, y) => {
    const id = Math.abs(Math.floor(x / stepPx) * 7 + Math.floor(y / stepPx) * 5) % markers.length;
    const [u, v] = [x % stepPx, y % stepPx];
    if (u >= sidePx || v >= sidePx || u < 0 || v < 0) return 225;
    const cell = (offset: number) => Math.floor((offset * modulesPerSide) / sidePx);
    return isBlack(id, cell(v), cell(u)) ? 30 : 225;
  });
}

/** As photographed from a screen: its lines beat with the camera's pixels. */
export function fromScreen({ width, height, data }: GreyImage): GreyImage {
  const striped = data.map((value, i) => {
    const [x, y] = [i % width, Math.floor(i / width)];
    return value * (0.85 + 0.1 * Math.sin(x / 1.7 + y / 90) + 0.05 * Math.sin(y / 2.3));
  });
  return { width, height, data: striped };
}

/** Copies a rectangle of the image to another place in it. */
export function withCopy(
  image: GreyImage,
  from: { x: number; y: number; width: number; height: number },
  to: { x: number; y: number },
): GreyImage {
  const data = image.data.slice();
  for (let y = 0; y < from.height; y++) {
    const start = (from.y + y) * image.width + from.x;
    const row = image.data.subarray(start, start + from.width);
    data.set(row, (to.y + y) * image.width + to.x);
  }
  return { ...image, data };
}
