import { t } from '../language/language';

/** Bounds are ours; the number always stands beside the word. */
export function likelihoodWord(probability: number): string {
  const words = t().identification.words;
  if (probability >= 0.99) return words.certain;
  if (probability >= 0.9) return words.likely;
  if (probability >= 0.6) return words.probable;
  if (probability >= 0.2) return words.possible;
  if (probability >= 0.02) return words.unlikely;
  return words.hardly;
}
