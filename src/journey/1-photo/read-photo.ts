import { type Result, refuse } from '../../quantity/result';
import type { GreyImage } from '../../vision/grey-image';
import type { RefusalReason } from '../identification';
import { decodePng, decodeWebp } from './decode-colour';
import { decodeJpeg } from './decode-jpeg';
import { readExif, showsWholeFrame } from './exif';
import { sniffFormat } from './file-format';
import { type ImageHeader, readJpegHeader, readPngHeader, readWebpHeader } from './image-header';
import {
  coarsestLongSidePx,
  coarsestShortSidePx,
  type Decoders,
  fullSizeLimitPx,
  type Photo,
  reducedLimitPx,
} from './photo';
import { makeUpright } from './upright';

type Reading = Result<Photo, RefusalReason>;

/** Stage 1: a file's bytes → an upright grey photo. Every file ends in a photo or a refusal; it
 *  rejects only when aborted. Size is judged by the header, before anything is decoded. */
export async function readPhoto(
  signal: AbortSignal,
  bytes: Uint8Array,
  decoders: Decoders,
): Promise<Reading> {
  signal.throwIfAborted();
  const format = sniffFormat(bytes);
  if (format.kind === 'unknown') return notAPhoto(bytes);
  if (format.kind === 'other') return otherFormat(format.name);

  const header = readHeader[format.kind](bytes);
  if (header === null || !(header.width > 0 && header.height > 0)) return damaged;
  if (header.unsupported !== null) return otherFormat(header.unsupported);
  const reduction = reductionFor(format.kind, header);
  if (reduction === null) return tooLarge(header);
  if (isTooCoarse(header)) return tooCoarse(header);

  const size = {
    width: Math.ceil(header.width / reduction),
    height: Math.ceil(header.height / reduction),
  };
  const module = await decoders[format.kind]();
  signal.throwIfAborted();
  const stored = await {
    jpeg: () => decodeJpeg(module, bytes, size),
    png: () => decodePng(module, bytes),
    webp: () => decodeWebp(module, bytes),
  }[format.kind]();
  signal.throwIfAborted();
  if (stored === null || !isWhole(stored)) return damaged;

  const exif = readExif(header.exif);
  const grey = makeUpright(stored, exif.orientation);
  const turned = exif.orientation >= 5;
  return {
    ok: true,
    value: {
      grey,
      f35Mm: showsWholeFrame(header, exif.pixelSize) ? exif.f35Mm : null,
      flashFired: exif.flashFired,
      originalSize: turned
        ? { width: header.height, height: header.width }
        : { width: header.width, height: header.height },
      reduction,
    },
  };
}

const readHeader = { jpeg: readJpegHeader, png: readPngHeader, webp: readWebpHeader };

function reductionFor(kind: 'jpeg' | 'png' | 'webp', header: ImageHeader): 1 | 2 | null {
  const pixels = header.width * header.height;
  if (pixels <= fullSizeLimitPx) return 1;
  return kind === 'jpeg' && pixels <= reducedLimitPx ? 2 : null;
}

function isTooCoarse({ width, height }: ImageHeader): boolean {
  return (
    Math.max(width, height) < coarsestLongSidePx || Math.min(width, height) < coarsestShortSidePx
  );
}

function isWhole({ width, height, data }: GreyImage): boolean {
  return width > 0 && height > 0 && data.length === width * height;
}

const damaged: Reading = refuse(
  'unreadable',
  'The file is damaged or incomplete: send it again, or take the photo once more.',
);

function notAPhoto(bytes: Uint8Array): Reading {
  return refuse(
    'unreadable',
    bytes.length === 0
      ? 'The file is empty: choose the photo again.'
      : 'This is not a photo, whatever its name says: choose a JPEG, PNG or WebP file.',
  );
}

function otherFormat(name: string): Reading {
  return refuse(
    'unsupported-format',
    `This is ${article(name)} file: save or share the photo as JPEG, and choose that.`,
  );
}

function article(name: string): string {
  if (/^an? /.test(name)) return name;
  return /^(AVIF|SVG)/.test(name) ? `an ${name}` : `a ${name}`;
}

function tooLarge({ width, height }: ImageHeader): Reading {
  return refuse(
    'too-large',
    `The photo has ${width} × ${height} pixels, more than can be held: set the camera to 12 megapixels.`,
  );
}

function tooCoarse({ width, height }: ImageHeader): Reading {
  return refuse(
    'too-coarse',
    `The photo has only ${width} × ${height} pixels: send the original, not a preview.`,
  );
}
