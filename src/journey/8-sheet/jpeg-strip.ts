import { ok, type Result, refuse } from '../../quantity/result';

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
  if (input.length < 4 || input[0] !== 0xff || input[1] !== marker.soi)
    return refuse('not-jpeg', 'Choose a photo in JPEG format.');
  const kept: Uint8Array[] = [];
  let size: { widthPx: number; heightPx: number } | undefined;
  let scans = 0;
  let at = 2;
  while (at + 4 <= input.length || input[at + 1] === marker.eoi) {
    if (input[at] !== 0xff) return truncated();
    const code = input[at + 1]!;
    if (code === 0xff) {
      at++; // fill byte
      continue;
    }
    if (code === marker.eoi) {
      if (!size || scans === 0) return truncated();
      return ok({ bytes: joined([soi, jfifIfPlain(kept), ...kept, eoi]), ...size });
    }
    const length = (input[at + 2]! << 8) | input[at + 3]!;
    const end = at + 2 + length;
    if (length < 2 || end > input.length) return truncated();
    const segment = input.subarray(at, end);
    if (isFrame(code)) {
      if (size || length < 8) return truncated();
      size = {
        heightPx: (segment[5]! << 8) | segment[6]!,
        widthPx: (segment[7]! << 8) | segment[8]!,
      };
      if (size.widthPx === 0 || size.heightPx === 0) return truncated();
      if (size.widthPx * size.heightPx > maxPixels)
        return refuse(
          'too-many-pixels',
          'Choose a smaller photo: this one is over 100 megapixels.',
        );
    }
    if (isKept(code) || isAdobe(code, segment)) kept.push(segment);
    at = end;
    if (code === marker.sos) {
      scans++;
      const scanEnd = endOfScan(input, at);
      kept.push(input.subarray(at, scanEnd));
      at = scanEnd;
    }
  }
  return truncated();
}

const marker = {
  soi: 0xd8,
  eoi: 0xd9,
  sos: 0xda,
  dqt: 0xdb,
  dnl: 0xdc,
  dri: 0xdd,
  dht: 0xc4,
  dac: 0xcc,
  jpg: 0xc8,
  app14: 0xee,
} as const;

const soi = Uint8Array.of(0xff, marker.soi);
const eoi = Uint8Array.of(0xff, marker.eoi);

/** JFIF 1.02, no density unit, no thumbnail. */
const bareJfif = Uint8Array.of(
  ...[0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46, 0, 1, 2, 0, 0, 1, 0, 1, 0, 0],
);

/** JFIF says YCbCr; beside an Adobe segment that may say otherwise it is left out. */
function jfifIfPlain(kept: readonly Uint8Array[]): Uint8Array {
  return kept.some((segment) => segment[1] === marker.app14 && segment[0] === 0xff)
    ? new Uint8Array(0)
    : bareJfif;
}

function isFrame(code: number): boolean {
  return (
    code >= 0xc0 &&
    code <= 0xcf &&
    code !== marker.dht &&
    code !== marker.dac &&
    code !== marker.jpg
  );
}

function isKept(code: number): boolean {
  return (
    isFrame(code) ||
    code === marker.dht ||
    code === marker.dac ||
    code === marker.dqt ||
    code === marker.dri ||
    code === marker.dnl ||
    code === marker.sos
  );
}

function isAdobe(code: number, segment: Uint8Array): boolean {
  return (
    code === marker.app14 &&
    segment.length === 16 &&
    [0x41, 0x64, 0x6f, 0x62, 0x65].every((byte, i) => segment[4 + i] === byte)
  );
}

/** First marker after entropy-coded data that is neither a stuffed zero nor a restart. */
function endOfScan(input: Uint8Array, from: number): number {
  for (
    let i = input.indexOf(0xff, from);
    i >= 0 && i + 1 < input.length;
    i = input.indexOf(0xff, i + 1)
  ) {
    const next = input[i + 1]!;
    if (next === 0 || (next >= 0xd0 && next <= 0xd7) || next === 0xff) continue;
    return i;
  }
  return input.length;
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
