import {
  defaultOptions,
  type Identification,
  type MeasureOptions,
} from '../../journey/identification';
import { identifyPhoto } from '../../journey/identify';
import { nodeDecoders } from '../node-decoders';
import { loadNodeVision } from '../node-vision';
import { axisByHand } from './axis-by-hand';
import type { LazyCase } from './cases';
import { type Score, score } from './score';

export interface MeasuredAs {
  /** For photos whose truth gives none. */
  readonly bars: MeasureOptions['bars'];
  /** With the axis shown as by hand. */
  readonly along: boolean;
}

/** Scores in the order of the cases. */
export async function measureCases(
  cases: readonly LazyCase[],
  { bars, along }: MeasuredAs,
  onScore: (score: Score, answer: Identification) => void,
): Promise<void> {
  const tools = { vision: await loadNodeVision(), decoders: nodeDecoders };
  const { signal } = new AbortController();
  for (const next of cases) {
    const { truth, bytes } = await next.load();
    const axis = along ? axisByHand(truth) : null;
    const options: MeasureOptions = {
      ...defaultOptions,
      gender: 'auto',
      bars: truth.bars ?? bars,
      corrections: axis && { axis, side: 'both' },
    };
    const began = performance.now();
    const answer = await identifyPhoto(signal, bytes, options, tools, () => {});
    const scored = score(truth, answer);
    onScore({ ...scored, totalMs: performance.now() - began }, answer);
  }
}
