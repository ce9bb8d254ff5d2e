import * as portable from '../../quantity/portable-math';
import type { AxisFrame } from '../4-thread-signal/axis-frame';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { straighten } from '../4-thread-signal/straightened';

/** A few turns of a thread folded on one pitch, both sides: what a limb looks like whatever its size.
 *  Bins of a twelfth of the pitch across, from `fromR` outwards, a sixteenth along. */
export interface LimbPatch {
  /** Per side: mean over the turns, then spread, of the levelled logarithm of light;
   *  values[(channel·bins + bin)·phases + phase]. */
  readonly left: Float32Array;
  readonly right: Float32Array;
  readonly fromR: number;
  readonly binMm: number;
}

export const limbBins = 80;
export const limbPhases = 16;
export const limbChannels = 2;
export const binsPerPitch = 12;
/** Bins inside the expected radius: metal to level by; the rest is for what lies outside. */
const binsInside = 44;
/** Sub-samples of a cell along and across. */
const sub = 2;
/** Added to linear light (0…255) before its logarithm: noise of a dark pixel. */
const darkLight = 0.7;

/** What to fold: `turns` pitches from `fromS` on. `radiusMm` is where the crests are expected, within about a
 *  pitch or two. */
export interface Fold {
  readonly fromS: number;
  readonly turns: number;
  readonly pitchMm: number;
  readonly radiusMm: number;
}

/** Null where the photo ends. */
export function limbPatch(photo: PosedPhoto, frame: AxisFrame, fold: Fold): LimbPatch | null {
  const binMm = fold.pitchMm / binsPerPitch;
  const fromR = fold.radiusMm - binsInside * binMm;
  const [x, y, z] = frame.left;
  const mirrored = { ...frame, left: [-x, -y, -z] as const };
  const left = folded(photo, frame, fold, fromR);
  const right = folded(photo, mirrored, fold, fromR);
  if (!left || !right) return null;
  level(left, right);
  return { left, right, fromR, binMm };
}

function folded(
  { grey, camera }: PosedPhoto,
  frame: AxisFrame,
  { fromS, turns, pitchMm }: Fold,
  fromR: number,
): Float32Array | null {
  const across = pitchMm / binsPerPitch / sub;
  const along = pitchMm / (limbPhases * sub);
  const columns = turns * limbPhases * sub;
  const rows = limbBins * sub;
  const out = new Float32Array(limbChannels * limbBins * limbPhases);
  const cells = limbBins * limbPhases;
  // One row at a time: steps along and across differ.
  for (let j = 0; j < rows; j++) {
    const r = fromR + (j + 0.5) * across;
    const strip = straighten(
      grey,
      camera,
      frame,
      {
        fromS: fromS + along / 2,
        toS: fromS + along / 2 + (columns - 1) * along,
        fromR: r,
        toR: r,
      },
      along,
    );
    const row = Math.floor(j / sub) * limbPhases;
    for (let i = 0; i < columns; i++) {
      const v = portable.log(strip.values[i] + darkLight);
      if (Number.isNaN(v)) return null;
      const at = row + (Math.floor(i / sub) % limbPhases);
      out[at] += v;
      out[cells + at] += v * v;
    }
  }
  const n = turns * sub * sub;
  for (let k = 0; k < cells; k++) {
    const mean = out[k] / n;
    out[cells + k] = Math.sqrt(Math.max(0, out[cells + k] / n - mean * mean));
    out[k] = mean;
  }
  return out;
}

/** Both sides less their common mean, over their common spread. */
function level(left: Float32Array, right: Float32Array): void {
  const cells = limbBins * limbPhases;
  let sum = 0;
  let squares = 0;
  for (const side of [left, right])
    for (let k = 0; k < cells; k++) {
      sum += side[k];
      squares += side[k] * side[k];
    }
  const mean = sum / (2 * cells);
  const spread = Math.max(0.05, Math.sqrt(Math.max(0, squares / (2 * cells) - mean * mean)));
  for (const side of [left, right])
    for (let k = 0; k < cells; k++) {
      side[k] = Math.max(-3, Math.min(3, (side[k] - mean) / spread));
      side[cells + k] = Math.min(3, side[cells + k] / spread);
    }
}
