// By its file: under the test runner the package's name leads to its browser build.
import { type PDFiumDocument, PDFiumLibrary } from '@hyzyla/pdfium/dist/index.esm.js';

export interface Raster {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Green channel. */
  readonly grey: Uint8Array;
  readonly colour: (xPx: number, yPx: number) => readonly [r: number, g: number, b: number];
}

/** First page of a PDF by PDFium, an independent renderer; pixel (0, 0) is the top left corner. */
export async function rasterise(pdf: Uint8Array, pxPerMm: number): Promise<Raster> {
  return withPdf(pdf, async (document) => {
    const page = document.getPage(0);
    // Asked for in pixels, because the wrapper floors the page's size in points before it scales.
    const { originalWidth, originalHeight } = page.getOriginalSize();
    const px = (pt: number) => Math.round((pt / 72) * 25.4 * pxPerMm);
    const image = await page.render({
      scale: 1,
      width: px(originalWidth),
      height: px(originalHeight),
      render: 'bitmap',
    });
    const { width, height, data } = image;
    const grey = new Uint8Array(width * height);
    for (let i = 0; i < grey.length; i++) grey[i] = data[4 * i + 1]!;
    const colour = (x: number, y: number) => {
      const [r, g, b] = data.subarray(4 * (y * width + x));
      return [r!, g!, b!] as const;
    };
    return { widthPx: width, heightPx: height, grey, colour };
  });
}

/** Opens a PDF, works on it and closes it again. */
export async function withPdf<T>(
  pdf: Uint8Array,
  work: (document: PDFiumDocument) => T | Promise<T>,
): Promise<T> {
  const library = await PDFiumLibrary.init();
  const document = await library.loadDocument(pdf);
  try {
    return await work(document);
  } finally {
    document.destroy();
    library.destroy();
  }
}
