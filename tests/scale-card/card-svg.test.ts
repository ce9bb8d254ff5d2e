import { expect, test } from 'vitest';
import { cardSvg } from '../../src/scale-card/card-svg';
import { markers } from '../../src/scale-card/geometry';
import { en } from '../../src/ui/language/en';

test('true size, one path for each printed area, all inside the card', () => {
  for (const field of ['light', 'dark'] as const) {
    const svg = cardSvg(field, en.cardWords);
    expect(svg).toContain('width="184mm" height="136mm" viewBox="0 0 184 136"');
    const paths = [...svg.matchAll(/fill-rule="evenodd" d="([^"]+)"/g)].map((m) => m[1]!);
    expect(paths).toHaveLength(markers.length + 6 + (field === 'dark' ? 1 : 0));
    const numbers = paths.flatMap((d) => [...d.matchAll(/([\d.]+) ([\d.]+)/g)]);
    for (const [, x, y] of numbers) {
      expect(Number(x)).toBeLessThan(184);
      expect(Number(y)).toBeLessThan(136);
    }
    expect(paths[0]).toMatch(/18 18/);
  }
});

test('words cannot add markup', () => {
  const svg = cardSvg('light', { ...en.cardWords, title: '<script>"&\'</script>' });
  expect(svg).not.toContain('<script');
  expect(svg).toContain('&#60;script&#62;');
});
