/** Bytes as QR alphanumeric characters, two bytes in three (RFC 9285). Survives every reader,
 *  because no character set is involved. */
const alphabet = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';

export function toBase45(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 2) {
    const pair = i + 1 < bytes.length;
    let rest = pair ? bytes[i]! * 256 + bytes[i + 1]! : bytes[i]!;
    for (let digits = pair ? 3 : 2; digits > 0; digits--) {
      text += alphabet[rest % 45];
      rest = Math.floor(rest / 45);
    }
  }
  return text;
}

/** Null for anything that `toBase45` cannot have written. */
export function fromBase45(text: string): Uint8Array | null {
  if (text.length % 3 === 1) return null;
  const bytes: number[] = [];
  for (let i = 0; i < text.length; i += 3) {
    const digits = Array.from(text.slice(i, i + 3), (char) => alphabet.indexOf(char));
    if (digits.includes(-1)) return null;
    const value = digits.reduceRight((sum, digit) => sum * 45 + digit, 0);
    if (value > (digits.length === 3 ? 0xffff : 0xff)) return null;
    if (digits.length === 3) bytes.push(value >> 8);
    bytes.push(value & 0xff);
  }
  return Uint8Array.from(bytes);
}
