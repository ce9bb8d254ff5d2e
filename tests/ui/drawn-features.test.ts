import { beforeAll, expect, test } from 'vitest';
import { parseReading } from '../../src/journey/6-candidates/parse-reading';
import type { Sheet } from '../../src/journey/8-sheet/sheet-schema';
import type { EndFeature } from '../../src/journey/overlay';
import { drawnFeatures } from '../../src/ui/identification/drawn-features';
import { tagPlace } from '../../src/ui/inspection/tag-place';
import { exampleSheet } from '../journey/8-sheet/example';

const cone: EndFeature = {
  end: 0,
  seat: 'cone-37',
  lines: [
    [
      [190, 170],
      [160, 200],
    ],
    [
      [190, 310],
      [160, 280],
    ],
  ],
};
const other: EndFeature = { ...cone, end: 1, seat: 'cone-30' };

let example: Sheet;
beforeAll(async () => {
  example = (await exampleSheet()).sheet;
});

/** What is drawn on a photo that shows a cone of 37° and another one on its other end. */
function drawn(readings: readonly string[], angle: number | null = 37) {
  const [shot] = example.shots;
  const noseHalfAngleDeg = angle === null ? null : { value: angle, u: 0.6 };
  const sheet = {
    ...example,
    measurement: { ...example.measurement!, noseHalfAngleDeg },
    readings: readings.map((text) => {
      const read = parseReading(text);
      if (!read.ok) throw new Error(text);
      return read.value;
    }),
  } as Sheet;
  const overlay = { ...shot!.overlay!, ends: [cone, other] };
  return drawnFeatures(sheet, { ...shot!, overlay } as Sheet['shots'][0]).map(({ seat }) => seat);
}

test('what the sheet claims is drawn until somebody says otherwise', () => {
  expect(drawn([])).toEqual(['cone-37', 'cone-30']);
  expect(drawn(['seat=cone-37'])).toEqual(['cone-37', 'cone-30']);
  expect(drawn(['seat-gauge=37'])).toEqual(['cone-37', 'cone-30']);
  expect(drawn(['other-seat=cone-37'])).toEqual(['cone-30']);
  expect(drawn(['seat=cone-45'])).toEqual(['cone-30']);
  expect(drawn(['seat-gauge=45'])).toEqual(['cone-30']);
});

test('what all photos together leave open is not drawn on one of them', () => {
  expect(drawn([], null)).toEqual(['cone-30']);
  expect(drawn([], 41)).toEqual(['cone-30']);
});

test('a name stands beside its line, away from the thread, within the viewer', () => {
  const box = { x: 0, y: 0, width: 640, height: 480 };
  const named = { lines: cone.lines, threadAt: [320, 240] as const, letters: 8 };
  const at = tagPlace(named, box, 1)!;
  // The upper line's middle is at 175, 185.
  expect(at.x).toBeLessThan(175);
  expect(at.y).toBeLessThan(185);
  // Beside the lower line where the upper one has no room.
  const low = tagPlace(named, { ...box, y: 165 }, 1)!;
  expect(low.y).toBeGreaterThan(295 - 165);
  const close = tagPlace(named, { x: 150, y: 160, width: 64, height: 48 }, 0.1)!;
  expect(close.x).toBeGreaterThan(22);
  expect(close.y).toBeGreaterThan(21);
  expect(tagPlace(named, { ...box, x: 300 }, 1)).toBeNull();
});
