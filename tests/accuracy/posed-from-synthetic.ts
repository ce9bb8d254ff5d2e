import type { SyntheticCamera } from '../../fixtures/synthetic/camera';
import {
  type PosedCamera,
  posed,
  rotationVector,
  type Vec3,
} from '../../src/journey/2-card-pose/camera';
import { card } from '../../src/scale-card/geometry';

/** The generator's camera in the journey's terms: card frame, y down, z into the card. */
export function posedFromSynthetic(camera: SyntheticCamera): PosedCamera {
  const { fPx, cx, cy, k1, right, down, forward, position } = camera;
  const R = [right, down, forward].flatMap(([x, y, z]) => [x, -y, -z]);
  const centre = toCard(position);
  const t = [0, 3, 6].map(
    (i) => -(R[i]! * centre[0] + R[i + 1]! * centre[1] + R[i + 2]! * centre[2]),
  );
  return posed({
    fPx,
    cx,
    cy,
    k1,
    rotation: rotationVector(R),
    translation: [t[0]!, t[1]!, t[2]!],
  });
}

export const toCard = ([x, y, z]: readonly [number, number, number]): Vec3 => [
  x + card.widthMm / 2,
  card.heightMm / 2 - y,
  -z,
];
