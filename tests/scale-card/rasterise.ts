import { PDFiumLibrary } from '@hyzyla/pdfium';

export interface Raster {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly grey: Uint8Array;
}

/** First page of a PDF by PDFium, an independent renderer; pixel (0, 0) is the top left corner. */
export async function rasterise(pdf: Uint8Array, pxPerMm: number): Promise<Raster> {
  const library = await PDFiumLibrary.init();
  const document = await library.loadDocument(pdf);
  try {
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
    return { widthPx: width, heightPx: height, grey };
  } finally {
    document.destroy();
    library.destroy();
  }
}
