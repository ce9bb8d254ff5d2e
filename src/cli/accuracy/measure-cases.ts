import {
  defaultOptions,
  type Identification,
  type MeasureOptions,
} from '../../journey/identification';
import { identifyPhoto } from '../../journey/identify';
import { nodeDecoders } from '../node-decoders';
import { loadNodeVision } from '../node-vision';
import type { LazyCase } from './cases';
import { type Score, score } from './score';

/** Scores in the order of the cases; `bars` holds for photos whose truth gives none. */
export async function measureCases(
  cases: readonly LazyCase[],
  bars: MeasureOptions['bars'],
  onScore: (score: Score, answer: Identification) => void,
): Promise<void> {
  const tools = { vision: await loadNodeVision(), decoders: nodeDecoders };
  const { signal } = new AbortController();
  for (const next of cases) {
    const { truth, bytes } = await next.load();
    const options = { ...defaultOptions, gender: 'auto' as const, bars: truth.bars ?? bars };
    const began = performance.now();
    const answer = await identifyPhoto(signal, bytes, options, tools, () => {});
    const scored = score(truth, answer);
    onScore({ ...scored, totalMs: performance.now() - began }, answer);
  }
}
