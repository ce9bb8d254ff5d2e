import { type ByteReader, reader, textAt } from './bytes';

export interface Box {
  readonly kind: string;
  /** First byte of the contents, and the one after them. */
  readonly from: number;
  readonly to: number;
}

/** The contents of these begin with a version and flags (ISO/IEC 14496-12, 4.2). */
export const full = 4;

/** What a HEIF file keeps (ISO/IEC 23008-12), by its items' numbers. */
export interface HeifItems {
  readonly primary: number;
  readonly kinds: ReadonlyMap<number, string>;
  /** An item's properties in the order in which they are to be followed. */
  properties(item: number): Box[];
  /** Of an item of one piece: where its bytes lie. Null of any other. */
  place(item: number): Box | null;
  /** Items to which this one refers in that way, in order. */
  references(item: number, kind: string): number[];
}

/** Null where the file has no index of its items. */
export function readHeifItems(bytes: Uint8Array): HeifItems | null {
  const from = reader(bytes, 'big');
  const meta = boxes(bytes, 0, bytes.length).find(({ kind }) => kind === 'meta');
  if (!meta) return null;
  const inside = boxes(bytes, meta.from + full, meta.to);
  const box = (kind: string) => inside.find((one) => one.kind === kind);
  const [pitm, iinf, iprp, iloc, iref] = ['pitm', 'iinf', 'iprp', 'iloc', 'iref'].map(box);
  if (!pitm || !iinf || !iprp) return null;
  return {
    primary: from.u8(pitm.from) === 0 ? from.u16(pitm.from + full) : from.u32(pitm.from + full),
    kinds: itemKinds(bytes, from, iinf),
    properties: (item) => propertiesOf(bytes, from, iprp, item),
    place: (item) => (iloc ? placeOf(from, iloc, box('idat'), item) : null),
    references: (item, kind) => (iref ? referencesOf(bytes, from, iref, { item, kind }) : []),
  };
}

function boxes(bytes: Uint8Array, start: number, end: number): Box[] {
  const { u32 } = reader(bytes, 'big');
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
    boxes(bytes, first, iinf.to).map(({ from: at }): [number, string] =>
      from.u8(at) >= 3
        ? [from.u32(at + full), textAt(bytes, at + full + 6, 4)]
        : [from.u16(at + full), textAt(bytes, at + full + 4, 4)],
    ),
  );
}

function propertiesOf(bytes: Uint8Array, from: ByteReader, iprp: Box, item: number): Box[] {
  const inside = boxes(bytes, iprp.from, iprp.to);
  const ipco = inside.find(({ kind }) => kind === 'ipco');
  if (!ipco) return [];
  const all = boxes(bytes, ipco.from, ipco.to);
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

/** 14496-12, 8.11.12. */
function referencesOf(
  bytes: Uint8Array,
  { u8, u16, u32, length }: ByteReader,
  iref: Box,
  asked: { readonly item: number; readonly kind: string },
): number[] {
  const size = u8(iref.from) === 0 ? 2 : 4;
  const id = size === 2 ? u16 : u32;
  return boxes(bytes, iref.from + full, iref.to)
    .filter(({ kind, from }) => kind === asked.kind && id(from) === asked.item)
    .flatMap(({ from, to }) => {
      const first = from + size + 2;
      const count = Math.min(u16(from + size), (Math.min(to, length) - first) / size);
      return Array.from({ length: Math.max(0, Math.floor(count)) }, (_, i) => id(first + i * size));
    });
}
