import type { GreyImage } from '../../vision/grey-image';
import type { PosedCamera } from '../2-card-pose/camera';

/** A photo and the camera that took it. */
export interface PosedPhoto {
  readonly grey: GreyImage;
  readonly camera: PosedCamera;
}
