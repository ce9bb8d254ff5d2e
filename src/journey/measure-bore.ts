import * as portable from '../quantity/portable-math';
import { project, type Vec3 } from './2-card-pose/camera';
import { boreFrame } from './4-bore/bore-wall';
import type { PlacedBore } from './4-bore/placed-bore';
import { boreMeasurement, crestRadius } from './5-measurement/bore-measurement';
import type { ThreadMeasurement } from './5-measurement/thread-measurement';
import type { Reference as Seen } from './identification';
import type { EndShot } from './measure-end';
import type { CrestProfile, Overlay, PhotoPoint } from './overlay';
import { referenceOverlay } from './overlay-of';

export interface MeasuredBore {
  readonly reference: Seen;
  readonly measurement: ThreadMeasurement;
  readonly overlay: Overlay;
  readonly profile: CrestProfile;
}

/** A female end has no outline to be plotted. */
const noProfile: CrestProfile = {
  axialMm: [],
  leftMm: [],
  rightMm: [],
  leftFitMm: [],
  rightFitMm: [],
};
const ringPoints = 72;

/** What is shown of a female end, and what it measures. */
export function measureBore(
  { photo, reference, field, uPrint }: EndShot,
  found: PlacedBore,
): MeasuredBore {
  const { camera } = reference;
  const { mouth, inwards } = found;
  const deepMm = found.scale * found.seat.window.toMm;
  const rangeMm = Math.hypot(
    mouth[0] - camera.centre[0],
    mouth[1] - camera.centre[1],
    mouth[2] - camera.centre[2],
  );
  return {
    reference: {
      kind: reference.kind,
      pxPerMm: camera.fPx / rangeMm,
      axisHeightMm: found.height.value,
      cameraHeightMm: -camera.centre[2],
      tiltDeg: (reference.tiltRad * 180) / Math.PI,
      field,
    },
    measurement: boreMeasurement(reference, found, uPrint),
    overlay: {
      ...referenceOverlay(photo, reference),
      outline: [ringOf(reference, found, 0), ringOf(reference, found, deepMm)],
      axis: [at(reference, mouth, inwards, 0), at(reference, mouth, inwards, deepMm)],
    },
    profile: noProfile,
  };
}

/** The crests' circle so deep inside, as the photo shows it. */
function ringOf({ camera }: EndShot['reference'], found: PlacedBore, depthMm: number) {
  const { mouth, inwards } = found;
  const radiusMm = crestRadius(found);
  const { left } = boreFrame(camera, { mouth, inwards, radiusMm });
  const up: Vec3 = [
    inwards[1] * left[2] - inwards[2] * left[1],
    inwards[2] * left[0] - inwards[0] * left[2],
    inwards[0] * left[1] - inwards[1] * left[0],
  ];
  return Array.from({ length: ringPoints + 1 }, (_, k): PhotoPoint => {
    const t = (2 * Math.PI * k) / ringPoints;
    const [a, b] = [radiusMm * portable.cos(t), radiusMm * portable.sin(t)];
    const point = [0, 1, 2].map((i) => mouth[i] + a * left[i] + b * up[i] + depthMm * inwards[i]);
    return rounded(project(camera, point as unknown as Vec3));
  });
}

const at = ({ camera }: EndShot['reference'], from: Vec3, inwards: Vec3, depthMm: number) =>
  rounded(project(camera, [0, 1, 2].map((i) => from[i] + depthMm * inwards[i]) as unknown as Vec3));

const rounded = ([x, y]: PhotoPoint): PhotoPoint => [
  Math.round(100 * x) / 100,
  Math.round(100 * y) / 100,
];
