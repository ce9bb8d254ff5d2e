import type { EndScore } from './end-score';

const of = (part: number, all: number) =>
  `${part} of ${all}${all > 0 ? ` (${((100 * part) / all).toFixed(0)} %)` : ''}`;

/** How often the ends of the parts were seen for what they are; empty where no truth says. */
export function endTable(ends: readonly EndScore[]): string {
  if (ends.length === 0) return '';
  const seen = ends.filter((e) => e.measured);
  const cones = seen.filter((e) => e.coneDeg !== null);
  const claims = seen.filter((e) => e.claimed !== null);
  const right = claims.filter((e) => e.claimed === `cone-${e.coneDeg}`);
  const flats = seen.flatMap((e) => (e.acrossFlats ? [e.acrossFlats] : []));
  const angles = cones.flatMap((e) => (e.angleError === null ? [] : [Math.abs(e.angleError)]));
  return [
    `ends measured ${of(seen.length, ends.length)}; pitch within 0.6 % on ${of(seen.filter((e) => Math.abs(e.pitchError!) <= 0.006).length, ends.length)}; the right thread leads on ${of(seen.filter((e) => e.leads).length, ends.length)}`,
    `cone claimed on ${of(claims.filter((e) => e.coneDeg !== null).length, cones.length)}, and on ${of(claims.filter((e) => e.coneDeg === null).length, seen.length - cones.length)} that have none; rightly on ${of(right.length, claims.length)}`,
    `half angle within 1.5° on ${of(angles.filter((a) => a <= 1.5).length, cones.length)} of the cones (target ≥ 85 %), measured on ${angles.length}`,
    `across flats within 1.5 % on ${of(flats.filter((f) => Math.abs(f.error) <= 0.015).length, seen.length)} (target ≥ 90 %); its 95 % interval covers ${of(flats.filter((f) => Math.abs(f.z) <= 1.96).length, flats.length)}`,
  ].join('\n');
}
