import type { Estimate } from '../../quantity/estimate';
import type { Vec3 } from '../2-card-pose/camera';
import type { MouthRings } from './mouth-plane';
import type { SeatedBore } from './seat-bore';

/** A female end where it is, card frame, mm. */
export interface PlacedBore {
  readonly pose: 'standing' | 'lying';
  readonly seat: SeatedBore;
  readonly rings: MouthRings;
  /** Of the mouth's middle above the card. */
  readonly height: Estimate;
  /** What turns the seat's lengths into millimetres. */
  readonly scale: number;
  readonly mouth: Vec3;
  readonly inwards: Vec3;
  /** Radius of the rim. */
  readonly rimMm: number;
}
