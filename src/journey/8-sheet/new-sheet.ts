import type { ThreadMeasurement } from '../5-measurement/thread-measurement';
import type { Reading } from '../6-candidates/reading';
import type { Conclusion } from '../7-next-reading/decision';
import type { Measured, MeasureOptions } from '../identification';
import type { WearPart } from '../wear/wear-schema';
import type { CameraFacts } from './jpeg-camera-facts';
import type { StrippedJpeg } from './jpeg-strip';
import { type Sheet, type Shot, sheetVersion } from './sheet-schema';

export interface NewShot {
  readonly photo: Pick<StrippedJpeg, 'widthPx' | 'heightPx'>;
  readonly camera: CameraFacts;
  readonly measured: Omit<Measured, 'conclusion' | 'outcome' | 'timingsMs'>;
  readonly options: MeasureOptions;
  /** Name of the print check that `options.bars` came from. */
  readonly barsName: string | null;
}

/** One measured photo, as it is kept. */
export function newShot({ photo, camera, measured, options, barsName }: NewShot): Shot {
  return {
    photo: {
      widthPx: photo.widthPx,
      heightPx: photo.heightPx,
      orientation: camera.orientation,
      focal35Mm: camera.focal35Mm,
      flashFired: camera.flashFired,
      recompressed: false,
    },
    reference: measured.reference,
    measurement: measured.measurement,
    overlay: measured.overlay,
    profile: measured.profile,
    crests: measured.crests,
    otherEnds: measured.otherEnds,
    notes: measured.notes,
    bars: options.bars && { ...options.bars, name: barsName },
    asked: options.reference,
    ruler: options.ruler,
    corrections: options.corrections,
  };
}

/** A sheet not yet kept. Without shots it rests on readings alone. */
export function newSheet(from: {
  readonly title: string;
  readonly shots: readonly Shot[];
  readonly measurement: ThreadMeasurement | null;
  readonly readings: readonly Reading[];
  readonly conclusion: Conclusion;
  readonly appVersion: string;
  readonly now: Date;
  readonly wear?: WearPart | null;
}): Sheet {
  const at = from.now.toISOString();
  return {
    format: 'crestwise-sheet',
    version: sheetVersion,
    id: crypto.randomUUID(),
    createdAt: at,
    updatedAt: at,
    appVersion: from.appVersion,
    title: from.title,
    remarks: '',
    shots: from.shots,
    measurement: from.measurement,
    measuredAt: from.measurement ? at : null,
    measuredBy: 'sender',
    earlier: [],
    readings: from.readings,
    conclusion: from.conclusion,
    counter: null,
    handedOver: false,
    received: false,
    wear: from.wear ?? null,
  };
}
