import { reader, textAt } from './bytes';
import { isFrameHeader, jpegMarker, jpegSegments } from './jpeg-segments';
import type { Size } from './photo';

/** What a file says of itself before anything is decoded. */
export interface ImageHeader extends Size {
  /** TIFF structure of its EXIF block, when there is one. */
  readonly exif: Uint8Array | null;
  /** A variant that we do not decode, in words. */
  readonly unsupported: string | null;
}

/** Up to the first frame header. Null when there is none. */
export function readJpegHeader(file: Uint8Array): ImageHeader | null {
  let exif: Uint8Array | null = null;
  for (const { marker, bytes, scan } of jpegSegments(file)) {
    if (scan) return null;
    if (isFrameHeader(marker)) {
      if (bytes.length < 10) return null;
      const { u8, u16 } = reader(bytes, 'big');
      const unsupported = unsupportedJpeg(marker, u8(4), u8(9));
      return { width: u16(7), height: u16(5), exif, unsupported };
    }
    if (marker === jpegMarker.app1 && exif === null && textAt(bytes, 4, 6) === 'Exif\0\0')
      exif = bytes.subarray(10);
  }
  return null;
}

function unsupportedJpeg(marker: number, bits: number, components: number): string | null {
  if (marker > 0xc2) return 'a lossless or arithmetic-coded JPEG';
  if (bits !== 8) return `a JPEG of ${bits} bits`;
  if (components === 4) return 'a CMYK JPEG, made for printing';
  return null;
}

/** Chunks up to the image data, ISO/IEC 15948. */
export function readPngHeader(bytes: Uint8Array): ImageHeader | null {
  const { u32 } = reader(bytes, 'big');
  if (textAt(bytes, 12, 4) !== 'IHDR') return null;
  let exif: Uint8Array | null = null;
  for (let at = 8; at + 12 <= bytes.length; at += 12 + u32(at)) {
    const kind = textAt(bytes, at + 4, 4);
    if (kind === 'IDAT') break;
    if (kind === 'eXIf') exif = bytes.subarray(at + 8, at + 8 + u32(at));
  }
  return { width: u32(16), height: u32(20), exif, unsupported: null };
}

/** RFC 9649, sections 2.5 to 2.7. */
export function readWebpHeader(bytes: Uint8Array): ImageHeader | null {
  const { u8, u16, u32 } = reader(bytes, 'little');
  const u24 = (at: number) => u16(at) + 65536 * u8(at + 2);
  const size = ((): Size | null => {
    switch (textAt(bytes, 12, 4)) {
      case 'VP8X':
        return { width: u24(24) + 1, height: u24(27) + 1 };
      case 'VP8L':
        return { width: (u32(21) & 0x3fff) + 1, height: ((u32(21) >>> 14) & 0x3fff) + 1 };
      case 'VP8 ':
        return { width: u16(26) & 0x3fff, height: u16(28) & 0x3fff };
      default:
        return null;
    }
  })();
  if (size === null) return null;
  const extended = textAt(bytes, 12, 4) === 'VP8X';
  const animated = extended && (u8(20) & 2) !== 0;
  return {
    ...size,
    exif: extended ? webpExif(bytes) : null,
    unsupported: animated ? 'an animated WebP' : null,
  };
}

function webpExif(bytes: Uint8Array): Uint8Array | null {
  const { u32 } = reader(bytes, 'little');
  for (let at = 12; at + 8 <= bytes.length; ) {
    const length = u32(at + 4);
    if (textAt(bytes, at, 4) === 'EXIF') {
      const chunk = bytes.subarray(at + 8, at + 8 + length);
      return textAt(chunk, 0, 6) === 'Exif\0\0' ? chunk.subarray(6) : chunk;
    }
    at += 8 + length + (length & 1);
  }
  return null;
}
