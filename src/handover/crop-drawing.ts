import type { DrawnSeat, PhotoPoint } from '../journey/overlay';

/** The thread cut out of its photo and turned level, dimensioned as on a drawing (ISO 129-1: dimension lines outside
 *  the part, extension lines, arrows).
 *  Frame: drawing units, x right, y down; the same on the screen, the shared picture and paper. */
export interface ThreadCrop {
  readonly width: number;
  readonly height: number;
  /** Photo px → drawing: x' = a·x + c·y + e, y' = b·x + d·y + f, as SVG and canvas take it. */
  readonly matrix: readonly [a: number, b: number, c: number, d: number, e: number, f: number];
  readonly lines: readonly (readonly [from: PhotoPoint, to: PhotoPoint])[];
  /** Tips of arrows, and the direction they point to. */
  readonly arrows: readonly { readonly at: PhotoPoint; readonly towards: PhotoPoint }[];
  readonly plates: readonly {
    readonly of: 'diameter' | 'pitch';
    readonly at: PhotoPoint;
    readonly anchor: 'start' | 'middle';
  }[];
  /** What the photo shows of the seat, with its name in a corner and a line from that to it. */
  readonly features: readonly CropFeature[];
}

export interface CropFeature {
  readonly seat: DrawnSeat;
  readonly lines: readonly (readonly PhotoPoint[])[];
  readonly leader: readonly [from: PhotoPoint, to: PhotoPoint];
  readonly plate: { readonly at: PhotoPoint; readonly anchor: 'start' | 'end' };
}

/** Left edge of a plate of this width, within the drawing. */
export function plateFrom(
  { at: [x], anchor }: { readonly at: PhotoPoint; readonly anchor: 'start' | 'middle' | 'end' },
  width: number,
  crop: ThreadCrop,
): number {
  const before = { start: 0, middle: 0.5, end: 1 }[anchor];
  return Math.min(crop.width - width, Math.max(0, x - before * width));
}

export const cropSize = { width: 360, height: 190 };

/** Corners of an arrow head of this length. */
export function arrowHead(
  { at: [x, y], towards: [dx, dy] }: ThreadCrop['arrows'][number],
  size = 8,
): readonly [PhotoPoint, PhotoPoint, PhotoPoint] {
  const half = size * 0.28;
  const [bx, by] = [x - dx * size, y - dy * size];
  return [
    [x, y],
    [bx - dy * half, by + dx * half],
    [bx + dy * half, by - dx * half],
  ];
}

/** The photo's part of the crop, `pxPerUnit` pixels for each unit of the drawing. Browser only. */
export function paintCrop(
  bitmap: ImageBitmap,
  crop: ThreadCrop,
  pxPerUnit: number,
): OffscreenCanvas | null {
  const canvas = new OffscreenCanvas(
    Math.round(crop.width * pxPerUnit),
    Math.round(crop.height * pxPerUnit),
  );
  const context = canvas.getContext('2d');
  if (!context) return null;
  const [a, b, c, d, e, f] = crop.matrix.map((value) => value * pxPerUnit);
  context.fillStyle = '#fff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.setTransform(a, b, c, d, e, f);
  context.imageSmoothingQuality = 'high';
  // Pixel centres at integers.
  context.drawImage(bitmap, -0.5, -0.5);
  return canvas;
}
