import * as portable from '../../quantity/portable-math';
import type { Field } from '../../scale-card/geometry';
import type { Suspect } from '../3-find/beside-rule';
import { isOnStrip, type RuleStrip } from '../3-find/rule-strip';
import type { WindowView } from '../3-find/window-view';
import type { PhotoPoint } from '../overlay';
import { axisThrough, onAxisPlane, photoAt } from './axis-frame';
import type { PosedPhoto } from './posed-photo';
import { straighten } from './straightened';
import { placeThread, type ThreadPlace } from './thread-place';
import { strongestZone } from './thread-zone';

export interface Found {
  readonly place: ThreadPlace;
  readonly field: Field;
  /** Parallel to the rule and divided by one of its units. */
  readonly likeRule: boolean;
  /** Rows that repeat, as a share of the thread's width, 0…1. */
  readonly strength: number;
}

const weakest = 0.2;
/** The rule's other edge is divided too: parallel to the tapped one, and by its unit exactly. */
const parallelRad = 0.035;
const sameUnit = 0.012;
const unitsMm = [0.5, 1, 2, 25.4 / 8, 25.4 / 16, 25.4 / 32];

/** Threads on anything that stands out of the background, strongest first. */
export function threadsOn(
  photo: PosedPhoto,
  view: WindowView,
  things: readonly Suspect[],
  strip: RuleStrip,
  unitMm: number,
): Found[] {
  return things
    .flatMap(({ blob, axes, field }) =>
      axes.slice(0, 2).flatMap((axis): Found[] => {
        if (axis.symmetry < 0.75 * axes[0].symmetry) return [];
        const place = placeThread(photo, view, blob, axis, field);
        if (!place) return [];
        const likeRule = dividesLikeRule(place, strip, unitMm);
        const strength = strengthOf(place);
        return [{ place, field, likeRule, strength: likeRule ? 0.3 * strength : strength }];
      }),
    )
    .filter(({ strength }) => strength > weakest)
    .sort((a, b) => b.strength - a.strength);
}

function strengthOf({ zone }: ThreadPlace): number {
  return zone.strength / Math.max(1, zone.reachLeftMm + zone.reachRightMm);
}

function dividesLikeRule({ frame, zone }: ThreadPlace, strip: RuleStrip, unitMm: number): boolean {
  const across = Math.abs(frame.along[0] * strip.along[1] - frame.along[1] * strip.along[0]);
  const periodMm = zone.periodMm * unitMm;
  return (
    across < portable.sin(parallelRad) && unitsMm.some((u) => Math.abs(periodMm / u - 1) < sameUnit)
  );
}

/** The thread along an axis that a person has drawn, free end first. Half-width unknown. */
export function threadAlong(
  { grey, camera }: PosedPhoto,
  [from, to]: readonly [PhotoPoint, PhotoPoint],
  strip: RuleStrip,
): Found[] {
  let frame = axisThrough(camera, from, to, 0);
  const end = axisThrough(camera, to, from, 0).origin;
  const lengthMm = Math.hypot(end[0] - frame.origin[0], end[1] - frame.origin[1]);
  const halfWidthMm = Math.max(4, Math.min(18, 1.5 * lengthMm));
  const stepMm = 0.12;
  const straight = straighten(
    grey,
    camera,
    frame,
    { fromS: -1, toS: lengthMm + 1, fromR: -halfWidthMm, toR: halfWidthMm },
    stepMm,
  );
  for (let j = 0; j < straight.rows; j++) {
    for (let i = 0; i < straight.columns; i++) {
      const at = photoAt(camera, frame, straight.fromS + i * stepMm, straight.fromR + j * stepMm);
      if (isOnStrip(strip, at)) straight.values[j * straight.columns + i] = Number.NaN;
    }
  }
  const zone = strongestZone(straight, [0, lengthMm]);
  if (!zone) return [];
  const off = (zone.reachLeftMm - zone.reachRightMm) / 2;
  // A drawn axis lies near the middle: an offset of more than its uncertainty is a neighbour's pattern.
  const shift = Math.abs(off) < 2 ? off : 0;
  frame = { ...frame, origin: onAxisPlane(frame, 0, shift) };
  const reach =
    shift === off
      ? (zone.reachLeftMm + zone.reachRightMm) / 2
      : Math.min(zone.reachLeftMm, zone.reachRightMm);
  const place: ThreadPlace = {
    frame,
    lengthMm,
    widest: { halfWidthMm: reach, fromS: lengthMm, toS: lengthMm },
    zone: { ...zone, reachLeftMm: reach, reachRightMm: reach },
    envelopeMm: null,
  };
  return (['light', 'dark'] as const).map((field) => ({
    place,
    field,
    likeRule: false,
    strength: strengthOf(place),
  }));
}

/** Whether the thread runs out of the photo. */
export function isCutOff({ grey, camera }: PosedPhoto, { frame, zone }: ThreadPlace): boolean {
  const reach = Math.max(zone.reachLeftMm, zone.reachRightMm);
  return [zone.fromS, zone.toS].some((s) =>
    [reach, -reach].some((r) => {
      const [x, y] = photoAt(camera, frame, s, r);
      return x < 3 || y < 3 || x > grey.width - 3 || y > grey.height - 3;
    }),
  );
}
