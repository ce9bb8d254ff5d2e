import { createSignal } from 'solid-js';
import { keepText, keptText } from '../widgets/kept-text';
import type { Dictionary } from './dictionary';
import { en } from './en';

export const languages = { en: 'English', fr: 'Français', de: 'Deutsch', es: 'Español' } as const;
export type Language = keyof typeof languages;

const key = 'crestwise.language';

const loaders: Record<Exclude<Language, 'en'>, () => Promise<Dictionary>> = {
  fr: async () => (await import('./fr')).fr,
  de: async () => (await import('./de')).de,
  es: async () => (await import('./es')).es,
};

const [dictionary, setDictionary] = createSignal<Dictionary>(en);
const [language, setCurrent] = createSignal<Language>('en');

export { language };
/** The words of the current language; reactive. */
export const t = dictionary;

export async function setLanguage(to: Language, keep = true): Promise<void> {
  const words = to === 'en' ? en : await loaders[to]();
  setDictionary(() => words);
  setCurrent(to);
  document.documentElement.lang = to;
  if (keep) keepText(key, to);
}

/** What was chosen before, else the first of the browser's languages that we have. */
export function initialLanguage(): Language {
  const kept = recall();
  if (kept) return kept;
  for (const wanted of navigator.languages ?? []) {
    const short = wanted.slice(0, 2).toLowerCase();
    if (isLanguage(short)) return short;
  }
  return 'en';
}

function isLanguage(text: string | null): text is Language {
  return text !== null && Object.hasOwn(languages, text);
}

function recall(): Language | null {
  const kept = keptText(key);
  return isLanguage(kept) ? kept : null;
}
