/** Inner 4 × 4 modules of the card's markers, ids 0–33, row by row, first module in the highest bit;
 *  1 is white. Every marker has one black module all around.
 *  Source: OpenCV 4.12, `DICT_4X4_50` (objdetect, predefined_dictionaries.hpp), read out with
 *  `generateImageMarker`; tests/scale-card/dictionary.test.ts compares them again. */
const patterns: readonly number[] = [
  0xb532, 0x0f9a, 0x332d, 0x9946, 0x549e, 0x79cd, 0x9e2e, 0xc4f2, 0xfeda, 0xcf56, 0xf991, 0x11a7,
  0x0eb7, 0x2a0f, 0x24b1, 0x263e, 0x4665, 0x6600, 0x6c5e, 0x76af, 0x868b, 0xb02b, 0xccd5, 0xdd82,
  0xfe47, 0x9471, 0xace4, 0xa554, 0x2123, 0x346f, 0x4415, 0x57b2, 0x9ecf, 0xf0cb,
];

export const modulesPerSide = 6;

/** Whether a module is printed. Rows and columns 0…5 include the black border. */
export function isBlack(id: number, row: number, column: number): boolean {
  const pattern = patterns[id];
  if (pattern === undefined) throw new RangeError(`no marker ${id} on the card`);
  const inner = modulesPerSide - 2;
  if (row < 1 || row > inner || column < 1 || column > inner) return true;
  return ((pattern >> (15 - (row - 1) * inner - (column - 1))) & 1) === 0;
}
