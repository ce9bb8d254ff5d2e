import { middleValue } from '../../quantity/order';
import * as portable from '../../quantity/portable-math';
import type { Field } from '../../scale-card/geometry';
import type { Vision } from '../../vision/vision';
import { sampleLinear } from '../2-card-pose/sampling';
import type { Reference } from '../2-reference/reference';
import type { RulePhoto } from '../2-reference/rule-photo';
import { ruleReference } from '../2-reference/rule-reference';
import { besideRuleView, inUnit, suspects } from '../3-find/rule-suspects';
import { type Extent, photoAt } from '../4-thread-signal/axis-frame';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import type { Corrections } from '../identification';
import { alongDrawn, findThreads } from './find-threads';
import type { SeatedThread } from './seat-thread';
import { enough, threadSearch } from './thread-search';
import type { ThreadGuess } from './threads-on-axis';

/** A thread seated beside a rule, in the unit and on the reference that it was found in. */
export interface SeatBesideRule {
  readonly seat: SeatedThread;
  readonly reference: Reference;
  readonly unitMm: number;
  readonly field: Field;
}

/** What takes the part of a millimetre: earlier stages know threads of 8 to 60 mm, screws beside a rule are of 3 up.
 *  Millimetres first: the other units are for what does not fit them. */
const unitsMm = [1, 0.5, 2];
/** Edges this near belong to one thing. A thread that lies close to something else is seen alone only
 *  when the gap is small, and falls to pieces when its outline has faded: hence the second. */
const gapsMm = [2.5, 1];

/** The likeliest thread of all that may carry one, whatever its unit; null where nothing repeats. */
export function seatBesideRule(
  photo: RulePhoto,
  drawn: Corrections['axis'],
  vision: Vision,
): SeatBesideRule | null {
  const { grey, pxPerMm } = photo;
  const view = besideRuleView(grey, ruleReference(photo, 1), pxPerMm);
  const seen = gapsMm.map((gapMm) => suspects(view, vision, gapMm));
  let best: SeatBesideRule | null = null;
  for (const unitMm of unitsMm) {
    const reference = ruleReference(photo, unitMm);
    const { camera } = reference;
    for (const list of seen) {
      const parts = list
        .filter(({ widthMm }) => suits(unitMm, widthMm))
        .map((one) => inUnit(one, unitMm));
      const found = findThreads(grey, reference, parts);
      const guesses = drawn ? alongDrawn(grey, camera, found, drawn) : found;
      const seat = threadSearch(grey, camera, shortened(guesses), (tried) =>
        isDivision(tried, photo, unitMm) ? division : 0,
      )();
      if (!seat || (best && seat.odds <= best.seat.odds)) continue;
      best = { seat, reference, unitMm, field: fieldAround({ grey, camera }, seat) };
      if (seat.odds > enough) return best;
    }
  }
  return best;
}

/** Where a pattern ends is known to a wave. A fitting's thread ends at a relief or a hex that look otherwise; the plain
 *  head or shank of a screw does not, and looks at the limbs there find none. */
const wavesShorter = 1;
const fewestWaves = 5;

/** Guesses with a wave less at either end, where enough is left. */
function* shortened(guesses: Iterable<ThreadGuess>): Generator<ThreadGuess> {
  for (const guess of guesses) {
    const { fromS, toS } = guess.zone;
    const waveMm = guess.periods[0].periodMm;
    const spare = Math.max(0, (toS - fromS - fewestWaves * waveMm) / 2);
    const by = Math.min(spare, wavesShorter * waveMm);
    yield { ...guess, zone: { fromS: fromS + by, toS: toS - by } };
  }
}

/** Small threads are sought in half millimetres, large ones in double ones. */
const suits = (unitMm: number, widthMm: number) =>
  unitMm === 1 ? widthMm > 3.5 : unitMm < 1 ? widthMm < 16 : widthMm > 14;

/** The rule's other edge is divided too: parallel to the one that was marked, and by its unit exactly. */
const parallelRad = 0.035;
const sameUnit = 0.012;
const divisionsMm = [0.5, 1, 2, 25.4 / 8, 25.4 / 16, 25.4 / 32];
/** Logarithm of how much likelier a rule shows this than a thread: every second thread is laid along it, and one in
 *  ten has a division of the rule for its pitch (judgement). */
const division = portable.log(1 / 2 / 10);

/** Whether what repeats runs along the rule and may be one of its divisions, in the plane of its face. */
function isDivision(
  { frame, hex, pitchMm }: SeatedThread,
  { strip, distance }: RulePhoto,
  unitMm: number,
): boolean {
  const across = Math.abs(frame.along[0] * strip.along[1] - frame.along[1] * strip.along[0]);
  const rangeMm = distance.mm / unitMm;
  const periodMm = (unitMm * pitchMm * rangeMm) / (rangeMm - hex.heightMm);
  return (
    across < portable.sin(parallelRad) &&
    divisionsMm.some((one) => Math.abs(periodMm / one - 1) < sameUnit)
  );
}

/** Where a thread and the ground beside it are looked at, in its radii. */
const insideAt = 0.6;
const outsideAt = 1.5;
/** On a ground nearly black, metal is the brighter one; on any other it may be either. Linear light, of 255. */
const nearlyBlack = 12;
const brighter = 6;

function fieldAround(photo: PosedPhoto, { frame, zone, crests }: SeatedThread): Field {
  const outside = levelBeside(photo, frame, zone, outsideAt * crests.radiusMm);
  const inside = levelBeside(photo, frame, zone, insideAt * crests.radiusMm);
  return outside < nearlyBlack && inside > outside + brighter ? 'dark' : 'light';
}

/** Middle of the light along the thread, `aside` mm to both sides of its axis. */
function levelBeside(
  { grey, camera }: PosedPhoto,
  frame: SeatedThread['frame'],
  { fromS, toS }: Extent,
  aside: number,
): number {
  const steps = 40;
  const levels = Array.from({ length: steps }, (_, i) => fromS + ((toS - fromS) * i) / steps)
    .flatMap((s) => [aside, -aside].map((r) => photoAt(camera, frame, s, r)))
    .map(([x, y]) => sampleLinear(grey, x, y))
    .filter(Number.isFinite);
  return middleValue(levels) ?? 255;
}
