import type { Estimate } from '../../quantity/estimate';
import * as portable from '../../quantity/portable-math';
import type { Thread } from '../../standards/thread';
import { threads } from '../../standards/threads';

/** What an outline may look like between its crests, in pitches: what a fit takes for given about it. */
export interface ThreadForm {
  /** Crest flat; wear and burrs widen it. */
  readonly flat: Estimate;
  /** Radius of the rounding between flat and flanks. */
  readonly rounding: number;
  readonly depth: Estimate;
  readonly halfAngleRad: number;
}

const degrees = Math.PI / 180;

/** ISO 68-1 and ASME B1.1: flats of p/8 as made, somewhat more as photographed. */
const flatCrests: ThreadForm = {
  flat: { value: 0.14, u: 0.05 },
  rounding: 0,
  depth: { value: 0.61, u: 0.05 },
  halfAngleRad: 30 * degrees,
};
/** ISO 228-1 and ISO 7-1: rounded at 0.137 p, 0.640 p deep. */
const roundCrests: ThreadForm = {
  flat: { value: 0.02, u: 0.04 },
  rounding: 0.137329,
  depth: { value: 0.64, u: 0.05 },
  halfAngleRad: 27.5 * degrees,
};
/** ASME B1.20.1: cut off by 0.033 p at least, and up to 0.07 p or so in these sizes (from memory), so
 *  flats of 0.04 to 0.08 p; 0.8 p deep at most. */
const sharpCrests: ThreadForm = {
  flat: { value: 0.06, u: 0.03 },
  rounding: 0,
  depth: { value: 0.74, u: 0.05 },
  halfAngleRad: 30 * degrees,
};

/** While pitch and diameter are not known yet. */
export const anyForm: ThreadForm = { ...flatCrests, halfAngleRad: 29 * degrees };

/** How closely pitch and diameter are known when the form is asked: with the wrong form the diameter
 *  may be off by some hundredths of a pitch. */
const known = { pitch: 0.004, major: 0.006 };
/** Crests as made and worn lie below basic by up to so many pitches; on a taper anywhere between the
 *  small end and the hex, so many times the diameter either way. */
const below = 0.25;
const taperReach = 0.03;
/** Below this share of the belief a form is not tried. */
const leastShare = 0.1;
/** Straight pipe threads with flat crests are seldom met beside rounded ones (common practice). */
const seldom: Readonly<Record<string, number>> = { NPSM: 0.1 };

/** Forms of the threads in the tables that pitch, diameter and taper leave, with their shares. */
export function formsNear(
  pitchMm: number,
  majorMm: number,
  taper: Estimate | null,
): { readonly form: ThreadForm; readonly share: number }[] {
  const shares = new Map<ThreadForm, number>();
  let all = 0;
  for (const thread of threads) {
    if (!thread.separable) continue;
    const weight = (seldom[thread.series] ?? 1) * likelihood(thread, pitchMm, majorMm, taper);
    const form = formOf(thread);
    shares.set(form, (shares.get(form) ?? 0) + weight);
    all += weight;
  }
  if (!(all > 1e-4)) return [{ form: anyForm, share: 1 }];
  const kept = [...shares]
    .map(([form, weight]) => ({ form, share: weight / all }))
    .filter(({ share }) => share > leastShare);
  const left = kept.reduce((sum, { share }) => sum + share, 0);
  return kept.map(({ form, share }) => ({ form, share: share / left }));
}

function likelihood(
  { pitchMm, basicMajorMm, taper }: Thread,
  pitchSeen: number,
  majorSeen: number,
  taperSeen: Estimate | null,
): number {
  const z = [(pitchSeen / pitchMm - 1) / known.pitch];
  const reach = taper > 0 ? taperReach * basicMajorMm : 0;
  const over = majorSeen - basicMajorMm - reach;
  const under = basicMajorMm - below * pitchMm - reach - majorSeen;
  z.push(Math.max(0, over, under) / (known.major * basicMajorMm));
  if (taperSeen) z.push((taperSeen.value - taper) / Math.hypot(taperSeen.u, 0.005));
  return portable.exp(-0.5 * z.reduce((sum, v) => sum + v * v, 0));
}

function formOf({ system, flankAngleDeg, taper }: Thread): ThreadForm {
  if (flankAngleDeg === 55) return roundCrests;
  return system === 'NPT' && taper > 0 ? sharpCrests : flatCrests;
}
