import * as portable from '../../quantity/portable-math';
import type { Unrolled } from './unrolled-surface';

/** How well the ridges climb like a helix of one start: right- and left-handed, 0…1. Near 1 on a
 *  thread; rings, such as hose barbs, and chance patterns reach about half in either. */
export interface Helix {
  readonly right: number;
  readonly left: number;
}

/** Along a row the pattern is a wave of the pitch; from row to row it must move on by the lead, a whole
 *  pitch in a whole turn. The share of the rows' amplitude that does so, in the first harmonic or the
 *  second, whichever the light has made clearer. */
export function helixOf(view: Unrolled, pitchMm: number): Helix {
  const first = waves(view, pitchMm);
  const second = waves(view, pitchMm / 2);
  const share = (hand: 1 | -1) =>
    Math.max(moving(first, view.azimuths, -hand), moving(second, view.azimuths, -2 * hand));
  return { right: share(1), left: share(-1) };
}

type Wave = readonly [number, number];

/** Complex amplitude of each row at one period, over the row's own spread. */
function waves({ rows, stepMm }: Unrolled, periodMm: number): Wave[] {
  const n = rows[0]?.length ?? 0;
  const cosines = new Float64Array(n);
  const sines = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const a = (2 * Math.PI * i * stepMm) / periodMm;
    cosines[i] = portable.cos(a);
    sines[i] = portable.sin(a);
  }
  return rows.map((row) => {
    let a = 0;
    let b = 0;
    let energy = 0;
    for (let i = 0; i < n; i++) {
      a += row[i] * cosines[i];
      b -= row[i] * sines[i];
      energy += row[i] * row[i];
    }
    const scale = Math.sqrt((energy * n) / 2) + 1e-9;
    return [a / scale, b / scale];
  });
}

/** Share of the amplitudes that agree once each is turned back by `turns` of its azimuth. */
function moving(list: readonly Wave[], azimuths: readonly number[], turns: number): number {
  let a = 0;
  let b = 0;
  let all = 1e-9;
  list.forEach(([x, y], k) => {
    const c = portable.cos(turns * azimuths[k]);
    const s = portable.sin(turns * azimuths[k]);
    a += x * c - y * s;
    b += x * s + y * c;
    all += Math.hypot(x, y);
  });
  return Math.hypot(a, b) / all;
}
