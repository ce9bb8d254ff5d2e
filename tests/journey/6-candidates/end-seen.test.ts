import { describe, expect, test } from 'vitest';
import { claimedSeat, seatsSeen } from '../../../src/journey/6-candidates/end-seen';
import { parseReading } from '../../../src/journey/6-candidates/parse-reading';
import type { MeasuredThread } from '../../../src/journey/6-candidates/photo-likelihood';
import { conclude } from '../../../src/journey/7-next-reading/conclude';

/** 9/16-18 with a cone of this half angle ahead of it: 14.2875 mm (ASME B1.1); ISO 8434-2 size -6, ISO 11926 and
 *  ISO 8434-3 share it. */
function photo(halfAngleDeg: number | null): MeasuredThread {
  return {
    pitchMm: { value: 25.4 / 18, u: 0.003 },
    majorDiameterMm: { value: 14.2, u: 0.03 },
    correlation: 0.5,
    taper: { value: 0, u: 0.004 },
    flankAngleDeg: null,
    noseHalfAngleDeg: halfAngleDeg === null ? null : { value: halfAngleDeg, u: 0.8 },
    turns: 7,
    middleFromEndMm: null,
  };
}

const read = (text: string) => {
  const reading = parseReading(text);
  if (!reading.ok) throw new Error(text);
  return reading.value;
};

describe('a cone measured ahead of the thread', () => {
  test('leads its connection; without it the look of the end is asked for', () => {
    expect(conclude(photo(37.2), []).connections[0]!.family).toBe('ISO 8434-2');
    const { decision } = conclude(photo(null), []);
    expect(decision.connection).toBeNull();
    expect(decision.ask?.reading).toBe('seat');
  });

  test('denied, the photo says nothing of the end, and the end is asked for', () => {
    const { decision, connections } = conclude(photo(37.2), [read('other-seat=cone-37')]);
    expect(decision.connection).toBeNull();
    expect(connections[0]!.family).not.toBe('ISO 8434-2');
    expect(decision.ask?.reading).toBe('seat');
  });

  test('another seat seen by eye is not outvoted by the photo', () => {
    const { decision } = conclude(photo(37.2), [read('seat=o-ring-at-hex')]);
    expect(decision.connection?.family).not.toBe('ISO 8434-2');
  });
});

describe('in the words of the seats', () => {
  test.each([
    [30.3, 'cone-30', true],
    [37.2, 'cone-37', true],
    // Most chamfers are of 45°.
    [44.6, 'cone-45', false],
  ] as const)(
    '%s degrees speak for %s (claimed: %s), and the shares sum to 1',
    (value, seat, claimed) => {
      const seen = seatsSeen({ value, u: 0.8 })!;
      expect(Object.values(seen).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
      expect(seen[seat]).toBeGreaterThan(0.8);
      expect(claimedSeat({ value, u: 0.8 })).toBe(claimed ? seat : null);
    },
  );

  test('between two cones, or without an angle, nothing is claimed', () => {
    expect(claimedSeat({ value: 41, u: 0.8 })).toBeNull();
    expect(seatsSeen(null)).toBeNull();
    expect(claimedSeat(null)).toBeNull();
  });
});
