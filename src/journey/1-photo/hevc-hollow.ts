import { readHeifItems } from './heif-boxes';

/** Whether an image of the file, or one of its tiles, was received in part. The decoder fills in what it
 *  cannot read and says nothing of it; of a file that was half received, stretches are zeros, and no HEVC
 *  stream has more than two of them together (ITU-T H.265, 7.4.2). Changed bytes beyond that stay unseen. */
export function isHevcHollow(bytes: Uint8Array): boolean {
  const items = readHeifItems(bytes);
  if (!items) return true;
  const { primary, kinds, place, references } = items;
  const coded = kinds.get(primary) === 'grid' ? references(primary, 'dimg') : [primary];
  const seen = new Set<number>();
  return coded.some((item) => {
    const at = place(item);
    // In several pieces: the decoder's own checks have to do.
    if (!at || seen.has(at.from)) return false;
    seen.add(at.from);
    return hasStretchOfZeros(bytes.subarray(at.from, at.to));
  });
}

/** Longer than any encoder pads with (judgement). */
const longestPad = 32;

function hasStretchOfZeros(bytes: Uint8Array): boolean {
  let zeros = 0;
  for (let at = 0; at < bytes.length; at++) {
    zeros = bytes[at] === 0 ? zeros + 1 : 0;
    if (zeros > longestPad) return true;
  }
  return false;
}
