import { expect, test } from 'vitest';
import { connections } from '../../src/standards/connections/connections';
import { families, familyOf, notesOn } from '../../src/standards/families';

test('every family of the tables is described, and none besides', () => {
  const inTables = new Set(connections.map((c) => c.family));
  expect(new Set(families.map((f) => f.family))).toEqual(inTables);
});

test('a key stands for one sentence', () => {
  const byKey = new Map<string, string>();
  for (const { key, en } of families.flatMap((f) => f.notes)) {
    expect(byKey.get(key) ?? en).toBe(en);
    byKey.set(key, en);
    expect(key).toMatch(/^family(\.[a-z0-9-]+){2}$/);
    expect(en).toMatch(/^[A-Z0-9].*\.$/);
  }
  expect(byKey.size).toBeGreaterThan(30);
});

test('the shared threads that the sentences name are shared in the tables', () => {
  const sizesOn = (family: string, other: string) =>
    connections
      .filter((c) => c.family === family && c.end === 'male')
      .filter((c) =>
        connections.some((o) => o.family === other && o.end === 'male' && o.thread === c.thread),
      )
      .map((c) => c.size);
  expect(sizesOn('ISO 8434-3', 'ISO 8434-2')).toEqual(['-4', '-12']);
  expect(sizesOn('ISO 8434-2', 'SAE J512')).toEqual(
    expect.arrayContaining(['-2', '-3', '-4', '-5', '-8', '-10']),
  );
  expect(sizesOn('ISO 11926', 'ISO 8434-2')).toHaveLength(13);
  expect(familyOf('ISO 8434-3')?.notes.some((n) => /90 durometer/.test(n.en))).toBe(true);
  expect(familyOf('nothing')).toBeNull();
});

test('an NPSM swivel is not told how the taper of its standard seals', () => {
  const swivel = notesOn({ family: 'ASME B1.20.1', form: 'NPSM swivel' });
  expect(swivel.map(({ en }) => en)).toEqual([expect.stringContaining('60° chamfer')]);
  expect(notesOn({ family: 'ASME B1.20.1', form: null }).length).toBeGreaterThan(1);
});
