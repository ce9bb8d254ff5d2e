import { saidOf } from '../../journey/5-end/end-look';
import { saidOfThread } from '../../journey/5-end/thread-look';
import type {
  EndShows,
  ThreadMeasurement,
  ThreadShows,
} from '../../journey/5-measurement/thread-measurement';
import { claimedSeat, coneAngle } from '../../journey/6-candidates/end-seen';
import type { Seat } from '../../journey/6-candidates/reading-choices';
import { conclude } from '../../journey/7-next-reading/conclude';
import type { Measured } from '../../journey/identification';
import type { PhotoPoint } from '../../journey/overlay';
import { findThread } from '../../standards/threads';
import { otherEndOf, type Truth } from './truth';
import { worldAt } from './zone-middle';

/** One threaded end of a part as the truth has it, and what was found of it. */
export interface EndScore {
  readonly measured: boolean;
  /** Relative; null where it was not measured. */
  readonly pitchError: number | null;
  /** The likeliest thread is the true one. */
  readonly leads: boolean;
  /** Its cone's half angle, degrees; null: it has none. */
  readonly coneDeg: number | null;
  /** What lies between its last turn and the hex. */
  readonly base: keyof EndShows['base'];
  readonly shows: EndShows | null;
  readonly profile: keyof ThreadShows['profile'];
  readonly taper: keyof ThreadShows['taper'];
  readonly threadShows: ThreadShows | null;
  /** What the networks said, before it was known how far to trust them: for `npm run calibrate-ends`. */
  readonly said: (ReturnType<typeof saidOf> & Partial<ReturnType<typeof saidOfThread>>) | null;
  /** What the photo was said to show. */
  readonly claimed: Seat | null;
  /** Measured less true, degrees. */
  readonly angleError: number | null;
  /** Relative, and over its standard uncertainty. */
  readonly acrossFlats: { readonly error: number; readonly z: number } | null;
}

/** Every end that the truth names; none where it does not say what the end looks like. */
export function endScores(truth: Truth, answer: Measured | null): EndScore[] {
  const ends = truth.nose === undefined ? [] : trueEnds(truth);
  const found = answer ? foundEnds(ends, answer) : [];
  return ends.map((end, i) => scoreOf(end, found[i] ?? null));
}

/** The truth of the end that the answer's own measurement is of: of an adaptor, the nearer one. */
export const endMeasured = (truth: Truth, answer: Measured): Truth =>
  nearest(trueEnds(truth), answer, answer.overlay.axis);

function trueEnds(truth: Truth): Truth[] {
  const other = otherEndOf(truth);
  return other ? [truth, other] : [truth];
}

/** Measurements in the order of the true ends: each goes to the nearest. */
function foundEnds(ends: readonly Truth[], answer: Measured) {
  const out: (ThreadMeasurement | null)[] = ends.map(() => null);
  if (ends.length === 0) return out;
  for (const { measurement, axis } of [
    { measurement: answer.measurement, axis: answer.overlay.axis },
    ...answer.otherEnds,
  ])
    out[ends.indexOf(nearest(ends, answer, axis))] ??= measurement;
  return out;
}

/** The end whose thread's middle lies nearest to that of an axis in the photo; the first where there is none. */
function nearest(
  ends: readonly Truth[],
  answer: Measured,
  axis: readonly PhotoPoint[] | null,
): Truth {
  const [first] = ends as readonly [Truth];
  if (ends.length === 1 || !axis) return first;
  const middle = [0, 1].map((i) => (axis[0]![i]! + axis[1]![i]!) / 2) as [number, number];
  const [x, y] = worldAt(first, answer, middle, first.axis_p0[2]);
  const away = ends.map(({ axis_p0: p0, axis_p1: p1 }) =>
    Math.hypot((p0[0] + p1[0]) / 2 - x, (p0[1] + p1[1]) / 2 - y),
  );
  return ends[away.indexOf(Math.min(...away))]!;
}

/** Renders that do not say it of each part have a ring on all of these. */
const ringedFamilies: ReadonlySet<string> = new Set(['O-ring stud', 'ISO 6149 stud']);

function scoreOf(end: Truth, found: ThreadMeasurement | null): EndScore {
  const coneDeg = end.nose === 'cone' ? (end.nose_half_angle_deg ?? null) : null;
  const ringed = end.stud_oring ?? ringedFamilies.has(end.family ?? '');
  const base = ringed ? 'o-ring' : end.collar ? 'shoulder' : 'none';
  const whitworth = end.system === 'G' || end.system === 'R';
  const profile = whitworth ? '55' : end.system === 'NPT' ? 'npt' : '60';
  const taper = end.taper > 0 ? 'tapered' : 'straight';
  if (!found)
    return {
      measured: false,
      pitchError: null,
      leads: false,
      coneDeg,
      base,
      shows: null,
      profile,
      taper,
      threadShows: null,
      said: null,
      claimed: null,
      angleError: null,
      acrossFlats: null,
    };
  const top = conclude(found, []).threads.find(({ system }) => system !== null);
  const row = top?.system ? findThread(top.designation) : null;
  const angle = coneAngle(found);
  const flats = found.hexAcrossFlatsMm;
  return {
    measured: true,
    pitchError: found.pitchMm.value / end.pitch_mm - 1,
    leads:
      row?.system === end.system &&
      Math.abs(row.pitchMm - end.pitch_mm) < 1e-3 &&
      Math.abs(row.basicMajorMm - end.basic_major_mm) < 0.05,
    coneDeg,
    base,
    shows: found.endShows ?? null,
    profile,
    taper,
    threadShows: found.threadShows ?? null,
    said: found.endShows
      ? { ...saidOf(found.endShows), ...(found.threadShows && saidOfThread(found.threadShows)) }
      : null,
    claimed: claimedSeat(found),
    angleError: angle && coneDeg !== null ? angle.value - coneDeg : null,
    acrossFlats:
      flats && end.hex_af_mm !== undefined
        ? {
            error: flats.value / end.hex_af_mm - 1,
            z: (flats.value - end.hex_af_mm) / flats.u,
          }
        : null,
  };
}
