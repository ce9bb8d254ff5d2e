import learnt from './allowances.json';

/** What speaks for a bore with a period as its pitch, each a logarithm: the share of the wall that climbs with it, how
 *  far the axis would lie from the ring's middle, its size for a thread of this diameter, that it is no multiple of
 *  another, and that there is a mouth. */
export interface BoreTraits {
  readonly score: number;
  readonly turn: number;
  readonly size: number;
  readonly multiple: number;
  readonly mouth: number;
}

export interface BoreWeights extends BoreTraits {
  readonly base: number;
}

/** Set by `calibrate-bores` from bores of which the truth tells whether they are right. */
const boreWeights: BoreWeights = learnt.odds;

/** Logarithm of the odds that a bore is right. */
export const boreOdds = (t: BoreTraits, w: BoreWeights = boreWeights): number =>
  w.base +
  w.score * t.score +
  w.turn * t.turn +
  w.size * t.size +
  w.multiple * t.multiple +
  w.mouth * t.mouth;
