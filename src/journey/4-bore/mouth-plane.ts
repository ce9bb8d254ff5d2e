import type { RingEdges } from './ring-edges';
import { ringShare } from './rings';

/** The rim and the body's outer edge as rings about one middle: where along the view the mouth lies. Millimetres of
 *  the view. */
export interface MouthRings {
  /** How far the mouth's middle lies from the start, along the direction given. */
  readonly shift: number;
  readonly rim: number;
  readonly rimShare: number;
  readonly outer: number;
  readonly outerShare: number;
}

/** Chamfers reach the major diameter or up to a twentieth beyond (DIN 76-1 has 1.05 d at most; from memory): the rim
 *  over the major radius, and depth of thread over pitch, midway between those of 60° and 55°. */
const chamfered = 1.025;
const threadDepth = 0.57;
/** Rim by radius and pitch of the crests, which are known to about 2 %; how much that counts against the share of a
 *  ring on edges. */
const uRim = 0.03;
const rimTrust = 0.1;
const rimRatios = { from: 0.9, to: 1.12 };
/** The outer edge of the face over the rim's radius. */
const outerRatios = { from: 1.12, to: 2 };
const mostShift = 0.35;

const rimOf = (crestRadius: number, pitch: number): number =>
  chamfered * (crestRadius + threadDepth * pitch);

/** Radius over the crests behind a rim, by how threads are chamfered. */
export const crestsBehind = (rim: number, pitch: number): number =>
  rim / chamfered - threadDepth * pitch;

/** A ring at some depth and the mouth's lie on one line through the camera's foot, when the axis is square to the
 *  plane. Along it the rim and the face's outer edge are sought together: each ring of the thread is as good a
 *  rim, but none of them has the outer edge about its middle. */
export function mouthRings(
  edges: RingEdges,
  [x, y]: readonly [number, number],
  toward: readonly [number, number],
  { radius, pitch }: { readonly radius: number; readonly pitch: number },
): MouthRings {
  let best: MouthRings | null = null;
  let most = Number.NEGATIVE_INFINITY;
  const hop = 0.02 * radius;
  const usual = rimOf(radius, pitch);
  const prior = (rim: number) => -0.5 * rimTrust * ((rim / usual - 1) / uRim) ** 2;
  for (let shift = -mostShift * radius; shift <= mostShift * radius; shift += hop) {
    const at = [x + shift * toward[0], y + shift * toward[1]] as const;
    const rim = bestRing(edges, at, rimRatios, usual, prior);
    const outer = bestRing(edges, at, outerRatios, rim.radius);
    if (rim.worth + outer.worth <= most) continue;
    most = rim.worth + outer.worth;
    best = {
      shift,
      rim: rim.radius,
      rimShare: rim.share,
      outer: outer.radius,
      outerShare: outer.share,
    };
  }
  return best as MouthRings;
}

function bestRing(
  edges: RingEdges,
  [x, y]: readonly [number, number],
  ratios: { readonly from: number; readonly to: number },
  unit: number,
  prior: (radius: number) => number = () => 0,
) {
  let best = { radius: unit, share: -1, worth: Number.NEGATIVE_INFINITY };
  const hop = Math.max(0.5 / edges.pxPerMm, 0.012 * unit);
  for (let radius = ratios.from * unit; radius <= ratios.to * unit; radius += hop) {
    const share = ringShare(edges, x, y, radius);
    const worth = share + prior(radius);
    if (worth > best.worth) best = { radius, share, worth };
  }
  return best;
}
