import { expect, test } from 'vitest';
import { isBlack } from '../../src/scale-card/dictionary';
import { markers } from '../../src/scale-card/geometry';
import { markerOutlines } from '../../src/scale-card/marker-outline';
import { stockOpenCv } from './opencv';

test('modules are those OpenCV draws for DICT_4X4_50', async () => {
  const cv = await stockOpenCv();
  const dictionary = cv.getPredefinedDictionary(cv.DICT_4X4_50);
  const drawn = new cv.Mat();
  for (const { id } of markers) {
    dictionary.generateImageMarker(id, 6, drawn, 1);
    const ours = Array.from({ length: 36 }, (_, i) =>
      isBlack(id, Math.floor(i / 6), i % 6) ? 0 : 255,
    );
    expect(Array.from(drawn.data), `marker ${id}`).toEqual(ours);
  }
  drawn.delete();
  dictionary.delete();
});

test('outlines enclose exactly the black modules', () => {
  for (const { id } of markers) {
    const outlines = markerOutlines(id);
    for (let row = 0; row < 6; row++)
      for (let column = 0; column < 6; column++) {
        const crossings = outlines.flatMap((outline) =>
          outline.filter(([x, y], i) => {
            const [nx, ny] = outline[(i + 1) % outline.length]!;
            return (
              x === nx &&
              x > column + 0.5 &&
              Math.min(y, ny) < row + 0.5 &&
              Math.max(y, ny) > row + 0.5
            );
          }),
        );
        expect(crossings.length % 2 === 1, `marker ${id} row ${row} column ${column}`).toBe(
          isBlack(id, row, column),
        );
      }
  }
});
