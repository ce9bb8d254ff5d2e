import { ascending, quantile } from '../../quantity/order';
import type { Side } from './outline-edges';
import type { Straightened } from './straightened';

/** On black: radius, coming from outside, at which texture first stands out of the background's.
 *  Metal has some everywhere, even where it mirrors the black beside it. */
export function textureEnvelope(
  view: Straightened,
  zone: { readonly fromS: number; readonly toS: number },
  side: Side,
): number | null {
  const { values, columns, rows, stepMm } = view;
  const i0 = Math.max(1, Math.round((zone.fromS - view.fromS) / stepMm));
  const i1 = Math.min(columns - 2, Math.round((zone.toS - view.fromS) / stepMm));
  const root = (k: number) => Math.sqrt(values[k]);
  const energy = Array.from({ length: rows }, (_, j) => {
    if (j === 0 || j === rows - 1) return Number.NaN;
    const list: number[] = [];
    for (let i = i0; i <= i1; i++) {
      const k = j * columns + i;
      list.push(Math.hypot(root(k + 1) - root(k - 1), root(k + columns) - root(k - columns)));
    }
    return quantile(ascending(list), 0.9);
  });
  const finite = ascending(energy.filter(Number.isFinite));
  const strong = quantile(finite, 0.7);
  const quiet = quantile(finite, 0.05);
  const level = quiet + 0.25 * (strong - quiet);
  const order = side === 'left' ? [...energy.keys()].reverse() : [...energy.keys()];
  for (const j of order) {
    const r = view.fromR + j * stepMm;
    if (side === 'left' ? r < 0 : r > 0) break;
    if (!(energy[j] > level)) continue;
    const beyond = energy[side === 'left' ? j + 1 : j - 1];
    const share = beyond < level ? (energy[j] - level) / (energy[j] - beyond) : 0;
    return Math.abs(r) + share * view.stepMm;
  }
  return null;
}
