import type { EndScore } from './end-score';

const of = (part: number, all: number) =>
  `${part} of ${all}${all > 0 ? ` (${((100 * part) / all).toFixed(0)} %)` : ''}`;

/** The seat that an end shows from outside; null: it shows none. */
const trueSeat = ({ coneDeg, base }: EndScore): EndScore['claimed'] => {
  const cone = ([30, 37, 45] as const).find((deg) => deg === coneDeg);
  if (cone) return `cone-${cone}`;
  return base === 'o-ring' ? 'o-ring-at-hex' : base === 'shoulder' ? 'flat-washer-face' : null;
};

/** How often the ends of the parts were seen for what they are; empty where no truth says. */
export function endTable(ends: readonly EndScore[]): string {
  if (ends.length === 0) return '';
  const seen = ends.filter((e) => e.measured);
  const cones = seen.filter((e) => e.coneDeg !== null);
  const claims = seen.filter((e) => e.claimed !== null);
  const right = claims.filter((e) => e.claimed === trueSeat(e));
  const shown = seen.flatMap((e) => (e.shows ? [{ ...e, shows: e.shows }] : []));
  const told = (right: (e: (typeof shown)[number]) => boolean, among = shown) =>
    of(among.filter(right).length, among.length);
  const looked = seen.filter((e) => e.threadShows !== null);
  const seenAs = (right: (e: EndScore) => boolean) =>
    of(looked.filter(right).length, looked.length);
  const isBase = (base: EndScore['base']) => shown.filter((e) => e.base === base);
  const notBase = (base: EndScore['base']) => shown.filter((e) => e.base !== base);
  const flats = seen.flatMap((e) => (e.acrossFlats ? [e.acrossFlats] : []));
  const angles = cones.flatMap((e) => (e.angleError === null ? [] : [Math.abs(e.angleError)]));
  return [
    `ends measured ${of(seen.length, ends.length)}; pitch within 0.6 % on ${of(seen.filter((e) => Math.abs(e.pitchError!) <= 0.006).length, ends.length)}; the right thread leads on ${of(seen.filter((e) => e.leads).length, ends.length)}`,
    `cone told from none on ${told((e) => e.shows.nose.none < 0.5 === (e.coneDeg !== null))} (target ≥ 95 %)`,
    `O-ring at the hex found on ${told((e) => e.shows.base['o-ring'] > 0.5, isBase('o-ring'))} (target ≥ 90 %), and on ${told((e) => e.shows.base['o-ring'] > 0.5, notBase('o-ring'))} that have none (≤ 1 %); a shoulder on ${told((e) => e.shows.base.shoulder > 0.5, isBase('shoulder'))} (≥ 85 %), and on ${told((e) => e.shows.base.shoulder > 0.5, notBase('shoulder'))} that have none`,
    `profile of the thread told on ${seenAs((e) => e.threadShows!.profile[e.profile] > 0.5)}, tapered from straight on ${seenAs((e) => e.threadShows!.taper[e.taper] > 0.5)}`,
    `a seat claimed on ${of(claims.length, seen.length)}, rightly on ${of(right.length, claims.length)}`,
    `half angle within 1.5° on ${of(angles.filter((a) => a <= 1.5).length, cones.length)} of the cones (target ≥ 85 %), measured on ${angles.length}`,
    `across flats within 1.5 % on ${of(flats.filter((f) => Math.abs(f.error) <= 0.015).length, seen.length)} (target ≥ 90 %); its 95 % interval covers ${of(flats.filter((f) => Math.abs(f.z) <= 1.96).length, flats.length)}`,
  ].join('\n');
}
