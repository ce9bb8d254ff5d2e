import { quantile } from '../../quantity/order';
import * as portable from '../../quantity/portable-math';
import type { OutlinePoint } from '../4-thread-signal/outline-edges';
import type { OutlineModel } from './outline-model';
import { index, type OutlineParameters } from './outline-parameters';

const phaseSteps = 16;
/** Share of the pitch by which a start may be off, and steps to either side. */
const pitchSpan = 0.012;
const pitchSteps = 4;

/** Pitch and phase of the tooth that lie best over the points: least squares goes downhill from where it
 *  starts, and half a tooth away is another valley. */
export function bestStart(
  points: readonly OutlinePoint[],
  middleS: number,
  model: OutlineModel,
  initial: OutlineParameters,
): [pitchMm: number, crestS: number] {
  const pitch0 = initial[index.pitch];
  const contours = model.contoursOf(initial);
  const width = 0.06 * pitch0;
  const rest = Array.from(initial).slice(2);
  const tilts = points.map((q) => model.tilt(q.side, q.slope));
  let best: [number, number] = [pitch0, initial[index.crestS]];
  let least = Number.POSITIVE_INFINITY;
  const sides = (['left', 'right'] as const).map((side) => {
    const own = points.flatMap((q, i) => (q.side === side ? [i] : []));
    return { own, residuals: new Float64Array(own.length) };
  });
  const consider = (pitchMm: number, crestS: number) => {
    const p = [pitchMm, crestS, ...rest];
    let cost = 0;
    for (const { own, residuals } of sides) {
      for (let k = 0; k < own.length; k++) {
        const { r, side, s } = points[own[k]];
        const tooth = model.toothAt(contours, tilts[own[k]], model.phaseOf(p, side, s));
        residuals[k] = r - model.lineAt(p, side, s) - pitchMm * tooth;
      }
      const level = quantile(residuals.sort(), 0.5);
      for (let k = 0; k < own.length; k++) {
        const z = (residuals[k] - level) / width;
        cost += portable.log(1 + z * z);
      }
    }
    if (cost >= least) return;
    least = cost;
    best = [pitchMm, crestS];
  };
  // The phase is held where the points are: a pitch that is off turns the ends, not the middle.
  const start = initial[index.crestS];
  const crest = start + Math.round((middleS - start) / pitch0) * pitch0;
  for (let a = -pitchSteps; a <= pitchSteps; a++)
    for (let b = 0; b < phaseSteps; b++)
      consider(pitch0 * (1 + (pitchSpan * a) / pitchSteps), crest + (b / phaseSteps) * pitch0);
  return best;
}
