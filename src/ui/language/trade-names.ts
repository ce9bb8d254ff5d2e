import { t } from './language';

/** Trade names come from the tables in English; a name without a translation is shown as it is. */
export function tradeName(name: string): string {
  const known: Readonly<Record<string, string>> = t().tradeNames;
  return Object.hasOwn(known, name) ? known[name] : name;
}
