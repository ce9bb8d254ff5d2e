import { type Result, refuse } from '../../quantity/result';
import type { GreyImage } from '../../vision/grey-image';
import type { RefusalReason } from '../identification';
import { decodePng, decodeWebp, toGrey } from './decode-colour';
import { decodeAvif, decodeHeic } from './decode-heif';
import { decodeJpeg } from './decode-jpeg';
import { readExif } from './exif';
import { sniffFormat } from './file-format';
import type { ImageHeader } from './image-header';
import {
  coarsestLongSidePx,
  coarsestShortSidePx,
  type Decoders,
  fullSizeLimitPx,
  type Photo,
  reducedLimitPx,
} from './photo';
import { cameraFacts, type Readable, readHeader } from './photo-header';
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

  const header = readHeader(format.kind, bytes);
  if (header === null || !(header.width > 0 && header.height > 0)) return damaged;
  if (header.unsupported !== null) return otherFormat(header.unsupported);
  const reduction = reductionFor(header);
  if (reduction === null) return tooLarge(header);
  if (isTooCoarse(header)) return tooCoarse(header);

  const size = {
    width: Math.ceil(header.width / reduction),
    height: Math.ceil(header.height / reduction),
  };
  const { codec } = header;
  const module = await decoders[codec]().catch(() => null);
  signal.throwIfAborted();
  if (module === null) return notLoaded;
  const stored = await {
    jpeg: () => decodeJpeg(module, bytes, size),
    png: () => decodePng(module, bytes),
    webp: () => decodeWebp(module, bytes),
    heic: () => decodeHeic(module, bytes, reduction),
    avif: () => decodeAvif(module, bytes, toGrey),
  }[codec]();
  signal.throwIfAborted();
  if (stored === 'no-memory') return tooLarge(header);
  if (stored === null || stored === 'damaged' || !isWhole(stored)) return damaged;

  const exif = readExif(header.exif);
  const grey = header.turns(exif.orientation).reduce(makeUpright, stored);
  const onItsSide = grey.width > grey.height !== header.width > header.height;
  return {
    ok: true,
    value: {
      grey,
      ...cameraFacts(header),
      originalSize:
        reduction === 1
          ? { width: grey.width, height: grey.height }
          : onItsSide
            ? { width: header.height, height: header.width }
            : { width: header.width, height: header.height },
    },
  };
}

function reductionFor({ codec, width, height }: Readable): 1 | 2 | null {
  const pixels = width * height;
  if (pixels <= fullSizeLimitPx) return 1;
  return (codec === 'jpeg' || codec === 'heic') && pixels <= reducedLimitPx ? 2 : null;
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

const notLoaded: Reading = refuse(
  'decoder-missing',
  'The part that opens this kind of photo could not be loaded: connect to the network and try again, or share the photo as JPEG.',
);

function notAPhoto(bytes: Uint8Array): Reading {
  return refuse(
    'unreadable',
    bytes.length === 0
      ? 'The file is empty: choose the photo again.'
      : 'This is not a photo, whatever its name says: choose a JPEG, PNG, WebP, HEIC or AVIF file.',
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
