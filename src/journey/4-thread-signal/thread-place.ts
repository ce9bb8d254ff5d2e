import * as portable from '../../quantity/portable-math';
import type { Field } from '../../scale-card/geometry';
import { project } from '../2-card-pose/camera';
import type { Blob, Pixel } from '../3-find/fitting-blob';
import type { RoughAxis } from '../3-find/rough-axis';
import type { WindowView } from '../3-find/window-view';
import { type AxisFrame, axisThrough, middleOf, onAxisPlane } from './axis-frame';
import type { PosedPhoto } from './posed-photo';
import { straighten } from './straightened';
import { textureEnvelope } from './texture-envelope';
import { type PeriodicZone, strongestZone } from './thread-zone';

/** The fitting laid along an axis, free end of the thread first, and where on it the thread is. */
export interface ThreadPlace {
  readonly frame: AxisFrame;
  readonly lengthMm: number;
  /** Half the width of the widest part, and where it is along the axis: the hex, if there is one. */
  readonly widest: { readonly halfWidthMm: number; readonly fromS: number; readonly toS: number };
  readonly zone: PeriodicZone;
  /** Crest radius by where texture ends on black; null on paper, where shadows have some. */
  readonly envelopeMm: number | null;
}

/** A hex on its flat shows its corners at axis height, h = (√3/2)·half-width. */
export const hexRatio = Math.sqrt(3) / 2;
const stepMm = 0.12;

/** Height, axis and thread, coarsely: the height is a first guess that stage 5 refines. */
export function placeThread(
  { grey, camera }: PosedPhoto,
  view: WindowView,
  blob: Blob,
  axis: RoughAxis,
  field: Field,
): ThreadPlace | null {
  const profile = widthProfile(view, blob, axis);
  if (!profile) return null;
  const cameraHeight = -camera.centre[2];
  const apparentMm = profile.widest / view.pxPerMm;
  const heightMm = (hexRatio * apparentMm * cameraHeight) / (cameraHeight + hexRatio * apparentMm);
  const shrink = (cameraHeight - heightMm) / cameraHeight;
  const end = (along: number) =>
    project(camera, [
      view.originXMm + (axis.through[0] + along * portable.cos(axis.angleRad)) / view.pxPerMm,
      view.originYMm + (axis.through[1] + along * portable.sin(axis.angleRad)) / view.pxPerMm,
      0,
    ]);
  let frame = axisThrough(camera, end(profile.from), end(profile.to), heightMm);
  const toMm = (along: number) => ((along - profile.from) / view.pxPerMm) * shrink;
  const lengthMm = toMm(profile.to);
  const halfWidthMm = apparentMm * shrink;
  const straight = straighten(
    grey,
    camera,
    frame,
    { fromS: -2, toS: lengthMm + 2, fromR: -halfWidthMm - 2, toR: halfWidthMm + 2 },
    stepMm,
  );
  const strongest = strongestZone(straight, [0, lengthMm]);
  if (!strongest) return null;
  let zone: PeriodicZone = strongest;
  // A shadow ends in noise that looks like texture; the ridges know better how far out metal goes.
  const [a, b] = (['left', 'right'] as const).map((side) => {
    const envelope = textureEnvelope(straight, zone, side);
    const reach = side === 'left' ? zone.reachLeftMm : zone.reachRightMm;
    return envelope && Math.min(envelope, reach + beyondRidgesMm);
  });
  const envelopeMm = field === 'dark' && a && b ? (a + b) / 2 : null;
  // Where the crests are, left and right, has the axis in its middle; a shadow's edge may not.
  const off = (envelopeMm ? a! - b! : zone.reachLeftMm - zone.reachRightMm) / 2;
  frame = shifted(frame, off);
  zone = { ...zone, reachLeftMm: zone.reachLeftMm - off, reachRightMm: zone.reachRightMm + off };
  let widest = { halfWidthMm, fromS: toMm(profile.widestFrom), toS: toMm(profile.widestTo) };
  // The free end lies away from the hex; a thread on the widest part has its free end nearer.
  const zoneMiddle = middleOf(zone);
  const hexMiddle = middleOf(widest);
  const flip =
    Math.abs(hexMiddle - zoneMiddle) > 2 ? hexMiddle < zoneMiddle : zoneMiddle > lengthMm / 2;
  if (flip) {
    const turned = (s: number) => lengthMm - s;
    frame = shifted(axisThrough(camera, end(profile.to), end(profile.from), heightMm), -off);
    zone = {
      ...zone,
      fromS: turned(zone.toS),
      toS: turned(zone.fromS),
      reachLeftMm: zone.reachRightMm,
      reachRightMm: zone.reachLeftMm,
    };
    widest = { halfWidthMm, fromS: turned(widest.toS), toS: turned(widest.fromS) };
  }
  return { frame, lengthMm, widest, zone, envelopeMm };
}

/** Crests stand out past the outermost rows in which ridges repeat by about half a tooth. */
const beyondRidgesMm = 0.9;

function shifted(frame: AxisFrame, leftMm: number): AxisFrame {
  return { ...frame, origin: onAxisPlane(frame, 0, leftMm) };
}

/** Extent of the blob along the axis and its widest plateau, window pixels from `axis.through`. */
function widthProfile({ pxPerMm }: WindowView, blob: Blob, axis: RoughAxis) {
  const c = portable.cos(axis.angleRad);
  const s = portable.sin(axis.angleRad);
  const along = ([x, y]: Pixel) => (x - axis.through[0]) * c + (y - axis.through[1]) * s;
  const off = ([x, y]: Pixel) => -(x - axis.through[0]) * s + (y - axis.through[1]) * c;
  const ends = blob.hull.map(along);
  const from = Math.min(...ends);
  const to = Math.max(...ends);
  const bin = Math.max(1, Math.round(0.6 * pxPerMm));
  const bins = Math.floor((to - from) / bin) + 1;
  if (bins < 5) return null;
  const reach = [new Float64Array(bins), new Float64Array(bins)];
  const { edges } = blob;
  for (let i = 0; i < edges.data.length; i++) {
    if (!edges.data[i]) continue;
    const p: Pixel = [i % edges.width, Math.floor(i / edges.width)];
    const k = Math.max(0, Math.min(bins - 1, Math.floor((along(p) - from) / bin)));
    const o = off(p);
    const side = reach[o > 0 ? 0 : 1];
    side[k] = Math.max(side[k], Math.abs(o));
  }
  // Where one side's outline has faded the other speaks for both.
  const width = reach[0].map((v, k) => Math.max(v, reach[1][k]));
  const sorted = [...width].sort((a, b) => b - a);
  // A single bin may hold a speck of shadow.
  const widest = sorted[Math.min(2, sorted.length - 1)];
  const wide = [...width.keys()].filter((k) => width[k] > 0.95 * widest);
  return {
    from,
    to,
    widest,
    widestFrom: from + Math.min(...wide) * bin,
    widestTo: from + (Math.max(...wide) + 1) * bin,
  };
}
