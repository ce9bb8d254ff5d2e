import { ok, type Result, refuse } from '../../quantity/result';
import { isFrameHeader, jpegMarker, jpegSegments } from '../1-photo/jpeg-segments';

export interface StrippedJpeg {
  readonly bytes: Uint8Array;
  /** As stored, before any EXIF orientation. */
  readonly widthPx: number;
  readonly heightPx: number;
}

export type StripRefusal = 'not-jpeg' | 'truncated-jpeg' | 'too-many-pixels';

/** 100 megapixels: twice what phones give, and less than a decoder needs to run out of memory. */
const maxPixels = 100e6;

/** A JPEG with nothing left but what decoding needs: tables, frame, scans, restart interval, a bare
 *  JFIF header and Adobe's colour transform. EXIF, GPS, XMP, comments, colour profiles, thumbnails,
 *  maker data and whatever follows the end of the image (motion pictures, depth maps) are gone.
 *  The coded picture itself is copied bit for bit, so it measures the same.
 *  Segments: ITU-T T.81, Annex B; JFIF: ITU-T T.871; Adobe: ISO/IEC 10918-6, 6.5.3. */
export function stripJpeg(input: Uint8Array): Result<StrippedJpeg, StripRefusal> {
  if (input.length < 4 || input[0] !== 0xff || input[1] !== jpegMarker.soi)
    return refuse('not-jpeg', 'Choose a photo in JPEG format.');
  const kept: Uint8Array[] = [];
  let size: { widthPx: number; heightPx: number } | undefined;
  let scans = 0;
  const segments = jpegSegments(input);
  let next = segments.next();
  for (; !next.done; next = segments.next()) {
    const { marker, bytes, scan } = next.value;
    if (isFrameHeader(marker)) {
      if (size || bytes.length < 10) return truncated();
      size = { heightPx: (bytes[5]! << 8) | bytes[6]!, widthPx: (bytes[7]! << 8) | bytes[8]! };
      if (size.widthPx === 0 || size.heightPx === 0) return truncated();
      if (size.widthPx * size.heightPx > maxPixels)
        return refuse(
          'too-many-pixels',
          'Choose a smaller photo: this one is over 100 megapixels.',
        );
    }
    if (isFrameHeader(marker) || keptMarkers.has(marker) || isAdobe(marker, bytes))
      kept.push(bytes);
    if (scan) {
      scans++;
      kept.push(scan);
    }
  }
  const whole = next.value;
  if (!whole || !size || scans === 0) return truncated();
  return ok({ bytes: joined([soi, jfifIfPlain(kept), ...kept, eoi]), ...size });
}

/** Besides frame headers. */
const keptMarkers: ReadonlySet<number> = new Set([
  jpegMarker.dht,
  jpegMarker.dac,
  jpegMarker.dqt,
  jpegMarker.dri,
  jpegMarker.dnl,
  jpegMarker.sos,
]);

const soi = Uint8Array.of(0xff, jpegMarker.soi);
const eoi = Uint8Array.of(0xff, jpegMarker.eoi);

/** JFIF 1.02, no density unit, no thumbnail. */
const bareJfif = Uint8Array.of(
  ...[0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46, 0, 1, 2, 0, 0, 1, 0, 1, 0, 0],
);

/** JFIF says YCbCr; beside an Adobe segment that may say otherwise it is left out. */
function jfifIfPlain(kept: readonly Uint8Array[]): Uint8Array {
  return kept.some((segment) => segment[1] === jpegMarker.app14 && segment[0] === 0xff)
    ? new Uint8Array(0)
    : bareJfif;
}

function isAdobe(code: number, segment: Uint8Array): boolean {
  return (
    code === jpegMarker.app14 &&
    segment.length === 16 &&
    [0x41, 0x64, 0x6f, 0x62, 0x65].every((byte, i) => segment[4 + i] === byte)
  );
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}

const truncated = () =>
  refuse('truncated-jpeg', 'This photo is damaged or incomplete: take or transfer it again.');
