import { expect, test } from 'vitest';
import { connections } from '../../src/standards/connections/connections';
import { familyCell } from '../../src/ui/standards/family-cell';
import { isFound } from '../../src/ui/standards/search';

/** Families of all rows that a search turns up. */
const found = (typed: string) => [
  ...new Set(connections.filter((c) => isFound(typed, familyCell(c))).map((c) => c.family)),
];

// Names of the trade (issue 12; common practice).
test.each([
  ['JIC', ['ISO 8434-2']],
  ['ORFS', ['ISO 8434-3']],
  ['ORB', ['ISO 11926', 'ISO 6149']],
  ['BSPP', ['ISO 1179', 'ISO 8434-6']],
  ['BSPT', ['ISO 7-1']],
  ['NPT', ['ASME B1.20.1', 'SAE J476']],
  ['NPTF', ['SAE J476']],
  ['NPSM', ['ASME B1.20.1']],
  ['DKO', ['ISO 8434-1']],
  ['L series', ['ISO 8434-1']],
  ['S series', ['ISO 8434-1']],
  ['SAE flange 3000 psi', ['ISO 6162-1']],
  ['SAE flange 6000 psi', ['ISO 6162-2']],
  ['code 62', ['ISO 6162-2']],
  ['inverted flare', ['SAE J512 inverted']],
  ['test point', ['ISO 15171']],
  ['metric taper', ['DIN 3852-1']],
] as const)('%s is a search word', (typed, families) => {
  expect(found(typed)).toEqual(expect.arrayContaining([...families]));
  expect(found(typed).length).toBeLessThan(5);
});

test('L and S rows are told apart, and a dash is not the end of a thread', () => {
  const sizes = (typed: string) =>
    connections.filter((c) => isFound(typed, `${familyCell(c)} ${c.size}`)).map((c) => c.size);
  expect(sizes('S series 12S')).toEqual(['12S', '12S']);
  expect(sizes('ORFS -16')).toEqual(['-16', '-16']);
  expect(isFound('-16', '11/16-16 UN')).toBe(false);
});
