import { expect, test } from 'vitest';
import { trusted, untrusted } from '../../../src/journey/5-end/end-look';

const trust = { temperature: 1.2, mistaken: 0.012 };

test('shares add to 1, none is certain, and what was said can be had back from them', () => {
  const said = [4, -1, 0.5, -3];
  const shares = trusted(said, trust);
  expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  expect(Math.min(...shares)).toBeGreaterThanOrEqual(trust.mistaken / 4);
  const back = untrusted(shares, trust);
  for (const [i, v] of back.entries()) expect(v - back[0]!).toBeCloseTo(said[i]! - said[0]!, 6);
});

test('less is believed of what was said with a higher temperature, or is wrong more often', () => {
  const first = (t: typeof trust) => trusted([3, 0, 0], t)[0]!;
  expect(first({ ...trust, temperature: 2 })).toBeLessThan(first(trust));
  expect(first({ ...trust, mistaken: 0.1 })).toBeLessThan(first(trust));
});
