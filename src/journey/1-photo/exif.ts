import { type ByteReader, reader, textAt } from './bytes';
import type { Size } from './photo';

/** The facts we use; nothing else is read, and nothing is kept. Tags: CIPA DC-008 (EXIF 2.32). */
export interface ExifFacts {
  /** 1…8; 1 when absent or absurd. */
  readonly orientation: number;
  readonly f35Mm: number | null;
  /** As the camera wrote it: differs from the file's size when someone cropped or scaled it. */
  readonly pixelSize: Size | null;
  /** Bit 0 of Flash; false when absent. */
  readonly flashFired: boolean;
}

const tag = {
  orientation: 0x0112,
  exifDirectory: 0x8769,
  flash: 0x9209,
  pixelXDimension: 0xa002,
  pixelYDimension: 0xa003,
  focalLengthIn35mmFilm: 0xa405,
};

/** Phones reach from about 13 mm to 240 mm; 0 means unknown by the standard. */
const plausibleF35Mm = { from: 8, to: 400 };

/** Reads a TIFF structure. Anything broken, looping or out of range is as if it were absent. */
export function readExif(tiff: Uint8Array | null): ExifFacts {
  const nothing: ExifFacts = { orientation: 1, f35Mm: null, pixelSize: null, flashFired: false };
  if (tiff === null) return nothing;
  const byteOrder = textAt(tiff, 0, 2);
  if (byteOrder !== 'II' && byteOrder !== 'MM') return nothing;
  const from = reader(tiff, byteOrder === 'II' ? 'little' : 'big');
  if (from.u16(2) !== 42) return nothing;
  const main = readDirectory(from, from.u32(4));
  const details = readDirectory(from, main.get(tag.exifDirectory) ?? Number.NaN);
  const orientation = main.get(tag.orientation) ?? 1;
  const f35Mm = details.get(tag.focalLengthIn35mmFilm) ?? 0;
  const width = details.get(tag.pixelXDimension) ?? 0;
  const height = details.get(tag.pixelYDimension) ?? 0;
  return {
    orientation: orientation >= 1 && orientation <= 8 ? orientation : 1,
    f35Mm: f35Mm >= plausibleF35Mm.from && f35Mm <= plausibleF35Mm.to ? f35Mm : null,
    pixelSize: width > 0 && height > 0 ? { width, height } : null,
    flashFired: ((details.get(tag.flash) ?? 0) & 1) === 1,
  };
}

/** Single SHORT and LONG values by tag; TIFF 6.0, section 2. */
function readDirectory({ u16, u32 }: ByteReader, at: number): Map<number, number> {
  const values = new Map<number, number>();
  const count = u16(at);
  for (let i = 0; i < count; i++) {
    const entry = at + 2 + 12 * i;
    const type = u16(entry + 2);
    if (Number.isNaN(type)) break;
    if (u32(entry + 4) !== 1) continue;
    if (type === 3) values.set(u16(entry), u16(entry + 8));
    if (type === 4) values.set(u16(entry), u32(entry + 8));
  }
  return values;
}

/** Whether the file shows the whole frame the camera took, as far as one can tell from sizes:
 *  a scaled copy keeps the ratio of the sides, a crop seldom does. */
export function showsWholeFrame(file: Size, camera: Size | null): boolean {
  if (camera === null) return true;
  const ratio = ({ width, height }: Size) => Math.max(width, height) / Math.min(width, height);
  return Math.abs(ratio(file) / ratio(camera) - 1) < 0.01;
}
