import { leanAt } from './4-thread-signal/axis-frame';
import type { OutlineView } from './4-thread-signal/outline-edges';
import { type BasePlace, type BaseThread, basePlace } from './5-end/base-place';
import { type ConePlace, conePlace, onCone } from './5-end/cone-place';
import { limbPoint } from './5-end/limb-point';
import { sides } from './5-measurement/nose-angle';
import { outwardConeDeg } from './6-candidates/cone-angle';
import { type ShownEnd, seatToDraw } from './6-candidates/end-seen';
import { drawnSeats } from './drawn-seats';
import type { DrawnSeat, EndFeature, PhotoPoint } from './overlay';
import { rounded } from './overlay-of';

/** What is drawn of one end, before it is known which of the part's ends it is. */
export type ShownFeature = Omit<EndFeature, 'end'>;

type Sight = Pick<OutlineView, 'camera'> & Pick<BaseThread, 'frame'>;

/** The seat that a photo shows, where it lies in the photo. */
export function endFeatures(
  view: OutlineView,
  thread: BaseThread,
  shown: ShownEnd,
): readonly ShownFeature[] {
  const drawn = seatToDraw(shown);
  const seat = drawnSeats.find((one) => one === drawn);
  return seat ? [{ seat, lines: linesOf(seat, view, thread) }] : [];
}

function linesOf(seat: DrawnSeat, view: OutlineView, thread: BaseThread): ShownFeature['lines'] {
  const sight = { camera: view.camera, frame: thread.frame };
  const coneDeg = outwardConeDeg(seat);
  if (coneDeg !== null) return coneLines(sight, conePlace(view, thread, coneDeg));
  const kind = seat === 'o-ring-at-hex' ? 'o-ring' : 'shoulder';
  return baseLines(sight, basePlace(view, thread, kind));
}

/** Both sides of a cone, from its wide end towards the free end. */
export function coneLines({ camera, frame }: Sight, cone: ConePlace): PhotoPoint[][] {
  const slopeAt = (s: number) => leanAt(camera, frame, s);
  return sides.map((side) =>
    [cone.wideMm, cone.narrowMm].map((radiusMm) =>
      rounded(limbPoint(camera, frame, onCone(cone, side, radiusMm, slopeAt))),
    ),
  );
}

/** How far the lines of a limb turn in at its ends, of the radius: as a bracket, which tells it from an outline. */
const turnedIn = 0.18;

/** Both limbs of what lies about the part, turned in at their ends. */
export function baseLines({ camera, frame }: Sight, base: BasePlace): PhotoPoint[][] {
  const { fromS, toS, radiusMm } = base;
  const inner = (1 - turnedIn) * radiusMm;
  const corners = [
    { s: fromS, r: inner },
    { s: fromS, r: radiusMm },
    { s: toS, r: radiusMm },
    { s: toS, r: inner },
  ];
  return [1, -1].map((sign) =>
    corners.map(({ s, r }) => rounded(limbPoint(camera, frame, { s, r: sign * r }))),
  );
}
