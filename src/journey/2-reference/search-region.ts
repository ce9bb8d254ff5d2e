import { card } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import { atHeight, type PosedCamera, project, type Vec3 } from '../2-card-pose/camera';
import { isInside } from './polygon';
import type { Rectangle } from './rectangles';
import type { PlanePoint, SearchRegion } from './reference';

/** A sheet's edge is an edge too, and so is its shadow. */
const insetMm = 6;
/** Shadow and thickness of a card beside the fitting. */
const aroundMm = 3;
/** A fitting further from the card than this is not beside it. */
const besideMm = 140;
/** Coded grey of a table against the card's face: darker than this, its field counts as dark, as with the
 *  scale card's two. */
const darkShare = 0.5;

/** On a sheet, its inside; beside a card, the table that the photo shows around it. */
export function searchRegion(
  grey: GreyImage,
  camera: PosedCamera,
  rectangle: Rectangle,
): SearchRegion {
  const face = grown(rectangle, 0);
  if (rectangle.kind !== 'id1')
    return { polygon: grown(rectangle, -insetMm), holes: [], field: 'light' };
  const polygon = beside(grey, camera, rectangle);
  const table = samples(polygon, [grown(rectangle, aroundMm)]);
  const light = quantile(levelsAt(grey, camera, samples(face, []), rectangle.faceMm), 0.8);
  const field = quantile(levelsAt(grey, camera, table, 0), 0.5) < darkShare * light;
  return { polygon, holes: [grown(rectangle, aroundMm)], field: field ? 'dark' : 'light' };
}

function grown({ widthMm, heightMm }: Rectangle, byMm: number): PlanePoint[] {
  const x = widthMm / 2 + byMm;
  const y = heightMm / 2 + byMm;
  return [
    [-x, -y],
    [x, -y],
    [x, y],
    [-x, y],
  ].map(([dx, dy]) => [card.widthMm / 2 + dx, card.heightMm / 2 + dy] as const);
}

/** What the photo shows of the table, as far as it is near the card: its border walked along, each place
 *  drawn in to the largest distance. */
function beside(grey: GreyImage, camera: PosedCamera, rectangle: Rectangle): PlanePoint[] {
  const [w, h] = [grey.width - 1, grey.height - 1];
  const reach = Math.hypot(rectangle.widthMm, rectangle.heightMm) / 2 + besideMm;
  const middle = [card.widthMm / 2, card.heightMm / 2] as const;
  const steps = 8;
  const polygon: PlanePoint[] = [];
  for (const [from, to] of [
    [
      [0, 0],
      [w, 0],
    ],
    [
      [w, 0],
      [w, h],
    ],
    [
      [w, h],
      [0, h],
    ],
    [
      [0, h],
      [0, 0],
    ],
  ])
    for (let k = 0; k < steps; k++) {
      const t = k / steps;
      const at = atHeight(
        camera,
        [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])],
        0,
      );
      const [dx, dy] = [at[0] - middle[0], at[1] - middle[1]];
      const scale = Math.min(1, reach / Math.hypot(dx, dy));
      polygon.push([middle[0] + scale * dx, middle[1] + scale * dy]);
    }
  return polygon;
}

const gridMm = 3;

function samples(
  polygon: readonly PlanePoint[],
  holes: readonly (readonly PlanePoint[])[],
): PlanePoint[] {
  const xs = polygon.map(([x]) => x);
  const ys = polygon.map(([, y]) => y);
  const found: PlanePoint[] = [];
  for (let y = Math.min(...ys); y <= Math.max(...ys); y += gridMm)
    for (let x = Math.min(...xs); x <= Math.max(...xs); x += gridMm)
      if (isInside(polygon, x, y) && !holes.some((hole) => isInside(hole, x, y)))
        found.push([x, y]);
  return found;
}

function levelsAt(
  grey: GreyImage,
  camera: PosedCamera,
  places: readonly PlanePoint[],
  heightMm: number,
): number[] {
  return places.flatMap(([X, Y]) => {
    const at: Vec3 = [X, Y, -heightMm];
    const [x, y] = project(camera, at).map(Math.round);
    return x >= 0 && y >= 0 && x < grey.width && y < grey.height
      ? [grey.data[y * grey.width + x]]
      : [];
  });
}

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(share * (sorted.length - 1))] ?? 0;
}
