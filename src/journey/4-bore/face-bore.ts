import type { GreyImage } from '../../vision/grey-image';
import type { Vision } from '../../vision/vision';
import type { PosedCamera } from '../2-card-pose/camera';
import { type FacePlane, footOf, onPlane, planeView } from './face-plane';
import { type MouthRings, mouthRings } from './mouth-plane';
import { type RingEdges, ringEdges } from './ring-edges';
import { findRings } from './rings';
import { type SeatedBore, seatBore } from './seat-bore';

/** A bore whose face lies as a plane does: all lengths as that plane shows them, so known but for one factor. */
export interface FaceBore {
  readonly plane: FacePlane;
  readonly edges: RingEdges;
  readonly seat: SeatedBore;
  readonly rings: MouthRings;
  /** Below the camera on the plane, and how far the camera is from it, mm. */
  readonly foot: readonly [number, number];
  readonly distanceMm: number;
  /** Middle of the mouth on the plane. */
  readonly mouth: readonly [number, number];
  /** What turns the seat's lengths into those at the mouth: it may have been seated on a ring below the mouth. */
  readonly stretch: number;
}

/** Where on the plane the mouth is looked for, mm. */
export interface MouthBox {
  readonly fromX: number;
  readonly toX: number;
  readonly fromY: number;
  readonly toY: number;
}

const viewPxPerMm = 5;
const mostRings = 6;
/** Smallest and largest rim that is looked for, mm. */
const rimRadii = { from: 3, to: 36 };
/** Smallest and largest ring by the box of the part: a mouth takes a good part of it. */
const ofBox = { from: 0.16, to: 0.6 };

/** A part that reaches out of the card's window is larger than what was found of it there, by about so much. */
const missing = 0.35;

/** The box of a part of which only what lies in the window was found. */
export function wholeBox(box: MouthBox, touchesRim: boolean): MouthBox {
  if (!touchesRim) return box;
  const more = missing * Math.max(box.toX - box.fromX, box.toY - box.fromY);
  return {
    fromX: box.fromX - more,
    toX: box.toX + more,
    fromY: box.fromY - more,
    toY: box.toY + more,
  };
}

/** Radii of rings that may be a mouth on a part in a box of this size, mm. */
export const ringRadii = (width: number, height: number) => ({
  fromRadius: Math.max(rimRadii.from, ofBox.from * Math.min(width, height)),
  toRadius: Math.min(rimRadii.to, ofBox.to * Math.max(width, height)),
});

export function faceBore(
  grey: GreyImage,
  camera: PosedCamera,
  plane: FacePlane,
  box: MouthBox,
  vision: Vision,
): FaceBore | null {
  // A body that stands on the card reaches over it in the photo.
  const span = Math.max(box.toX - box.fromX, box.toY - box.fromY);
  const margin = 8 + 0.25 * span;
  const around = {
    ...plane,
    origin: onPlane(plane, box.fromX - margin, box.fromY - margin),
  };
  const width = box.toX - box.fromX;
  const height = box.toY - box.fromY;
  const size = { widthMm: width + 2 * margin, heightMm: height + 2 * margin };
  const edges = ringEdges(planeView(grey, camera, around, size, viewPxPerMm), vision);
  const rings = findRings(
    edges,
    {
      fromX: margin,
      toX: margin + width,
      fromY: margin,
      toY: margin + height,
      ...ringRadii(width, height),
    },
    mostRings,
  );
  const guesses = rings.map((ring) => ({
    mouth: onPlane(around, ring.x, ring.y),
    inwards: plane.inwards,
    radiusMm: ring.radius,
    share: ring.share,
  }));
  const [seat] = seatBore({ grey, camera }, guesses);
  if (!seat) return null;
  const under = footOf(around, camera.centre);
  const { x, y } = footOf(around, seat.bore.mouth);
  const reach = Math.hypot(x - under.x, y - under.y);
  const away = [(x - under.x) / reach, (y - under.y) / reach] as const;
  const found = mouthRings(edges, [x, y], away, {
    radius: seat.bore.radiusMm,
    pitch: seat.periods[0].periodMm,
  });
  return {
    plane: around,
    edges,
    seat,
    rings: found,
    foot: [under.x, under.y],
    distanceMm: under.distanceMm,
    mouth: [x + found.shift * away[0], y + found.shift * away[1]],
    stretch: 1 + found.shift / reach,
  };
}
