import * as portable from '../../quantity/portable-math';
import { leanAt } from '../4-thread-signal/axis-frame';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import type { EndShows } from '../5-measurement/thread-measurement';
import type { ThreadSolution } from '../5-measurement/thread-solution';
import learnt from './allowances.json';
import { baseKinds, endLogits, noseKinds } from './end-network';
import { endPatches } from './end-patch';

/** Set by `npm run calibrate-ends`: how much less sure the networks are to be taken than they say, and how often they
 *  are wrong whatever they say. */
export interface Trust {
  readonly temperature: number;
  readonly mistaken: number;
}

/** What the networks say of an end, before it is known how far they can be trusted. */
export interface EndLogits {
  readonly nose: Float64Array;
  readonly base: Float64Array;
}

type Looked = Pick<ThreadSolution, 'frame' | 'zone'> & {
  readonly fit: Pick<ThreadSolution['fit'], 'crestRadiusMm'>;
};

export function looked(photo: PosedPhoto, { frame, zone, fit }: Looked): EndLogits {
  const { nose, base } = endPatches(photo, frame, zone, fit.crestRadiusMm);
  return {
    nose: endLogits('nose', nose, leanAt(photo.camera, frame, zone.fromS)),
    base: endLogits('base', base, leanAt(photo.camera, frame, zone.toS)),
  };
}

/** What a photo shows before the thread's first turn and after its last: how likely each kind is, were all as
 *  common. */
export function endLook(photo: PosedPhoto, solution: Looked): EndShows {
  const { nose, base } = looked(photo, solution);
  return {
    nose: named(noseKinds, trusted(nose, learnt.nose)),
    base: named(baseKinds, trusted(base, learnt.base)),
  };
}

/** Shares of the kinds, adding to 1. */
export function trusted(logits: ArrayLike<number>, { temperature, mistaken }: Trust): number[] {
  const all = Array.from(logits);
  const most = all.reduce((a, b) => Math.max(a, b));
  const each = all.map((v) => portable.exp((v - most) / temperature));
  const sum = each.reduce((a, b) => a + b, 0);
  return each.map((v) => (1 - mistaken) * (v / sum) + mistaken / each.length);
}

/** The logits behind such shares, but for a constant: what `trusted` would make the same of. */
export function untrusted(shares: readonly number[], { temperature, mistaken }: Trust): number[] {
  return shares.map((share) => {
    const own = (share - mistaken / shares.length) / (1 - mistaken);
    return temperature * portable.log(Math.max(1e-9, own));
  });
}

/** What the networks said, from what was made of it with the trust of today. */
export const saidOf = ({ nose, base }: EndShows) => ({
  nose: untrusted(
    noseKinds.map((kind) => nose[kind]),
    learnt.nose,
  ),
  base: untrusted(
    baseKinds.map((kind) => base[kind]),
    learnt.base,
  ),
});

export const named = <K extends string>(kinds: readonly K[], shares: readonly number[]) =>
  Object.fromEntries(kinds.map((kind, i) => [kind, shares[i]])) as Record<K, number>;
