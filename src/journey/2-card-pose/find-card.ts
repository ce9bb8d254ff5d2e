import { ok, type Result, refuse } from '../../quantity/result';
import { markers } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import { rescaleCoordinate } from '../../vision/pixel-scale';
import type { Vision } from '../../vision/vision';
import type { Photo } from '../1-photo/photo';
import type { RefusalReason } from '../identification';
import {
  type DetectedMarker,
  type PosedCard,
  type PrintScale,
  poseFromMarkers,
} from './pose-from-markers';
import { hasNoCrispEdge, isTooBlurred } from './sharpness';

export interface FoundCard extends PosedCard {
  readonly detected: readonly DetectedMarker[];
}

/** Long side at which markers are sought first, px; on a fine photo of a small card, once more at
 *  full size. */
export const searchPx = 1200;
const fewest = 6;

/** Photo → card: markers found on a reduced copy, camera fitted to their sides at full size. */
export function findCard(
  photo: Photo,
  vision: Vision,
  scale: PrintScale,
): Result<FoundCard, RefusalReason> {
  const { grey } = photo;
  const long = Math.max(grey.width, grey.height);
  let detected = detect(grey, vision, Math.min(1, searchPx / long));
  if (detected.length < fewest && long > searchPx) detected = detect(grey, vision, 1);
  if (detected.length < fewest) return explain(grey, vision, Math.min(1, searchPx / long));
  const posed = poseFromMarkers(grey, detected, photo.f35Mm, scale);
  if (!posed || isTooBlurred(posed.camera, posed.crispestPx)) return blurred;
  return ok({ ...posed, detected });
}

const blurred = refuse(
  'too-blurred' as const,
  'Hold the camera still and let it focus: the card’s squares must have crisp edges.',
);

function detect(grey: GreyImage, vision: Vision, factor: number): DetectedMarker[] {
  const width = Math.round(grey.width * factor);
  const height = Math.round(grey.height * factor);
  const image = factor < 1 ? vision.resize(grey, width, height) : grey;
  const seen = new Map<number, DetectedMarker>();
  for (const { id, corners } of vision.detectMarkers(image).markers) {
    if (id >= markers.length || seen.has(id)) continue;
    seen.set(id, {
      id,
      corners: corners.map(
        ([x, y]) =>
          [
            rescaleCoordinate(x, width, grey.width),
            rescaleCoordinate(y, height, grey.height),
          ] as const,
      ),
    });
  }
  return [...seen.values()];
}

function explain(
  grey: GreyImage,
  vision: Vision,
  factor: number,
): Result<FoundCard, RefusalReason> {
  const width = Math.round(grey.width * factor);
  const height = Math.round(grey.height * factor);
  const image = vision.resize(grey, width, height);
  if (vision.detectMarkers(image, { mirrored: true }).markers.length >= fewest)
    return refuse(
      'card-mirrored',
      'The card is seen mirrored: shoot it directly, not through glass, in a mirror or with a selfie camera.',
    );
  if (hasNoCrispEdge(image)) return blurred;
  const { markers: few, rejectedCount } = vision.detectMarkers(image);
  if (few.length > 0 || rejectedCount > 40)
    return refuse(
      'no-card',
      'Too few of the card’s squares can be read: show the whole printed ring, sharp and evenly lit.',
    );
  return refuse(
    'no-card',
    'Lay the fitting in the window of the printed scale card and show the whole card in the photo; a bank card beside it, or a sheet of A4 or Letter under it, will do too.',
  );
}
