import type { Estimate } from '../../quantity/estimate';
import type { Vec3 } from '../2-card-pose/camera';
import type { FacePlane } from './face-plane';
import type { Mouth } from './mouth-fit';
import type { SeatedBore } from './seat-bore';
import type { RingGuess } from './sector-patch';

export type BorePose = 'standing' | 'lying';

/** Where the circle over the crests may be, on a plane that lies as the face of a part in this pose does. */
export interface MouthGuess {
  readonly pose: BorePose;
  readonly plane: FacePlane;
  readonly ring: RingGuess;
}

/** Where it is mostly, and where it is if the part's outline misleads. */
export interface MouthGuesses {
  readonly usual: readonly MouthGuess[];
  readonly others: readonly MouthGuess[];
}

/** A mouth with the thread behind it: all lengths as its plane shows them, so known but for one factor. */
export interface FaceBore {
  readonly pose: BorePose;
  readonly mouth: Mouth;
  readonly seat: SeatedBore;
  /** Below the camera on the mouth's plane, and how far the camera is from it, mm. */
  readonly foot: readonly [number, number];
  readonly distanceMm: number;
}

/** A female end where it is, card frame, mm. */
export interface PlacedBore {
  readonly pose: BorePose;
  readonly seat: SeatedBore;
  /** Of the mouth's middle above the card. */
  readonly height: Estimate;
  /** What turns the seat's lengths into millimetres. */
  readonly scale: number;
  readonly mouth: Vec3;
  readonly inwards: Vec3;
  /** Radius over the crests, by how the mouth looks. */
  readonly crestsMm: number;
}
