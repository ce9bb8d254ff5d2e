import { expect, test } from 'vitest';
import { loupePlace } from '../../src/ui/reference/loupe-place';

const size = { radius: 58, offset: 110 };
const box = { x: 0, y: 0, width: 358, height: 267 };

test.each([
  ['above, where there is room', [180, 200], [180, 90]],
  ['below, near the upper edge', [180, 60], [180, 170]],
  ['beside, in the middle of a low view', [180, 133], [70, 133]],
  ['to the other side, near the left edge', [60, 133], [170, 133]],
  ['moved in from the side', [350, 200], [300, 90]],
] as const)('%s', (_, mark, middle) => {
  expect(loupePlace(mark, box, size)).toEqual(middle);
});

test('all of it is seen in a part that is zoomed in, too', () => {
  const part = { x: 1000, y: 700, width: 358, height: 267 };
  for (let x = 1000; x <= 1358; x += 40)
    for (let y = 700; y <= 967; y += 40) {
      const [px, py] = loupePlace([x, y], part, size);
      expect(px - 58).toBeGreaterThanOrEqual(1000);
      expect(px + 58).toBeLessThanOrEqual(1358);
      expect(py - 58).toBeGreaterThanOrEqual(700);
      expect(py + 58).toBeLessThanOrEqual(967);
      expect(Math.hypot(px - x, py - y), 'clear of the mark').toBeGreaterThanOrEqual(100);
    }
});
