import { textAt } from './bytes';

/** By the first bytes, never by the name: messengers and people rename files. */
export type FileFormat =
  | { readonly kind: 'jpeg' | 'png' | 'webp' | 'heif' }
  | { readonly kind: 'other'; readonly name: string }
  | { readonly kind: 'unknown' };

/** Signatures: JPEG ITU-T T.81 B.1.1.3; PNG ISO/IEC 15948 5.2; WebP RFC 9649; GIF89a;
 *  TIFF 6.0; ISO base media ISO/IEC 14496-12 4.3; JPEG XL ISO/IEC 18181-2. */
export function sniffFormat(bytes: Uint8Array): FileFormat {
  const start = textAt(bytes, 0, 12);
  if (start.startsWith('\xff\xd8\xff')) return { kind: 'jpeg' };
  if (start.startsWith('\x89PNG\r\n\x1a\n')) return { kind: 'png' };
  if (start.startsWith('RIFF') && start.endsWith('WEBP')) return { kind: 'webp' };
  if (start.slice(4, 8) === 'ftyp' && stillBrand.test(start.slice(8))) return { kind: 'heif' };
  const name = otherFormat(start);
  return name === null ? { kind: 'unknown' } : { kind: 'other', name };
}

function otherFormat(start: string): string | null {
  if (start.slice(4, 8) === 'ftyp') return 'video';
  if (start.startsWith('GIF8')) return 'GIF';
  if (start.startsWith('II*\0') || start.startsWith('MM\0*')) return 'TIFF or raw';
  if (start.startsWith('BM')) return 'BMP';
  if (start.startsWith('%PDF')) return 'PDF';
  if (start.startsWith('\xff\x0a') || start.slice(4, 8) === 'JXL ') return 'JPEG XL';
  if (/^(\xef\xbb\xbf)?\s*<(\?xml|svg)/.test(start)) return 'SVG';
  return null;
}

/** HEIF, ISO/IEC 23008-12, and AVIF (AOMedia, AV1 Image File Format 1.1): one container. */
const stillBrand = /^(heic|heix|hevc|hevx|heim|heis|mif1|msf1|avif|avis)$/;
