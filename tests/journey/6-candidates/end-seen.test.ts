import { describe, expect, test } from 'vitest';
import type { EndShows } from '../../../src/journey/5-measurement/thread-measurement';
import {
  claimedSeat,
  coneAngle,
  seatsSeen,
  seatToDraw,
} from '../../../src/journey/6-candidates/end-seen';
import { parseReading } from '../../../src/journey/6-candidates/parse-reading';
import type { MeasuredThread } from '../../../src/journey/6-candidates/photo-likelihood';
import { conclude } from '../../../src/journey/7-next-reading/conclude';

/** 9/16-18 with a cone of this half angle ahead of it: 14.2875 mm (ASME B1.1); ISO 8434-2 size -6, ISO 11926 and
 *  ISO 8434-3 share it. */
function photo(halfAngleDeg: number | null, endShows?: EndShows): MeasuredThread {
  return {
    pitchMm: { value: 25.4 / 18, u: 0.003 },
    majorDiameterMm: { value: 14.2, u: 0.03 },
    correlation: 0.5,
    taper: { value: 0, u: 0.004 },
    flankAngleDeg: null,
    noseHalfAngleDeg: halfAngleDeg === null ? null : { value: halfAngleDeg, u: 0.8 },
    turns: 7,
    middleFromEndMm: null,
    endShows,
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

describe('what is drawn of a seat', () => {
  const looks = (ring: number, shoulder = 0) => ({
    noseHalfAngleDeg: null,
    endShows: {
      nose: { none: 0.99, 'cone-30': 0.003, 'cone-37': 0.004, 'cone-45': 0.003 },
      base: { none: 1 - ring - shoulder, 'o-ring': ring, shoulder },
    },
  });

  test('a ring that the end looks to have is claimed and drawn, a shoulder, which several seats have, drawn', () => {
    expect(seatToDraw(looks(0.98))).toBe('o-ring-at-hex');
    expect(claimedSeat(looks(0.98))).toBe('o-ring-at-hex');
    expect(seatToDraw(looks(0.01, 0.98))).toBe('flat-washer-face');
    expect(claimedSeat(looks(0.01, 0.98))).toBeNull();
  });

  test('what may as well be something else is not', () => {
    expect(seatToDraw(looks(0.6, 0.2))).toBeNull();
    expect(seatToDraw(looks(0.01))).toBeNull();
  });

  test('what is claimed is', () => {
    const cone = { noseHalfAngleDeg: { value: 37.2, u: 0.8 } };
    expect(seatToDraw(cone)).toBe(claimedSeat(cone));
    expect(seatToDraw(cone)).toBe('cone-37');
  });
});

const angled = (value: number) => ({ noseHalfAngleDeg: { value, u: 0.8 } });

describe('in the words of the seats', () => {
  test.each([
    [30.3, 'cone-30', true],
    [37.2, 'cone-37', true],
    // Most chamfers are of 45°.
    [44.6, 'cone-45', false],
  ] as const)(
    '%s degrees speak for %s (claimed: %s), and the shares sum to 1',
    (value, seat, claimed) => {
      const seen = seatsSeen(angled(value))!;
      expect(Object.values(seen).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
      expect(seen[seat]).toBeGreaterThan(0.8);
      expect(claimedSeat(angled(value))).toBe(claimed ? seat : null);
    },
  );

  test('between two cones, or where nothing was seen, nothing is claimed', () => {
    expect(claimedSeat(angled(41))).toBeNull();
    expect(seatsSeen({ noseHalfAngleDeg: null })).toBeNull();
    expect(claimedSeat({ noseHalfAngleDeg: null })).toBeNull();
  });
});

/** Shares by looks: the named kinds have nearly all of them. */
function looks(nose: keyof EndShows['nose'], base: keyof EndShows['base']): EndShows {
  const most = <K extends string>(kinds: readonly K[], top: K, rest: number) =>
    Object.fromEntries(
      kinds.map((kind) => [kind, kind === top ? 1 - rest * (kinds.length - 1) : rest]),
    ) as Record<K, number>;
  return {
    nose: most(['none', 'cone-30', 'cone-37', 'cone-45'], nose, 0.001),
    base: most(['none', 'o-ring', 'shoulder'], base, 0.001),
  };
}

describe('what an end looks like', () => {
  test.each([
    ['cone-37', 'none', 'ISO 8434-2'],
    ['none', 'o-ring', 'ISO 11926'],
    ['none', 'none', 'ISO 8434-3'],
  ] as const)('%s before the thread and %s behind it: %s leads', (nose, base, family) => {
    const { connections } = conclude(photo(null, looks(nose, base)), []);
    expect(connections[0]!.family).toBe(family);
  });

  test('settles the connection of a settled thread without a reading', () => {
    const { decision } = conclude(photo(null, looks('none', 'o-ring')), []);
    expect(decision.connection?.family).toBe('ISO 11926');
    expect(decision.state).toBe('settled');
  });

  test('a plain base leaves a stud possible whose ring is lost', () => {
    const { connections } = conclude(photo(null, looks('none', 'none')), []);
    const stud = connections.find(({ family }) => family === 'ISO 11926')!;
    expect(stud.probability).toBeGreaterThan(0.03);
  });

  // ISO 1179 has no G5/8, ISO 8434-6 has: its 60° cone inside has no shoulder (both from memory).
  test('that no listed connection of the thread has settles none of them', () => {
    const wide: MeasuredThread = {
      ...photo(null),
      pitchMm: { value: 25.4 / 14, u: 0.003 },
      majorDiameterMm: { value: 22.8, u: 0.04 },
    };
    const settled = (base: keyof EndShows['base']) =>
      conclude({ ...wide, endShows: looks('none', base) }, []).decision.connection;
    expect(settled('shoulder')).toBeNull();
    expect(settled('none')?.family).toBe('ISO 8434-6');
  });

  test('denied, it says nothing', () => {
    const { decision } = conclude(photo(null, looks('none', 'o-ring')), [
      read('other-seat=o-ring-at-hex'),
    ]);
    expect(decision.connection).toBeNull();
  });

  test('is claimed by one seat where one alone looks so', () => {
    const shown = (endShows: EndShows) => ({ noseHalfAngleDeg: null, endShows });
    expect(claimedSeat(shown(looks('cone-30', 'none')))).toBe('cone-30');
    expect(claimedSeat(shown(looks('none', 'o-ring')))).toBe('o-ring-at-hex');
    expect(claimedSeat(shown(looks('none', 'none')))).toBeNull();
  });

  test('draws an angle that one side of the outline gave to the cone that it looks like', () => {
    const at = (value: number, u: number) =>
      coneAngle({ noseHalfAngleDeg: { value, u }, endShows: looks('cone-37', 'none') })!;
    expect(at(39.6, 1.2).value).toBeGreaterThan(37);
    expect(at(39.6, 1.2).value).toBeLessThan(38);
    expect(at(39.6, 1.2).u).toBeLessThan(1.2);
    // What was measured well is not talked into another cone.
    expect(at(42, 0.6)).toEqual({ value: 42, u: 0.6 });
  });

  test('names the angle of the standard cone that it is, unless two are as likely', () => {
    const endShows = looks('cone-37', 'none');
    expect(coneAngle({ noseHalfAngleDeg: null, endShows })!.value).toBeCloseTo(37, 0);
    const nose = { none: 0.02, 'cone-30': 0.49, 'cone-37': 0.48, 'cone-45': 0.01 };
    expect(coneAngle({ noseHalfAngleDeg: null, endShows: { ...endShows, nose } })).toBeNull();
    expect(coneAngle({ noseHalfAngleDeg: null, endShows: looks('none', 'none') })).toBeNull();
  });
});
