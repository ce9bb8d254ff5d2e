import type { ThreadMeasurement } from '../../journey/5-measurement/thread-measurement';
import { claimedSeat } from '../../journey/6-candidates/end-seen';
import type { Seat } from '../../journey/6-candidates/reading-choices';
import { conclude } from '../../journey/7-next-reading/conclude';
import type { Measured } from '../../journey/identification';
import type { PhotoPoint } from '../../journey/overlay';
import { findThread } from '../../standards/threads';
import type { Truth } from './truth';
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
  /** What the photo was said to show. */
  readonly claimed: Seat | null;
  /** Measured less true, degrees. */
  readonly angleError: number | null;
  /** Relative, and over its standard uncertainty. */
  readonly acrossFlats: { readonly error: number; readonly z: number } | null;
}

interface TrueEnd {
  readonly system: string;
  readonly basicMajorMm: number;
  readonly pitchMm: number;
  readonly coneDeg: number | null;
  /** World frame, mm. */
  readonly middle: readonly [number, number];
}

/** Every end that the truth names; none where it does not say what the end looks like. */
export function endScores(truth: Truth, answer: Measured | null): EndScore[] {
  const ends = trueEnds(truth);
  const found = answer ? foundEnds(truth, answer, ends) : [];
  return ends.map((end, i) => scoreOf(truth, end, found[i] ?? null));
}

function trueEnds(truth: Truth): TrueEnd[] {
  if (truth.nose === undefined) return [];
  const first: TrueEnd = {
    system: truth.system,
    basicMajorMm: truth.basic_major_mm,
    pitchMm: truth.pitch_mm,
    coneDeg: truth.nose === 'cone' ? (truth.nose_half_angle_deg ?? null) : null,
    middle: between(truth.axis_p0, truth.axis_p1, 0.5),
  };
  if (!truth.other || !truth.axis_rear) return [first];
  const { other } = truth;
  const length = Math.hypot(
    truth.axis_rear[0] - truth.axis_p0[0],
    truth.axis_rear[1] - truth.axis_p0[1],
  );
  const back = other.thread_len_mm / 2 / length;
  return [
    first,
    {
      system: other.system,
      basicMajorMm: other.basic_major_mm,
      pitchMm: other.pitch_mm,
      coneDeg: null,
      middle: between(truth.axis_rear, truth.axis_p0, back),
    },
  ];
}

const between = (a: readonly number[], b: readonly number[], share: number) =>
  [0, 1].map((i) => a[i]! + share * (b[i]! - a[i]!)) as [number, number];

/** Measurements in the order of the true ends: each goes to the nearest. */
function foundEnds(truth: Truth, answer: Measured, ends: readonly TrueEnd[]) {
  const out: (ThreadMeasurement | null)[] = ends.map(() => null);
  const measured: { measurement: ThreadMeasurement; axis: readonly PhotoPoint[] | null }[] = [
    { measurement: answer.measurement, axis: answer.overlay.axis },
    ...answer.otherEnds,
  ];
  for (const { measurement, axis } of measured) {
    const [first] = ends;
    if (!first) continue;
    if (ends.length === 1 || !axis) {
      out[0] ??= measurement;
      continue;
    }
    const at = between(axis[0]!, axis[1]!, 0.5);
    const [x, y] = worldAt(truth, answer, at, truth.axis_p0[2]);
    const away = ends.map(({ middle }) => Math.hypot(middle[0] - x, middle[1] - y));
    out[away.indexOf(Math.min(...away))] ??= measurement;
  }
  return out;
}

function scoreOf(truth: Truth, end: TrueEnd, found: ThreadMeasurement | null): EndScore {
  const { coneDeg } = end;
  if (!found)
    return {
      measured: false,
      pitchError: null,
      leads: false,
      coneDeg,
      claimed: null,
      angleError: null,
      acrossFlats: null,
    };
  const top = conclude(found, []).threads.find(({ system }) => system !== null);
  const row = top?.system ? findThread(top.designation) : null;
  const angle = found.noseHalfAngleDeg;
  const flats = found.hexAcrossFlatsMm;
  return {
    measured: true,
    pitchError: found.pitchMm.value / end.pitchMm - 1,
    leads:
      row?.system === end.system &&
      Math.abs(row.pitchMm - end.pitchMm) < 1e-3 &&
      Math.abs(row.basicMajorMm - end.basicMajorMm) < 0.05,
    coneDeg,
    claimed: claimedSeat(angle),
    angleError: angle && coneDeg !== null ? angle.value - coneDeg : null,
    acrossFlats: flats
      ? {
          error: flats.value / truth.hex_af_mm - 1,
          z: (flats.value - truth.hex_af_mm) / flats.u,
        }
      : null,
  };
}
