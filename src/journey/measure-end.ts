import { ok, type Result } from '../quantity/result';
import type { Field } from '../scale-card/geometry';
import type { Photo } from './1-photo/photo';
import type { Reference } from './2-reference/reference';
import type { SeatedThread } from './4-limbs/seat-thread';
import type { Side } from './4-thread-signal/outline-edges';
import { acrossFlats } from './5-end/across-flats';
import { endLook } from './5-end/end-look';
import { threadLook } from './5-end/thread-look';
import { noseHalfAngle } from './5-measurement/nose-angle';
import { solveSeated } from './5-measurement/solve-seated';
import type { ThreadMeasurement } from './5-measurement/thread-measurement';
import type { ThreadSolution } from './5-measurement/thread-solution';
import { withUncertainty } from './5-measurement/uncertainty';
import { endFeatures, type ShownFeature } from './end-features';

/** What all ends of a part share: the photo, its camera, what lies under the part and the print's u, relative. */
export interface EndShot {
  readonly photo: Photo;
  readonly reference: Reference;
  readonly field: Field;
  readonly uPrint: number;
}

/** An end that is as unlikely to have no cone as this has one: how sharp it is, is then sought on either side alone
 *  (judgement). */
const hardly = 0.02;

/** Pitch, diameter and nose of one threaded end, with their uncertainty, and what is drawn of its seat. */
export function measureEnd(
  { photo, reference, field, uPrint }: EndShot,
  seat: SeatedThread,
  sides: Side | 'both',
): Result<
  {
    readonly solution: ThreadSolution;
    readonly measurement: ThreadMeasurement;
    readonly features: readonly ShownFeature[];
  },
  'no-thread' | 'too-few-turns'
> {
  const { grey, flashFired } = photo;
  const solved = solveSeated({ grey, card: reference, seat, field, sides });
  if (!solved.ok) return solved;
  const solution = solved.value;
  const { camera, response } = reference;
  const view = { grey, camera, response, mmPerPx: solution.mmPerPx, field };
  const threadShows = threadLook(view, solution);
  const endShows = endLook(view, solution);
  const measurement = {
    ...withUncertainty(reference, solution, { field, flashFired }, uPrint),
    noseHalfAngleDeg: noseHalfAngle(view, solution, endShows.nose.none < hardly),
    hexAcrossFlatsMm: acrossFlats(solution),
    endShows,
    ...(threadShows && { threadShows }),
  };
  return ok({ solution, measurement, features: endFeatures(view, solution, measurement) });
}
