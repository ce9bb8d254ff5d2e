import type { EndLook } from '../../journey/5-measurement/thread-measurement';
import type { EndScore } from './end-score';

const isCone = (look: EndLook | null) => look?.startsWith('cone-') ?? false;
const of = (part: number, all: number) =>
  `${part} of ${all}${all > 0 ? ` (${((100 * part) / all).toFixed(0)} %)` : ''}`;

/** How often the ends of the parts were seen for what they are; empty where no truth says. */
export function endTable(ends: readonly EndScore[]): string {
  if (ends.length === 0) return '';
  const seen = ends.filter((e) => e.measured);
  const told = seen.filter((e) => e.seen !== null);
  const cones = seen.filter((e) => isCone(e.look));
  const found = (look: EndLook) => {
    const own = seen.filter((e) => e.look === look);
    const others = seen.filter((e) => e.look !== look);
    const said = (e: EndScore) => e.seen === look;
    return `found on ${of(own.filter(said).length, own.length)}, falsely on ${of(others.filter(said).length, others.length)}`;
  };
  const flats = seen.flatMap((e) => (e.acrossFlats ? [e.acrossFlats] : []));
  const angles = cones.flatMap((e) => (e.angleError === null ? [] : [Math.abs(e.angleError)]));
  return [
    `ends measured ${of(seen.length, ends.length)}; pitch within 0.6 % on ${of(seen.filter((e) => Math.abs(e.pitchError!) <= 0.006).length, ends.length)}; the right thread leads on ${of(seen.filter((e) => e.leads).length, ends.length)}`,
    `what the end looks like: told on ${of(told.length, seen.length)}, rightly on ${of(told.filter((e) => e.seen === e.look).length, told.length)}`,
    `cone or none: right on ${of(told.filter((e) => isCone(e.seen) === isCone(e.look)).length, seen.length)} (target ≥ 95 %), wrong on ${told.filter((e) => isCone(e.seen) !== isCone(e.look)).length}; which cone right on ${of(cones.filter((e) => e.seen === e.look).length, cones.length)}`,
    `half angle within 1.5° on ${of(angles.filter((a) => a <= 1.5).length, cones.length)} of the cones (target ≥ 85 %), measured on ${angles.length}`,
    `ring at the hex: ${found('o-ring-at-hex')} (targets ≥ 90 %, ≤ 1 %)`,
    `shoulder: ${found('shoulder')} (target ≥ 85 %)`,
    `across flats within 1.5 % on ${of(flats.filter((f) => Math.abs(f.error) <= 0.015).length, seen.length)} (target ≥ 90 %); its 95 % interval covers ${of(flats.filter((f) => Math.abs(f.z) <= 1.96).length, flats.length)}`,
  ].join('\n');
}
