import { reader } from './bytes';
import { type Box, full, type HeifItems, readHeifItems } from './heif-boxes';
import type { ImageHeader } from './image-header';
import type { Size } from './photo';

/** A HEIF file's header (ISO/IEC 23008-12): size, turns and EXIF of its primary image. */
export interface HeifHeader extends ImageHeader {
  readonly codec: 'heic' | 'avif';
  /** What `irot` and `imir` ask for, in EXIF's numbers, in order. They hold, not EXIF's own
   *  orientation, which repeats them where it is right (ISO/IEC 23008-12, A.2.4, from memory). */
  readonly turns: readonly number[];
}

export function readHeifHeader(bytes: Uint8Array): HeifHeader | null {
  const items = readHeifItems(bytes);
  if (!items) return null;
  const from = reader(bytes, 'big');
  const { primary, kinds } = items;
  const properties = items.properties(primary);
  const property = (asked: string) => properties.find(({ kind }) => kind === asked);
  const extent = property('ispe');
  if (!extent) return null;
  const stored = { width: from.u32(extent.from + full), height: from.u32(extent.from + full + 4) };
  const clap = property('clap');
  const shown = clap ? clipped(bytes, clap) : stored;
  const codec = codecOf(kinds.get(primary) ?? '', [...kinds.values()]);
  // libheif clips the image by itself; libavif does not.
  const rare = !codec || (codec === 'avif' && differ(shown, stored));
  return {
    ...shown,
    exif: exifOf(bytes, items),
    unsupported: rare ? 'a HEIF file of a rare kind' : null,
    codec: codec ?? 'heic',
    turns: properties.flatMap(({ kind, from: at }) =>
      kind === 'irot'
        ? [quarterTurns[from.u8(at) & 3]]
        : kind === 'imir'
          ? [mirrors[from.u8(at) & 1]]
          : [],
    ),
  };
}

/** `irot`: quarter turns anticlockwise (23008-12, 6.5.10). */
const quarterTurns = [1, 8, 3, 6] as const;
/** `imir`: 0 exchanges top and bottom, 1 left and right (23008-12:2022, 6.5.12). */
const mirrors = [4, 2] as const;

/** The part that `clap` leaves: whole pixels of a width and a height that are fractions (14496-12, 12.1.4). */
function clipped(bytes: Uint8Array, { from: at }: Box): Size {
  const { u32 } = reader(bytes, 'big');
  return {
    width: Math.floor(u32(at) / u32(at + 4)),
    height: Math.floor(u32(at + 8) / u32(at + 12)),
  };
}

function differ(a: Size, b: Size): boolean {
  return a.width !== b.width || a.height !== b.height;
}

/** A telephone's photo is a grid of tiles: then the tiles say how they are coded. */
function codecOf(primary: string, all: readonly string[]): 'heic' | 'avif' | null {
  const coded = primary === 'grid' || primary === 'iovl' || primary === 'iden' ? all : [primary];
  if (coded.includes('hvc1') || coded.includes('hev1')) return 'heic';
  return coded.includes('av01') ? 'avif' : null;
}

/** An EXIF item begins with the distance to its TIFF header (23008-12, A.2.1). */
function exifOf(bytes: Uint8Array, { kinds, place }: HeifItems): Uint8Array | null {
  const item = [...kinds].find(([, kind]) => kind === 'Exif')?.[0];
  const at = item === undefined ? null : place(item);
  if (!at || at.to > bytes.length) return null;
  const tiff = at.from + 4 + reader(bytes, 'big').u32(at.from);
  return tiff < at.to ? bytes.subarray(tiff, at.to) : null;
}
