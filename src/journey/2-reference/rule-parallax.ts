import type { Estimate } from '../../quantity/estimate';
import * as portable from '../../quantity/portable-math';

/** Of the camera from the rule's face. */
export interface Distance {
  /** What the camera above the photo is put at. */
  readonly mm: number;
  /** Standard uncertainty of its logarithm. */
  readonly uLn: number;
  /** Whether the photo says so; what is merely usual corrects nothing. */
  readonly stated: boolean;
}

/** A phone at a rule and a fitting: 110 to 560 mm in 95 of 100 (common practice). */
export const unknownDistance: Distance = { mm: 250, uLn: 0.4, stated: false };

/** From a focal length that the photo states: with crops and a slanting view within ±20 %. */
export const statedDistance = (mm: number): Distance => ({
  mm,
  uLn: 0.2 / Math.sqrt(3),
  stated: true,
});

/** Half the height of what a fitting rests on over its thread's major diameter, where nothing wider is seen: a
 *  thread or shank that is the largest round comes to 0.5, a hidden hex to 0.85 (ISO 4017 and connectors' wrench
 *  sizes, common practice). */
const overDiameter = { from: 0.5, to: 0.85 };
/** A hex of half width w over its corners holds the axis at 0.87 w, a round head at w; a screw whose point
 *  touches the table leans, and its thread's middle lies halfway down to its own radius. */
const overHalfWidth = { hex: Math.sqrt(3) / 2, round: 0.95 };

/** Height of a thread's axis over the table, from what the photo shows beside a rule: rectangular between
 *  bounds (JCGM 100:2008, 4.3.7). `halfWidthMm` of the widest part, if it is wider than the thread. */
export function axisHeightPrior(majorDiameterMm: number, halfWidthMm: number | null): Estimate {
  const [from, to] =
    halfWidthMm === null
      ? [overDiameter.from * majorDiameterMm, overDiameter.to * majorDiameterMm]
      : [
          (majorDiameterMm / 2 + overHalfWidth.hex * halfWidthMm) / 2,
          overHalfWidth.round * halfWidthMm,
        ];
  return { value: (from + to) / 2, u: (to - from) / (2 * Math.sqrt(3)) };
}

export interface RuleScene {
  /** ln of the camera's distance from the rule's face, mm, and its standard uncertainty. */
  readonly lnDistance: Estimate;
  /** The rule's face over the table: steel rules are 0.5 to 1 mm thick, folding ones up to 3 (common
   *  practice). */
  readonly faceMm: Estimate;
  /** The axis over the table. */
  readonly axisMm: Estimate;
}

/** What a length in the axis's plane has to be multiplied by when it was taken with the scale of the rule's
 *  face: 1 − a/Z, a the axis over the face. Mean and u over what is not known; 1/Z of a distance known
 *  by its logarithm has mean e^(−μ + σ²/2) and relative variance e^σ² − 1. */
export function ruleParallax({ lnDistance, faceMm, axisMm }: RuleScene): Estimate {
  const over = axisMm.value - faceMm.value;
  const uOver = Math.hypot(axisMm.u, faceMm.u);
  const variance = lnDistance.u ** 2;
  const inverse = portable.exp(-lnDistance.value + variance / 2);
  const uInverse = inverse * Math.sqrt(portable.exp(variance) - 1);
  // Of a product of two independent numbers: both vary at once.
  const u = Math.hypot(over * uInverse, inverse * uOver, uInverse * uOver);
  return { value: 1 - over * inverse, u };
}
