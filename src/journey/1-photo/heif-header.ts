import { type ByteReader, reader, textAt } from './bytes';
import type { ImageHeader } from './image-header';

/** A HEIF file's header (ISO/IEC 23008-12): size, turns and EXIF of its primary image. */
export interface HeifHeader extends ImageHeader {
  readonly codec: 'heic' | 'avif';
  /** What `irot` and `imir` ask for, in EXIF's numbers, in order. They hold, not EXIF's own
   *  orientation, which repeats them where it is right (ISO/IEC 23008-12, A.2.4, from memory). */
  readonly turns: readonly number[];
}

interface Box {
  readonly kind: string;
  /** First byte of the contents, and the one after them. */
  readonly from: number;
  readonly to: number;
}

/** The contents of these begin with a version and flags (ISO/IEC 14496-12, 4.2). */
const full = 4;

export function readHeifHeader(bytes: Uint8Array): HeifHeader | null {
  const from = reader(bytes, 'big');
  const meta = boxes(bytes, from, 0, bytes.length).find(({ kind }) => kind === 'meta');
  if (!meta) return null;
  const inside = boxes(bytes, from, meta.from + full, meta.to);
  const box = (kind: string) => inside.find((one) => one.kind === kind);
  const [pitm, iinf, iprp] = [box('pitm'), box('iinf'), box('iprp')];
  if (!pitm || !iinf || !iprp) return null;
  const primary = from.u8(pitm.from) === 0 ? from.u16(pitm.from + 4) : from.u32(pitm.from + 4);
  const kinds = itemKinds(bytes, from, iinf);
  const properties = propertiesOf(bytes, from, iprp, primary);
  const size = properties.find(({ kind }) => kind === 'ispe');
  if (!size) return null;
  const exifItem = [...kinds].find(([, kind]) => kind === 'Exif')?.[0];
  const iloc = box('iloc');
  const codec = codecOf(kinds.get(primary) ?? '', [...kinds.values()]);
  return {
    width: from.u32(size.from + full),
    height: from.u32(size.from + full + 4),
    exif:
      exifItem === undefined || !iloc
        ? null
        : exifOf(bytes, from, placeOf(from, iloc, box('idat'), exifItem)),
    unsupported: codec ? null : 'a HEIF file of a rare kind',
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

/** A telephone's photo is a grid of tiles: then the tiles say how they are coded. */
function codecOf(primary: string, all: readonly string[]): 'heic' | 'avif' | null {
  const coded = primary === 'grid' || primary === 'iovl' || primary === 'iden' ? all : [primary];
  if (coded.includes('hvc1') || coded.includes('hev1')) return 'heic';
  return coded.includes('av01') ? 'avif' : null;
}

function boxes(bytes: Uint8Array, { u32 }: ByteReader, start: number, end: number): Box[] {
  const found: Box[] = [];
  for (let at = start; at + 8 <= end; ) {
    const small = u32(at);
    const head = small === 1 ? 16 : 8;
    const length =
      small === 1 ? u32(at + 8) * 2 ** 32 + u32(at + 12) : small === 0 ? end - at : small;
    if (!(length >= head) || at + length > end) break;
    found.push({ kind: textAt(bytes, at + 4, 4), from: at + head, to: at + length });
    at += length;
  }
  return found;
}

/** `infe` of version 2 or 3: item → its kind. */
function itemKinds(bytes: Uint8Array, from: ByteReader, iinf: Box): Map<number, string> {
  const first = iinf.from + full + (from.u8(iinf.from) === 0 ? 2 : 4);
  return new Map(
    boxes(bytes, from, first, iinf.to).map(({ from: at }): [number, string] =>
      from.u8(at) >= 3
        ? [from.u32(at + full), textAt(bytes, at + full + 6, 4)]
        : [from.u16(at + full), textAt(bytes, at + full + 4, 4)],
    ),
  );
}

function propertiesOf(bytes: Uint8Array, from: ByteReader, iprp: Box, item: number): Box[] {
  const inside = boxes(bytes, from, iprp.from, iprp.to);
  const ipco = inside.find(({ kind }) => kind === 'ipco');
  if (!ipco) return [];
  const all = boxes(bytes, from, ipco.from, ipco.to);
  return inside
    .filter(({ kind }) => kind === 'ipma')
    .flatMap((ipma) => associated(from, ipma, item))
    .flatMap((index) => all[index - 1] ?? []);
}

/** Numbers of an item's properties, from 1, in order. */
function associated({ u8, u16, u32 }: ByteReader, ipma: Box, item: number): number[] {
  const wideItems = u8(ipma.from) >= 1;
  const wideIndexes = (u8(ipma.from + 3) & 1) === 1;
  const count = u32(ipma.from + full);
  let at = ipma.from + full + 4;
  for (let i = 0; i < count && at < ipma.to; i++) {
    const id = wideItems ? u32(at) : u16(at);
    at += wideItems ? 4 : 2;
    const size = wideIndexes ? 2 : 1;
    const [start, links] = [at + 1, u8(at)];
    at = start + links * size;
    if (id === item)
      return Array.from({ length: links }, (_, k) =>
        wideIndexes ? u16(start + 2 * k) & 0x7fff : u8(start + k) & 0x7f,
      );
  }
  return [];
}

/** Where an item of one piece lies (14496-12, 8.11.3). */
function placeOf(from: ByteReader, iloc: Box, idat: Box | undefined, item: number): Box | null {
  const { u8, u16, u32 } = from;
  const version = u8(iloc.from);
  const sizes = u16(iloc.from + full);
  const [offsetSize, lengthSize] = [sizes >> 12, (sizes >> 8) & 15];
  const [baseSize, indexSize] = [(sizes >> 4) & 15, version > 0 ? sizes & 15 : 0];
  const wide = version >= 2;
  const count = wide ? u32(iloc.from + full + 2) : u16(iloc.from + full + 2);
  const sized = (at: number, size: number) =>
    size === 8 ? u32(at) * 2 ** 32 + u32(at + 4) : size === 4 ? u32(at) : 0;
  let at = iloc.from + full + (wide ? 6 : 4);
  for (let i = 0; i < count && at < iloc.to; i++) {
    const id = wide ? u32(at) : u16(at);
    at += wide ? 4 : 2;
    const inIdat = version > 0 && (u16(at) & 15) === 1;
    at += (version > 0 ? 2 : 0) + 2;
    const base = sized(at, baseSize);
    at += baseSize;
    const extents = u16(at);
    at += 2;
    const start = base + sized(at + indexSize, offsetSize) + (inIdat ? (idat?.from ?? 0) : 0);
    const length = sized(at + indexSize + offsetSize, lengthSize);
    if (id === item && extents === 1) return { kind: 'item', from: start, to: start + length };
    at += extents * (indexSize + offsetSize + lengthSize);
  }
  return null;
}

/** An EXIF item begins with the distance to its TIFF header (23008-12, A.2.1). */
function exifOf(bytes: Uint8Array, { u32 }: ByteReader, place: Box | null): Uint8Array | null {
  if (!place || place.to > bytes.length) return null;
  const tiff = place.from + 4 + u32(place.from);
  return tiff < place.to ? bytes.subarray(tiff, place.to) : null;
}
