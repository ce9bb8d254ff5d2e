import type { Estimate } from '../../quantity/estimate';
import * as portable from '../../quantity/portable-math';
import { levels } from '../2-card-pose/edge-profile';
import type { AxisFrame } from '../4-thread-signal/axis-frame';
import { contrast, shapesOfCuts } from '../4-thread-signal/cut-shape';
import type { OutlinePoint, OutlineView } from '../4-thread-signal/outline-edges';
import { fitRimEdge, usualRim } from '../4-thread-signal/rim-edge';
import { crestCuts } from './crest-cuts';
import type { ThreadFit } from './fit-thread';

const shares = [0, 0.15, 0.3, 0.45, 0.6, 0.75];
const blurs = [0.7, 0.85, 1, 1.15, 1.3, 1.5];
/** Focus on the part against focus on the card: blur over the card's. */
const usualBlur = { value: 1.05, u: 0.1 };
/** Profiles beside one another see the same scratches, and no metal keeps to one law: of so many only
 *  one is counted. */
const oneIn = 15;
const stepPx = 0.5;
const inside = 6;
const length = 17;

/** How much of what lies behind it this part's rim mirrors, from the cuts across its crests, where rim
 *  and edge lie square to the cut. The blur is free; both are common to all cuts. Points and fit are in
 *  `frame`. */
export function crestRim(
  view: OutlineView,
  frame: AxisFrame,
  points: readonly OutlinePoint[],
  fit: ThreadFit,
): Estimate {
  const profiles = crestCuts(view, frame, points, fit, {
    leastWeight: 0.5,
    phaseWithin: 0.05,
    stepPx,
    inside,
    length,
  }).map(({ profile }) => profile);
  const { response, mmPerPx, field } = view;
  const usual = usualRim[field];
  const shapes = shapesOfCuts(response);
  const radius = fit.crestRadiusMm / (stepPx * mmPerPx);
  const perPx = 1 / stepPx;
  const costs = shares.map((value) =>
    Math.min(
      ...blurs.map((blur) => {
        const z = (blur - usualBlur.value) / usualBlur.u;
        return profiles.reduce(
          (sum, profile) => {
            const sides = contrast(levels(profile, inside));
            const shape = shapes({ perPx: blur * perPx, radius, ...sides });
            const edge = fitRimEdge(profile, inside, shape, { value, u: 1e-3 });
            return sum + (edge ? (length / 4) * portable.log(edge.misfit + 3e-5) : 5) / oneIn;
          },
          (z * z) / 2,
        );
      }),
    ),
  );
  const least = Math.min(...costs);
  let sum = 0;
  let mean = 0;
  let square = 0;
  costs.forEach((cost, k) => {
    const z = (shares[k] - usual.value) / usual.u;
    const w = portable.exp(least - cost - (z * z) / 2);
    sum += w;
    mean += w * shares[k];
    square += w * shares[k] * shares[k];
  });
  mean /= sum;
  return { value: mean, u: Math.max(0.1, Math.sqrt(square / sum - mean * mean)) };
}
