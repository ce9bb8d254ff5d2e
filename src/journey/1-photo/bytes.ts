/** Reading numbers out of untrusted bytes: out of range reads are NaN, and NaN fails every check. */
export interface ByteReader {
  readonly length: number;
  u8(at: number): number;
  u16(at: number): number;
  u32(at: number): number;
}

export function reader(bytes: Uint8Array, order: 'big' | 'little'): ByteReader {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const little = order === 'little';
  const fits = (at: number, size: number) => at >= 0 && at + size <= bytes.length;
  return {
    length: bytes.length,
    u8: (at) => (fits(at, 1) ? view.getUint8(at) : Number.NaN),
    u16: (at) => (fits(at, 2) ? view.getUint16(at, little) : Number.NaN),
    u32: (at) => (fits(at, 4) ? view.getUint32(at, little) : Number.NaN),
  };
}

export function textAt(bytes: Uint8Array, at: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + length));
}
