/** Every word typed must begin some word of the row as it is shown: '-16' finds the dash size,
 *  not 11/16-16. */
export function isFound(typed: string, row: string): boolean {
  const shown = wordsOf(row);
  return wordsOf(typed).every((word) => shown.some((one) => one.startsWith(word)));
}

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[\s,;:()]+/)
    .filter(Boolean);
