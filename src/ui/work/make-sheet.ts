import { version } from '../../../package.json';
import type { Reading } from '../../journey/6-candidates/reading';
import type { Conclusion } from '../../journey/7-next-reading/decision';
import type { Measured, MeasureOptions } from '../../journey/identification';
import type { WearPart } from '../../journey/wear/wear-schema';
import { usedCheck } from '../card/card-checks';
import type { SheetWithPhotos, Shot } from './open-sheet';
import { keepablePhoto } from './photo-bytes';
import { privatePhoto } from './private-photo';

export async function makeShot(
  photo: Blob,
  options: MeasureOptions,
  measured: Measured,
): Promise<{ shot: Shot; bytes: Uint8Array }> {
  const { overlay, reference } = measured;
  const keepable = await privatePhoto(photo, {
    ...overlay,
    kind: reference.kind,
    outline: overlay.reference,
  });
  const [{ newShot }, kept] = await Promise.all([
    import('../../journey/8-sheet/new-sheet'),
    keepablePhoto(keepable),
  ]);
  const check = usedCheck();
  const shot = newShot({
    photo: kept.photo,
    camera: kept.camera,
    measured,
    options,
    barsName: options.bars && check ? check.name : null,
  });
  return { shot, bytes: kept.photo.bytes };
}

export async function sheetFromPhoto(
  photo: Blob,
  options: MeasureOptions,
  measured: Measured,
  wear: WearPart | null = null,
): Promise<SheetWithPhotos> {
  const { newSheet } = await import('../../journey/8-sheet/new-sheet');
  const { shot, bytes } = await makeShot(photo, options, measured);
  const sheet = newSheet({
    title: '',
    shots: [shot],
    measurement: measured.measurement,
    readings: options.readings,
    conclusion: measured.conclusion,
    appVersion: version,
    now: new Date(),
    wear,
  });
  return { sheet, photos: [bytes] };
}

export async function sheetFromReadings(
  readings: readonly Reading[],
  conclusion: Conclusion,
  asked: { readonly title: string; readonly wear: WearPart } | null = null,
): Promise<SheetWithPhotos> {
  const { newSheet } = await import('../../journey/8-sheet/new-sheet');
  const sheet = newSheet({
    title: asked?.title ?? '',
    shots: [],
    measurement: null,
    readings,
    conclusion,
    appVersion: version,
    now: new Date(),
    wear: asked?.wear ?? null,
  });
  return { sheet, photos: [] };
}
