import { describe, expect, test } from 'vitest';
import { type ResultPage, resultPdf } from '../../src/handover/result-pdf';
import { exampleOverlay } from '../journey/8-sheet/example';
import { rasterise, withPdf } from '../scale-card/rasterise';
import { encodeJpeg } from './node-jpeg';

const page: ResultPage = {
  paper: 'a4',
  heading: 'ISO 8434-3, size −6',
  subheading: 'Thread 11/16-16 UN · settled',
  photo: null,
  beside: [
    { kind: 'heading', text: 'Measured' },
    { kind: 'row', label: 'Pitch', value: '1.587 ± 0.006 mm (16.00 ± 0.06 tpi)' },
    { kind: 'row', label: 'Major diameter', value: '17.21 ± 0.10 mm' },
  ],
  left: [
    { kind: 'heading', text: 'Candidates' },
    { kind: 'row', label: '11/16-16 UN', value: '99.1 %' },
    { kind: 'heading', text: 'Mating end' },
    { kind: 'text', text: 'Female swivel with flat face; O-ring in the male end.' },
  ],
  right: [
    { kind: 'heading', text: 'Assembly' },
    { kind: 'list', items: ['Oil the O-ring.', 'Run the nut up by hand.'], numbered: true },
  ],
  cautions: {
    title: 'Before you undo or pressurise anything',
    items: ['Release the pressure.', 'Confirm the thread with a gauge.'],
  },
  titleBlock: [
    { label: 'Fitting', value: 'Boom cylinder, rod side' },
    { label: 'Made', value: '4 Mar 2026' },
    { label: 'Sheet', value: '3f2a' },
    { label: 'Program', value: 'Crestwise 0.1.0' },
  ],
};

const read = (pdf: Uint8Array) =>
  withPdf(pdf, (document) => ({
    pages: document.getPageCount(),
    text: document.getPage(0).getText(),
  }));

test('one page with every word on it', async () => {
  for (const paper of ['a4', 'letter'] as const) {
    const { pages, text } = await read(await resultPdf({ ...page, paper }));
    expect(pages).toBe(1);
    for (const word of [
      'ISO 8434-3, size -6',
      '11/16-16 UN',
      '1.587 ± 0.006 mm',
      'Female swivel',
      'Run the nut up by hand.',
      'Release the pressure.',
      'Boom cylinder, rod side',
    ])
      expect(text, word).toContain(word);
  }
});

test('long words shrink, then are cut; cautions and title block stay', async () => {
  const long = Array.from({ length: 400 }, (_, i) => `remark number ${i}`).join(', ');
  const { pages, text } = await read(
    await resultPdf({ ...page, left: [...page.left, { kind: 'text', text: long }] }),
  );
  expect(pages).toBe(1);
  expect(text).toContain('…');
  expect(text).toContain('Confirm the thread with a gauge.');
  expect(text).toContain('Boom cylinder, rod side');
});

test('words that no standard font has, and words without spaces, do not stop it', async () => {
  const { text } = await read(
    await resultPdf({
      ...page,
      heading: 'ポンプ Ω\u0000\u0007',
      right: [
        { kind: 'text', text: 'x'.repeat(500) },
        { kind: 'text', text: '' },
      ],
    }),
  );
  expect(text).toContain('???');
});

describe('the photo is printed upright', () => {
  // Stored quadrants: top left red, top right green, bottom left blue, bottom right white.
  const width = 64;
  const height = 48;
  const stored = { width, height, data: new Uint8ClampedArray(width * height * 4) };
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const left = x < width / 2;
      const top = y < height / 2;
      const colour = top
        ? left
          ? [255, 0, 0]
          : [0, 255, 0]
        : left
          ? [0, 0, 255]
          : [255, 255, 255];
      stored.data.set([...colour, 255], 4 * (y * width + x));
    }

  // Upright quadrants by CIPA DC-008: which side of the scene row 0 and column 0 of the file show.
  test.each([
    [1, 'rgbw'],
    [2, 'grwb'],
    [3, 'wbgr'],
    [4, 'bwrg'],
    [5, 'rbgw'],
    [6, 'brwg'],
    [7, 'wgbr'],
    [8, 'gwrb'],
  ])('orientation %i', async (orientation, quadrants) => {
    const pdf = await resultPdf({
      ...page,
      photo: { jpeg: await encodeJpeg(stored, 95), orientation, overlay: null },
    });
    const { widthPx, grey, colour } = await rasterise(pdf, 4);
    // The photo's box: found by its corner, then a quarter and three quarters of its size.
    const contentMm = 180;
    const boxW = contentMm * 0.58;
    const boxH = Math.min(boxW * 0.75, (297 - 20) * 0.34);
    const turned = orientation >= 5;
    const [w, h] = turned ? [height, width] : [width, height];
    const scale = Math.min(boxW / w, boxH / h);
    const left = 15;
    const top = 15 + 38 / (72 / 25.4);
    const seen = [
      [0.25, 0.25],
      [0.75, 0.25],
      [0.25, 0.75],
      [0.75, 0.75],
    ].map(([fx, fy]) => {
      const px = Math.round((left + w * scale * fx!) * 4);
      const py = Math.round((top + h * scale * fy!) * 4);
      const [r, g, b] = colour(px, py);
      if (r > 200 && g > 200 && b > 200) return 'w';
      return r > 150 ? 'r' : g > 150 ? 'g' : b > 150 ? 'b' : '?';
    });
    expect(grey.length % widthPx).toBe(0);
    expect(seen.join('')).toBe(quadrants);
  });
});

test('what was found is drawn on the photo', async () => {
  const plain = { width: 640, height: 480, data: new Uint8ClampedArray(640 * 480 * 4).fill(255) };
  const jpeg = await encodeJpeg(plain, 90);
  const inkOf = async (overlay: typeof exampleOverlay | null) => {
    const { grey } = await rasterise(
      await resultPdf({ ...page, photo: { jpeg, orientation: 1, overlay } }),
      4,
    );
    return grey.filter((value) => value < 200).length;
  };
  expect(await inkOf(exampleOverlay)).toBeGreaterThan((await inkOf(null)) + 500);
});
