import * as portable from '../../quantity/portable-math';
import type { Ripple } from './ripples';

/** Ripples that belong together: one direction, one frequency or its harmonics, side by side. */
export interface RippleGroup {
  /** Weighted middle of the tiles, pixels. */
  readonly x: number;
  readonly y: number;
  /** Direction across the ridges, that is along the axis, rad in [0, π). */
  readonly angleRad: number;
  /** Of the wave that stands out most, waves per pixel. */
  readonly frequency: number;
  /** Spread of the tiles' middles along and across that direction, standard deviations, px. */
  readonly alongPx: number;
  readonly acrossPx: number;
  /** Sum of the shares. */
  readonly support: number;
}

/** Directions of one thread's ripples differ by its lead angle and by the slant of the view. */
const directionRad = (5 * Math.PI) / 180;
/** Leakage of a tile's window: a sixth of a wave in five or so. */
const frequencyTolerance = 0.05;
const harmonicRatios = [1 / 4, 1 / 3, 1 / 2, 2 / 3, 1, 3 / 2, 2, 3, 4];
const seeds = 40;

/** Groups, most supported first; each ripple counts in one of them. */
export function rippleGroups(
  ripples: readonly Ripple[],
  reachPx: number,
  most: number,
): RippleGroup[] {
  let left = [...ripples].sort((a, b) => b.share - a.share);
  const out: RippleGroup[] = [];
  while (out.length < most && left.length > 0) {
    let best: { members: Map<Ripple, number>; support: number } | null = null;
    for (const seed of left.slice(0, seeds)) {
      const members = new Map<Ripple, number>();
      let support = 0;
      for (const r of left) {
        const w = belongs(seed, r, reachPx);
        if (w < 0.05) continue;
        members.set(r, w * r.share);
        support += w * r.share;
      }
      if (!best || support > best.support) best = { members, support };
    }
    if (!best) break;
    out.push(groupOf(best.members, best.support));
    const taken = best.members;
    left = left.filter((r) => !taken.has(r));
  }
  return out;
}

function belongs(seed: Ripple, r: Ripple, reachPx: number): number {
  const turn = Math.abs(angleBetween(seed, r)) / directionRad;
  if (turn > 2.5) return 0;
  const far = Math.hypot(r.x - seed.x, r.y - seed.y) / reachPx;
  if (far > 2.5) return 0;
  const ratio = Math.hypot(r.fx, r.fy) / Math.hypot(seed.fx, seed.fy);
  if (!harmonicRatios.some((h) => Math.abs(ratio / h - 1) < frequencyTolerance)) return 0;
  return portable.exp(-0.5 * (turn * turn + far * far));
}

/** Between two undirected vectors, −π/2…π/2. */
function angleBetween(a: Ripple, b: Ripple): number {
  return portable.atan2(a.fx * b.fy - a.fy * b.fx, a.fx * b.fx + a.fy * b.fy) % Math.PI;
}

function groupOf(members: ReadonlyMap<Ripple, number>, support: number): RippleGroup {
  let x = 0;
  let y = 0;
  let c = 0;
  let s = 0;
  for (const [r, w] of members) {
    x += (w * r.x) / support;
    y += (w * r.y) / support;
    // Twice the angle, so that opposite vectors are one direction.
    const f2 = r.fx * r.fx + r.fy * r.fy;
    c += (w * (r.fx * r.fx - r.fy * r.fy)) / f2;
    s += (w * 2 * r.fx * r.fy) / f2;
  }
  const angle = portable.atan2(s, c) / 2;
  const ca = portable.cos(angle);
  const sa = portable.sin(angle);
  let along = 0;
  let across = 0;
  let strongest = 0;
  let frequency = 0;
  for (const [r, w] of members) {
    const dx = r.x - x;
    const dy = r.y - y;
    along += (w / support) * (dx * ca + dy * sa) ** 2;
    across += (w / support) * (dy * ca - dx * sa) ** 2;
    if (w > strongest) {
      strongest = w;
      frequency = Math.hypot(r.fx, r.fy);
    }
  }
  return {
    x,
    y,
    angleRad: angle < 0 ? angle + Math.PI : angle,
    frequency,
    alongPx: Math.sqrt(along),
    acrossPx: Math.sqrt(across),
    support,
  };
}
