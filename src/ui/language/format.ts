import type { Estimate } from '../../quantity/estimate';
import { language, t } from './language';

const cache = new Map<string, Intl.NumberFormat>();

/** Fixed decimals in the current language, e.g. 1,59 in French; no grouping, as on a drawing. */
export function number(value: number, decimals: number): string {
  const key = `${language()}${decimals}`;
  let format = cache.get(key);
  if (!format) {
    format = new Intl.NumberFormat(language(), {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
      useGrouping: false,
    });
    cache.set(key, format);
  }
  // A true minus, as wide as a figure.
  return format.format(value).replace('-', '−');
}

/** Decimals that show an uncertainty with two significant digits, at most `most`. */
export function decimalsFor(u: number, most = 4): number {
  if (!(u > 0)) return 2;
  return Math.min(most, Math.max(0, 1 - Math.floor(Math.log10(u))));
}

/** Value ± U with U = 2u, the 95 % interval of a normal error (JCGM 100:2008, 6.2.1 and G.6.6). */
export function plusMinus(estimate: Estimate, unit = '', most = 4): string {
  const expanded = 2 * estimate.u;
  const decimals = decimalsFor(expanded, most);
  const text = `${number(estimate.value, decimals)} ± ${number(expanded, decimals)}`;
  return unit ? `${text} ${unit}` : text;
}

/** A table's length in both units, the thread's own first. */
export function bothUnits(mm: number, inchFirst: boolean): string {
  const metric = `${number(mm, 2)} mm`;
  const inch = `${number(mm / 25.4, 3)} in`;
  return inchFirst ? `${inch} · ${metric}` : `${metric} · ${inch}`;
}

/** A measured length in both units, each with its interval. */
export function plusMinusBoth(estimate: Estimate, inchFirst: boolean): string {
  const inches = { value: estimate.value / 25.4, u: estimate.u / 25.4 };
  const metric = plusMinus(estimate, 'mm');
  const inch = plusMinus(inches, 'in', 5);
  return inchFirst ? `${inch} (${metric})` : `${metric} (${inch})`;
}

/** A measured pitch in mm and as threads per inch, each with its interval. */
export function pitchBoth(pitchMm: Estimate, tpiFirst: boolean): string {
  const turns = 25.4 / pitchMm.value;
  const perInch = { value: turns, u: (turns * pitchMm.u) / pitchMm.value };
  const metric = plusMinus(pitchMm, 'mm');
  const tpi = plusMinus(perInch, t().reading.units.tpi);
  return tpiFirst ? `${tpi} (${metric})` : `${metric} (${tpi})`;
}

/** Percent for people: '99.9 %' never rounds up to certainty, nor '0.1 %' down to none. */
export function percent(probability: number): string {
  const p = probability * 100;
  if (p > 0 && p < 0.1) return `< ${number(0.1, 1)} %`;
  if (p > 99.9 && p < 100) return `> ${number(99.9, 1)} %`;
  return `${number(p, p < 10 || p > 90 ? 1 : 0)} %`;
}

/** The browser's own region where it speaks the chosen language, for dates. */
function region(): string {
  return navigator.languages.find((tag) => tag.startsWith(language())) ?? language();
}

export function bytes(count: number): string {
  if (count < 1e6) return `${number(count / 1e3, 0)} kB`;
  if (count < 1e9) return `${number(count / 1e6, 1)} MB`;
  return `${number(count / 1e9, 1)} GB`;
}

export function dateTime(at: number | string): string {
  return new Intl.DateTimeFormat(region(), { dateStyle: 'medium', timeStyle: 'short' }).format(
    new Date(at),
  );
}
