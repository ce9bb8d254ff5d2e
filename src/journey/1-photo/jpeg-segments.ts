export interface JpegSegment {
  readonly marker: number;
  /** Whole, from its 0xff on. */
  readonly bytes: Uint8Array;
  /** The entropy-coded data after a start of scan. */
  readonly scan: Uint8Array | null;
}

export const jpegMarker = {
  soi: 0xd8,
  eoi: 0xd9,
  sos: 0xda,
  dqt: 0xdb,
  dnl: 0xdc,
  dri: 0xdd,
  dht: 0xc4,
  dac: 0xcc,
  jpg: 0xc8,
  app1: 0xe1,
  app14: 0xee,
} as const;

/** SOF0 to SOF15, without the three codes among them that mean something else. */
export function isFrameHeader(marker: number): boolean {
  const { dht, dac, jpg } = jpegMarker;
  return marker >= 0xc0 && marker <= 0xcf && marker !== dht && marker !== dac && marker !== jpg;
}

/** Segments after the start of the image, in order (ITU-T T.81, Annex B). Returns true at the end of the
 *  image, false where the file breaks off or no segment begins. */
export function* jpegSegments(file: Uint8Array): Generator<JpegSegment, boolean> {
  let at = 2;
  while (at + 4 <= file.length || file[at + 1] === jpegMarker.eoi) {
    if (file[at] !== 0xff) return false;
    const marker = file[at + 1]!;
    if (marker === 0xff) {
      at++; // fill byte
      continue;
    }
    if (marker === jpegMarker.eoi) return true;
    const length = (file[at + 2]! << 8) | file[at + 3]!;
    const end = at + 2 + length;
    if (length < 2 || end > file.length) return false;
    const next = marker === jpegMarker.sos ? endOfScan(file, end) : end;
    const scan = marker === jpegMarker.sos ? file.subarray(end, next) : null;
    yield { marker, bytes: file.subarray(at, end), scan };
    at = next;
  }
  return false;
}

/** First marker after entropy-coded data that is neither a stuffed zero nor a restart. */
function endOfScan(file: Uint8Array, from: number): number {
  for (
    let i = file.indexOf(0xff, from);
    i >= 0 && i + 1 < file.length;
    i = file.indexOf(0xff, i + 1)
  ) {
    const next = file[i + 1]!;
    if (next === 0 || (next >= 0xd0 && next <= 0xd7) || next === 0xff) continue;
    return i;
  }
  return file.length;
}
