import type { PhotoPoint } from '../../journey/overlay';

/** What part of the photo is shown, photo frame (px); the aspect is the viewer's own. */
export interface ViewBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What a viewer shows of a photo, and how large. */
export interface ShownPart {
  readonly box: () => ViewBox;
  /** Photo px per viewer px. */
  readonly scale: () => number;
  readonly toPhoto: (event: PointerEvent) => PhotoPoint;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Pixel centres lie at integers, so the photo spans −0.5 … width − 0.5. */
const edge = -0.5;

export function fit(photo: Size, viewer: Size): ViewBox {
  const scale = Math.max(photo.width / viewer.width, photo.height / viewer.height);
  const width = viewer.width * scale;
  const height = viewer.height * scale;
  return {
    x: edge + (photo.width - width) / 2,
    y: edge + (photo.height - height) / 2,
    width,
    height,
  };
}

/** Zoom by `factor` > 1 (in) about a photo point, never out beyond the whole photo,
 *  never in beyond 12 viewer px per photo px. */
export function zoomAbout(
  view: ViewBox,
  factor: number,
  at: readonly [number, number],
  photo: Size,
  viewer: Size,
): ViewBox {
  const whole = fit(photo, viewer);
  const narrowest = viewer.width / 12;
  const width = Math.min(whole.width, Math.max(narrowest, view.width / factor));
  const k = width / view.width;
  return keepInside(
    {
      x: at[0] - (at[0] - view.x) * k,
      y: at[1] - (at[1] - view.y) * k,
      width,
      height: view.height * k,
    },
    photo,
  );
}

export function moveBy(view: ViewBox, dx: number, dy: number, photo: Size): ViewBox {
  return keepInside({ ...view, x: view.x + dx, y: view.y + dy }, photo);
}

/** The smallest box of the viewer's aspect around these points, with a margin. */
export function around(
  points: readonly (readonly [number, number])[],
  photo: Size,
  viewer: Size,
): ViewBox {
  const whole = fit(photo, viewer);
  if (points.length === 0) return whole;
  const xs = points.map((p) => p[0]);
  const ys = points.map((p) => p[1]);
  const margin = 1.5;
  const w = (Math.max(...xs) - Math.min(...xs)) * margin;
  const h = (Math.max(...ys) - Math.min(...ys)) * margin;
  const scale = Math.max(w / viewer.width, h / viewer.height);
  const width = Math.min(whole.width, Math.max(viewer.width / 12, viewer.width * scale));
  const height = (width * viewer.height) / viewer.width;
  return keepInside(
    {
      x: (Math.max(...xs) + Math.min(...xs) - width) / 2,
      y: (Math.max(...ys) + Math.min(...ys) - height) / 2,
      width,
      height,
    },
    photo,
  );
}

function keepInside(view: ViewBox, photo: Size): ViewBox {
  return {
    ...view,
    x: keepSpan(view.x, view.width, photo.width),
    y: keepSpan(view.y, view.height, photo.height),
  };
}

function keepSpan(start: number, length: number, whole: number): number {
  const slack = whole - length;
  if (slack <= 0) return edge + slack / 2;
  return Math.min(edge + slack, Math.max(edge, start));
}
