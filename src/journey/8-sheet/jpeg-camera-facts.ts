import { readExif } from '../1-photo/exif';
import { readJpegHeader } from '../1-photo/image-header';
import { photoFacts } from '../1-photo/photo-header';

/** What of a photo's EXIF the measurement needs. Kept as plain fields of the sheet, so that the
 *  photo itself can travel without EXIF. */
export interface CameraFacts {
  /** EXIF orientation, 1…8. */
  readonly orientation: number;
  /** 35 mm equivalent focal length, mm, as the camera wrote it. */
  readonly focal35Mm: number | null;
  readonly flashFired: boolean;
}

/** Read from a photo of any format before it is kept, by stage 1's own rules, so that the kept photo
 *  measures as the original did. What is no JPEG is kept as one, upright. */
export function cameraFactsOf(photo: Uint8Array): CameraFacts {
  const jpeg = readJpegHeader(photo);
  const { f35Mm, flashFired } = photoFacts(photo);
  return {
    orientation: jpeg ? readExif(jpeg.exif).orientation : 1,
    focal35Mm: f35Mm,
    flashFired,
  };
}

/** The stripped photo with a fresh EXIF segment holding these facts and nothing else, for
 *  decoding and measuring on this device; never for export.
 *  Layout: CIPA DC-008 (Exif 2.32), 4.5–4.6; TIFF 6.0, section 2, big-endian. */
export function withCameraFacts(jpeg: Uint8Array, facts: CameraFacts): Uint8Array {
  const segment = new Uint8Array(exifLength + 2);
  const view = new DataView(segment.buffer);
  view.setUint16(0, 0xffe1);
  view.setUint16(2, exifLength);
  segment.set([0x45, 0x78, 0x69, 0x66, 0, 0], 4); // "Exif\0\0"
  const tiff = 10;
  view.setUint16(tiff, 0x4d4d);
  view.setUint16(tiff + 2, 42);
  view.setUint32(tiff + 4, 8);
  view.setUint16(tiff + 8, 2);
  entry(view, tiff + 10, 0x0112, short, facts.orientation);
  entry(view, tiff + 22, 0x8769, long, 38);
  view.setUint32(tiff + 34, 0);
  view.setUint16(tiff + 38, 2);
  entry(view, tiff + 40, 0x9209, short, facts.flashFired ? 1 : 0);
  // 0 means unknown (Exif 2.32, FocalLengthIn35mmFilm).
  entry(view, tiff + 52, 0xa405, short, Math.round(facts.focal35Mm ?? 0));
  view.setUint32(tiff + 64, 0);

  const out = new Uint8Array(jpeg.length + segment.length);
  out.set(jpeg.subarray(0, 2));
  out.set(segment, 2);
  out.set(jpeg.subarray(2), 2 + segment.length);
  return out;
}

const short = 3;
const long = 4;
/** Length field, "Exif\0\0", TIFF header, two directories of 2 entries. */
const exifLength = 2 + 6 + 8 + (2 + 2 * 12 + 4) + (2 + 2 * 12 + 4);

function entry(view: DataView, at: number, tag: number, type: number, value: number): void {
  view.setUint16(at, tag);
  view.setUint16(at + 2, type);
  view.setUint32(at + 4, 1);
  if (type === short) view.setUint16(at + 8, value);
  else view.setUint32(at + 8, value);
}
