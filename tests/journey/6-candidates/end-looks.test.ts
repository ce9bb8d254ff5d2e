import { describe, expect, test } from 'vitest';
import {
  type EndLook,
  type EndLooks,
  endLooks,
} from '../../../src/journey/5-measurement/thread-measurement';
import {
  claimedSeat,
  coneAngleSeen,
  likeliestLook,
  seatsSeen,
  showsCone,
} from '../../../src/journey/6-candidates/end-looks';
import { parseReading } from '../../../src/journey/6-candidates/parse-reading';
import type { MeasuredThread } from '../../../src/journey/6-candidates/photo-likelihood';
import { conclude } from '../../../src/journey/7-next-reading/conclude';

/** All but this share on one look. */
function mostly(look: EndLook, rest = 0.005): EndLooks {
  const each = (one: EndLook) => (one === look ? 1 - rest : rest / (endLooks.length - 1));
  return Object.fromEntries(endLooks.map((one) => [one, each(one)])) as Record<EndLook, number>;
}

const even = mostly('plain', 5 / 6);

function photo(pitchMm: number, majorMm: number, looks: EndLooks | null): MeasuredThread {
  return {
    pitchMm: { value: pitchMm, u: 0.002 * pitchMm },
    majorDiameterMm: { value: majorMm, u: 0.002 * majorMm },
    correlation: 0.5,
    taper: { value: 0, u: 0.004 },
    flankAngleDeg: null,
    noseHalfAngleDeg: null,
    turns: 7,
    middleFromEndMm: null,
    looks,
  };
}

const read = (text: string) => {
  const reading = parseReading(text);
  if (!reading.ok) throw new Error(text);
  return reading.value;
};

// ISO 725 and ASME B1.1: 9/16-18 has 14.2875 mm; ISO 8434-2 size -6, ISO 11926 and ISO 8434-3 share it.
const nineSixteenths = (looks: EndLooks | null) => photo(25.4 / 18, 14.2, looks);

describe('what the photo shows of the end settles what its thread leaves open', () => {
  test('without it, the look of the end is asked for', () => {
    const { decision } = conclude(nineSixteenths(null), []);
    expect(decision.connection).toBeNull();
    expect(decision.ask?.reading).toBe('seat');
  });

  test.each([
    ['cone-37', 'ISO 8434-2'],
    ['o-ring-at-hex', 'ISO 11926'],
  ] as const)('%s: %s, and nothing is asked', (look, family) => {
    const { decision } = conclude(nineSixteenths(mostly(look)), []);
    expect(decision).toMatchObject({ state: 'settled', connection: { family }, ask: null });
  });

  test('an end of which nothing can be told says no more than none', () => {
    const [without, open] = [null, even].map((looks) => conclude(nineSixteenths(looks), []));
    expect(open!.decision.ask?.reading).toBe(without!.decision.ask?.reading);
    for (const { family, size, probability } of without!.connections) {
      const same = open!.connections.find((one) => one.family === family && one.size === size);
      expect(same?.probability).toBeCloseTo(probability, 2);
    }
  });

  test('a cone that may be either flare leaves both, and a gauge is asked for', () => {
    // 3/4-16 is size -8 of both flares (ISO 8434-2 and SAE J512).
    const looks: EndLooks = { ...mostly('plain', 0.99), 'cone-37': 0.49, 'cone-45': 0.49 };
    const sum = endLooks.reduce((total, look) => total + looks[look], 0);
    const shared = Object.fromEntries(endLooks.map((look) => [look, looks[look] / sum])) as Record<
      EndLook,
      number
    >;
    const { decision, connections } = conclude(photo(25.4 / 16, 18.95, shared), []);
    expect(decision.connection).toBeNull();
    expect(
      connections
        .slice(0, 2)
        .map(({ family }) => family)
        .sort(),
    ).toEqual(['ISO 8434-2', 'SAE J512']);
    expect(['seat', 'seat-gauge']).toContain(decision.ask?.reading);
  });
});

