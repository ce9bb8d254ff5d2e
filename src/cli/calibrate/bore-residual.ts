import { readPhoto } from '../../journey/1-photo/read-photo';
import { findReference } from '../../journey/2-reference/find-reference';
import type { Reference } from '../../journey/2-reference/reference';
import { findFitting } from '../../journey/3-find/find-fitting';
import type { BoreTraits } from '../../journey/4-bore/bore-odds';
import { findBore, mouthGuesses } from '../../journey/4-bore/find-bore';
import type { PlacedBore } from '../../journey/4-bore/placed-bore';
import { uncheckedPrint } from '../../journey/5-measurement/uncertainty';
import { defaultOptions } from '../../journey/identification';
import type { Tools } from '../../journey/identify';
import type { Case } from '../accuracy/cases';
import type { Truth } from '../accuracy/truth';

/** A bore that was seen on a photo, male or female, and what the truth says of it. */
export interface BoreSeen {
  readonly name: string;
  readonly pose: PlacedBore['pose'];
  readonly right: boolean;
  /** Of each period weighed, the likeliest first. */
  readonly periods: readonly { readonly right: boolean; readonly traits: BoreTraits }[];
  /** Null unless a thread of about this period is seen at this mouth, more likely than not. */
  readonly off: BoreOff | null;
}

/** Relative errors, but for the height; those of pitch and diameter hold for the true height. */
export interface BoreOff {
  readonly pitch: number;
  readonly diameter: number;
  readonly heightMm: { readonly error: number; readonly u: number; readonly value: number };
}

export async function boresSeen({ truth, bytes }: Case, tools: Tools): Promise<BoreSeen[]> {
  const photo = await readPhoto(new AbortController().signal, bytes, tools.decoders);
  if (!photo.ok) return [];
  const scale = { x: 1, y: 1, u: uncheckedPrint };
  const found = findReference(photo.value, tools.vision, scale, defaultOptions.reference);
  if (!found.ok) return [];
  const { grey } = photo.value;
  const fitting = findFitting(grey, found.value, tools.vision);
  if (!fitting.ok) return [];
  const { camera } = found.value;
  const { usual, others } = mouthGuesses(camera, fitting.value);
  const placed = findBore({ grey, camera }, [...usual, ...others]);
  return placed ? [seen(placed, found.value, truth)] : [];
}

/** A thread's period within this is the true one; a multiple or a chance pattern is further away. */
const samePeriod = 0.04;
/** Beyond this another period was taken, which is told as such. */
const otherPeriod = 0.2;

function seen(placed: PlacedBore, { camera }: Reference, truth: Truth): BoreSeen {
  const { seat, scale, pose, mouth, height, crestsMm } = placed;
  const { minor_mm: minorMm } = truth;
  const [x, y, z] = truth.axis_p0;
  const eye = camera.centre;
  const range = (p: readonly number[]) => Math.hypot(p[0] - eye[0], p[1] - eye[1], p[2] - eye[2]);
  const trueMouth = [92 + x, 68 - y, -z];
  // Lengths over what they would be at the true mouth's distance.
  const nearer = range(trueMouth) / range(mouth);
  const offMm = Math.hypot(...trueMouth.map((v, i) => v - (eye[i] + nearer * (mouth[i] - eye[i]))));
  const right =
    minorMm !== undefined &&
    truth.pose === pose &&
    offMm < 0.15 * minorMm &&
    Math.abs((2 * seat.bore.radiusMm * scale * nearer) / minorMm - 1) < 0.1;
  const ratio = (periodMm: number) => (periodMm * scale * nearer) / truth.pitch_mm;
  const periods = seat.periods.map(({ periodMm, traits }) => ({
    right: right && Math.abs(ratio(periodMm) - 1) < samePeriod,
    traits,
  }));
  const pitchMm = seat.periods[0].periodMm * scale * nearer;
  return {
    name: truth.name,
    pose,
    right: periods[0].right,
    periods,
    off:
      minorMm !== undefined &&
      truth.pose === pose &&
      seat.odds > 0 &&
      Math.abs(ratio(seat.periods[0].periodMm) - 1) < otherPeriod
        ? {
            pitch: pitchMm / truth.pitch_mm - 1,
            diameter: (2 * crestsMm * nearer) / minorMm - 1,
            heightMm: { error: height.value - z, u: height.u, value: height.value },
          }
        : null,
  };
}
