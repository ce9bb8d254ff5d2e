import { describe, expect, it } from 'vitest';
import { helixOf } from '../../../src/journey/4-thread-signal/helix';
import { seededRandom } from '../../../src/quantity/random';

const pitchMm = 1.5;
const stepMm = 0.1;
const azimuths = Array.from({ length: 40 }, (_, k) => ((k - 19.5) / 19.5) * 1.25);

/** Ridges whose crest lies at s = climb · φ: looking along +s, azimuths grow to the left, so that a right-handed
 *  screw, which turns to the right as it goes, has climb −p/2π. */
function ridges(climbMm: number, wave: (turns: number) => number, noise = 0.5) {
  const random = seededRandom(3);
  return {
    azimuths,
    fromS: 0,
    stepMm,
    rows: azimuths.map((phi) =>
      Float64Array.from(
        { length: 110 },
        (_, i) => wave((i * stepMm - climbMm * phi) / pitchMm) + noise * random.normal(),
      ),
    ),
  };
}

const plain = (turns: number) => Math.cos(2 * Math.PI * turns);
/** Crest and root shine alike: the first harmonic is all but gone. */
const twice = (turns: number) =>
  Math.cos(4 * Math.PI * turns) + 0.05 * Math.cos(2 * Math.PI * turns);
const lead = pitchMm / (2 * Math.PI);

describe('how ridges climb', () => {
  it.each([
    ['one crest a turn', plain],
    ['crest and root alike', twice],
  ])('%s: right- and left-handed helices told apart', (_, wave) => {
    const right = helixOf(ridges(-lead, wave), pitchMm);
    expect(right.right).toBeGreaterThan(0.9);
    expect(right.left).toBeLessThan(0.6);
    const left = helixOf(ridges(lead, wave), pitchMm);
    expect(left.left).toBeGreaterThan(0.9);
    expect(left.right).toBeLessThan(0.6);
  });

  it('rings climb neither way', () => {
    const { right, left } = helixOf(ridges(0, plain), pitchMm);
    expect(Math.abs(right - left)).toBeLessThan(0.05);
    expect(right).toBeLessThan(0.85);
  });

  it('noise climbs nowhere', () => {
    const { right, left } = helixOf(
      ridges(0, () => 0),
      pitchMm,
    );
    expect(Math.max(right, left)).toBeLessThan(0.5);
  });
});