describe('a person who has the part in hand has the last word', () => {
  test('denied, the photo says nothing of the end, and the end is asked for', () => {
    const seen = nineSixteenths(mostly('cone-37'));
    const { decision, connections } = conclude(seen, [read('other-seat=cone-37')]);
    expect(decision.connection).toBeNull();
    expect(connections[0]!.family).not.toBe('ISO 8434-2');
    expect(decision.ask?.reading).toBe('seat');
  });

  test('another seat seen by eye is not outvoted by the photo', () => {
    const seen = nineSixteenths(mostly('cone-37'));
    const { decision } = conclude(seen, [read('seat=o-ring-at-hex')]);
    expect(decision.connection?.family).not.toBe('ISO 8434-2');
  });
});

describe('in the words of the seats', () => {
  test('shares sum to 1, and the seat that was seen has most', () => {
    for (const look of endLooks) {
      const seen = seatsSeen({ looks: mostly(look), noseHalfAngleDeg: null })!;
      expect(Object.values(seen).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
      if (look.startsWith('cone-') || look === 'o-ring-at-hex')
        expect(seen[look as 'cone-37']).toBeGreaterThan(0.9);
    }
  });

  test('a plain outline names no seat: several look so', () => {
    const plain = { looks: mostly('plain'), noseHalfAngleDeg: null };
    expect(claimedSeat(plain)).toBeNull();
    expect(likeliestLook(plain)).toBe('plain');
    expect(Math.max(...Object.values(seatsSeen(plain)!))).toBeLessThan(0.5);
  });

  test('a claim is made where one look has nearly all, and none where two share', () => {
    expect(claimedSeat({ looks: mostly('shoulder'), noseHalfAngleDeg: null })).toBe(
      'flat-washer-face',
    );
    const either = { ...mostly('plain', 0.98), 'cone-37': 0.49, 'cone-45': 0.49, plain: 0.02 };
    expect(claimedSeat({ looks: either, noseHalfAngleDeg: null })).toBeNull();
    expect(showsCone({ looks: either, noseHalfAngleDeg: null })).toBe(true);
    // The angle tells the two apart.
    const measured = { looks: either, noseHalfAngleDeg: { value: 44.6, u: 0.8 } };
    expect(claimedSeat(measured)).toBe('cone-45');
  });

  test('the angle is that of the outline; else that of the cone that stands out, or none', () => {
    const outline = { value: 38.1, u: 0.8 };
    expect(coneAngleSeen({ looks: mostly('cone-37'), noseHalfAngleDeg: outline })).toBe(outline);
    const seen = coneAngleSeen({ looks: mostly('cone-37'), noseHalfAngleDeg: null })!;
    expect(Math.abs(seen.value - 37)).toBeLessThan(0.5);
    expect(seen.u).toBeLessThan(1.5);
    const either = { ...mostly('plain', 0.98), 'cone-37': 0.49, 'cone-45': 0.49, plain: 0.02 };
    expect(coneAngleSeen({ looks: either, noseHalfAngleDeg: null })).toBeNull();
    expect(coneAngleSeen({ looks: mostly('plain'), noseHalfAngleDeg: null })).toBeNull();
  });

  test('an angle alone, measured along the outline, claims its cone', () => {
    const measured = (value: number) => ({ looks: null, noseHalfAngleDeg: { value, u: 0.8 } });
    expect(claimedSeat(measured(37.2))).toBe('cone-37');
    expect(seatsSeen(measured(37.2))!['cone-37']).toBeGreaterThan(0.8);
    // Between two cones there is none to claim.
    expect(claimedSeat(measured(41))).toBeNull();
  });

  test('not looked at, nothing is said', () => {
    expect(seatsSeen({ looks: null, noseHalfAngleDeg: null })).toBeNull();
    expect(claimedSeat({ looks: undefined, noseHalfAngleDeg: null })).toBeNull();
  });
});
