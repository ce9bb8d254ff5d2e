import { readExif, showsWholeFrame } from './exif';
import { type FileFormat, sniffFormat } from './file-format';
import { readHeifHeader } from './heif-header';
import { type ImageHeader, readJpegHeader, readPngHeader, readWebpHeader } from './image-header';
import type { Decoders, Photo } from './photo';

/** A file that one of the decoders may open. */
export interface Readable extends ImageHeader {
  readonly codec: keyof Decoders;
  /** Orientations to be undone one after the other, given EXIF's own. */
  readonly turns: (exif: number) => readonly number[];
}

type Kind = Extract<FileFormat, { kind: 'jpeg' | 'png' | 'webp' | 'heif' }>['kind'];

export function readHeader(kind: Kind, bytes: Uint8Array): Readable | null {
  if (kind === 'heif') {
    const header = readHeifHeader(bytes);
    // libheif turns the image by itself.
    return header && { ...header, turns: () => (header.codec === 'heic' ? [] : header.turns) };
  }
  const read = { jpeg: readJpegHeader, png: readPngHeader, webp: readWebpHeader }[kind];
  const header = read(bytes);
  return header && { ...header, codec: kind, turns: (exif) => [exif] };
}

export function cameraFacts(header: ImageHeader): Pick<Photo, 'f35Mm' | 'flashFired'> {
  const exif = readExif(header.exif);
  return {
    f35Mm: showsWholeFrame(header, exif.pixelSize) ? exif.f35Mm : null,
    flashFired: exif.flashFired,
  };
}

/** What a photo says of its camera, read without decoding it. */
export function photoFacts(bytes: Uint8Array): Pick<Photo, 'f35Mm' | 'flashFired'> {
  const format = sniffFormat(bytes);
  const known = format.kind !== 'unknown' && format.kind !== 'other';
  const header = known ? readHeader(format.kind, bytes) : null;
  return header ? cameraFacts(header) : { f35Mm: null, flashFired: false };
}
