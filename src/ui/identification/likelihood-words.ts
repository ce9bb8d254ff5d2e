import { t } from '../language/language';

/** Bounds are ours; the number always stands beside the word. One of many that share the whole
 *  evenly is possible, however many they are: only what stands far behind the likeliest is not. */
export function likelihoodWord(probability: number, likeliest = 1): string {
  const words = t().identification.words;
  if (probability >= 0.99) return words.certain;
  if (probability >= 0.9) return words.likely;
  if (probability >= 0.6) return words.probable;
  if (probability >= 0.2 || probability >= 0.5 * likeliest) return words.possible;
  if (probability >= 0.02 || probability >= 0.1 * likeliest) return words.unlikely;
  return words.hardly;
}
