import { describe, expect, it } from 'vitest';
import { connections } from '../../src/standards/connections/connections';
import { families } from '../../src/standards/families';
import { de } from '../../src/ui/language/de';
import { en } from '../../src/ui/language/en';
import { es } from '../../src/ui/language/es';
import { fr } from '../../src/ui/language/fr';

/** Every string of a dictionary with its path; functions are called with their own argument names. */
function strings(node: unknown, path = ''): [path: string, text: string][] {
  if (typeof node === 'string') return [[path, node]];
  if (typeof node === 'function') return [[path, node('2', 'x', 'y')]];
  // English has its family notes in the tables.
  if (path === '.trade.familyNotes') return [];
  return Object.entries(node as object).flatMap(([key, value]) => strings(value, `${path}.${key}`));
}

describe('dictionaries', () => {
  const english = new Map(strings(en));
  for (const [name, words] of Object.entries({ de, fr, es })) {
    it(`${name} has a word for every English one, and none empty`, () => {
      const there = new Map(strings(words));
      expect([...there.keys()].sort()).toEqual([...english.keys()].sort());
      expect([...there].filter(([, text]) => text.trim() === '')).toEqual([]);
    });

    it(`${name} leaves no sentence in English`, () => {
      const same = strings(words).filter(
        ([path, text]) => text === english.get(path) && text.split(' ').length > 3,
      );
      expect(same).toEqual([]);
    });
  }

  it('knows every trade name of the tables', () => {
    const missing = connections.filter((c) => !Object.hasOwn(en.tradeNames, c.tradeName));
    expect(missing.map((c) => c.tradeName)).toEqual([]);
  });

  it('says every family note of the tables in every language, and none besides', () => {
    const keys = families.flatMap((f) => f.notes.map(({ key }) => key.replace('family.', '')));
    for (const { trade } of [de, fr, es])
      expect(Object.keys(trade.familyNotes).sort()).toEqual([...new Set(keys)].sort());
  });

  // Words that mislead or are wrong in the trade (issue 12).
  it.each([
    ['en', en, /in all\b|Keep away|Goes with|\bhardly\b|cure a leak/],
    [
      'de',
      de,
      /im Ganzen|Reihe 6[12]|Innenbördel|Einschnitt|Leck stillen|Drehsinn|Gangzahl|Tresen|Gewindelehre \(Bl/,
    ],
    [
      'fr',
      fr,
      /gaz conique \(NPT\)|peigne|\bbout\b(?! du tube)|[Tt]iroir|série 6[12]|tarir|Taille dash|glycolée|Évasement intérieur|[Tt]ranch/,
    ],
    ['es', es, /gas cónica \(NPT\)|espiga|tuerca giratoria|[Cc]ajón|\bcurar\b|apenas|Calibre,/],
  ] as const)('%s has none of the words that the trade rejects', (_, words, wrong) => {
    expect(strings(words).filter(([, text]) => wrong.test(text))).toEqual([]);
  });
});
