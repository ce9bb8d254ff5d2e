import { budgetBySource, propagate } from '../../quantity/propagate';
import { type PosedCamera, project, rayThrough, type Vec3 } from '../2-card-pose/camera';
import { cameraFrom, cameraParameters } from '../2-card-pose/camera-parameters';
import type { Reference } from '../2-reference/reference';
import allowances from '../4-bore/allowances.json';
import { boreFrame } from '../4-bore/bore-wall';
import type { PlacedBore } from '../4-bore/placed-bore';
import { coveringU, partsOf, type Spread, scaled } from './local-spread';
import type { BudgetRow, ThreadMeasurement } from './thread-measurement';

/** What is left of bores that were seen, set by `calibrate-bores`: of the diameter over the crests, which lies `over` what
 *  it is, and of the pitch; shares of the height's own u, and of the height. */
export interface BoreSpread {
  readonly diameter: Spread & { readonly over: number };
  readonly pitch: Spread;
  readonly height: { readonly known: number; readonly ofHeight: number };
}

/** Another period within this of the stated one is the same, seen a little differently. */
const samePeriod = 0.06;
/** Less likely ones are left out. */
const leastShare = 0.002;

/** What the photo says of a female end: pitch from the far wall, diameter over the crests inside from how the mouth
 *  looks. */
export function boreMeasurement(
  reference: Reference,
  found: PlacedBore,
  uPrint: number,
): ThreadMeasurement {
  const { seat, scale, height, pose } = found;
  const spread: BoreSpread = allowances.spreads[pose];
  const [best] = seat.periods;
  const pitchMm = scale * best.periodMm;
  const diameterMm = 2 * crestRadius(found);
  const shared = sharedScale(reference, found);
  const n = cameraParameters + 2;
  const inputs = new Float64Array(n);
  const sigma = new Float64Array(n * n);
  for (let i = 0; i < cameraParameters; i++) {
    inputs[i] = reference.parameters[i];
    for (let j = 0; j < cameraParameters; j++)
      sigma[i * n + j] = reference.covariance[i * cameraParameters + j];
  }
  const [iHeight, iPrint] = [cameraParameters, cameraParameters + 1];
  sigma[iHeight * n + iHeight] =
    (spread.height.known * height.u) ** 2 + (spread.height.ofHeight * height.value) ** 2;
  sigma[iPrint * n + iPrint] = uPrint ** 2;
  const result = propagate(
    (x) => {
      const seen = shared(x.subarray(0, cameraParameters), x[iHeight]);
      return [pitchMm * seen.depth * (1 + x[iPrint]), diameterMm * seen.across * (1 + x[iPrint])];
    },
    inputs,
    sigma,
  );
  const named = budgetBySource(result, sigma, [
    { name: 'focal-length', inputs: Array.from({ length: cameraParameters }, (_, i) => i) },
    { name: 'height', inputs: [iHeight] },
    { name: 'print-scale', inputs: [iPrint] },
  ] as const);
  const budget: BudgetRow[] = [
    {
      source: 'thread-form',
      pitchMm: coveringU(spread.pitch) * pitchMm,
      majorDiameterMm: coveringU(spread.diameter) * diameterMm,
    },
    ...named.map(({ name, u }) => ({ source: name, pitchMm: u[0], majorDiameterMm: u[1] })),
  ];
  const total = (pick: (row: BudgetRow) => number) => Math.hypot(...budget.map(pick));
  const uPitch = total((row) => row.pitchMm);
  const uDiameter = total((row) => row.majorDiameterMm);
  return {
    end: 'female',
    pitchMm: { value: pitchMm, u: uPitch },
    majorDiameterMm: { value: diameterMm, u: uDiameter },
    diameterParts: partsOf(
      scaled(spread.diameter, diameterMm),
      Math.hypot(...named.map(({ u }) => u[1])),
    ),
    correlation: Math.max(-0.999, Math.min(0.999, result.covariance[1] / (uPitch * uDiameter))),
    // How a bore narrows is not told apart from how its wall is seen.
    taper: null,
    flankAngleDeg: null,
    noseHalfAngleDeg: null,
    turns: (seat.window.toMm - seat.window.fromMm) / best.periodMm,
    // An axis a tenth of a millimetre aside climbs as much as a whole turn does: told by the odds alone.
    hand: null,
    starts: null,
    middleFromEndMm: null,
    budget,
    otherPeriods: otherPeriods(found),
  };
}

/** Radius over the crests, mm. */
export const crestRadius = ({ crestsMm, pose }: PlacedBore): number =>
  crestsMm / allowances.spreads[pose].diameter.over;

/** Periods that the wall leaves possible, over the stated one. */
function otherPeriods({ seat }: PlacedBore) {
  const [best] = seat.periods;
  const others = seat.periods
    .slice(1)
    .filter((q) => Math.abs(q.periodMm / best.periodMm - 1) > samePeriod);
  const all = 1 + others.reduce((sum, q) => sum + q.worth / best.worth, 0);
  return others
    .map((q) => ({ ratio: q.periodMm / best.periodMm, share: q.worth / best.worth / all }))
    .filter(({ share }) => share > leastShare);
}

/** Length along the wall and across the mouth over what they are, for another camera and with the mouth higher by so
 *  much, mm: two points of the rim and one deep on the far wall, fixed in the photo. */
function sharedScale(
  { camera, prior }: Reference,
  { mouth, inwards, height, crestsMm }: PlacedBore,
) {
  const { left } = boreFrame(camera, { mouth, inwards, radiusMm: crestsMm });
  const far: Vec3 = [
    left[1] * inwards[2] - left[2] * inwards[1],
    left[2] * inwards[0] - left[0] * inwards[2],
    left[0] * inwards[1] - left[1] * inwards[0],
  ];
  const at = (a: number, b: number, c: number): Vec3 =>
    [0, 1, 2].map(
      (i) => mouth[i] + crestsMm * (a * left[i] + b * far[i] + c * inwards[i]),
    ) as unknown as Vec3;
  const middle = project(camera, mouth);
  const sides = [project(camera, at(1, 0, 0)), project(camera, at(-1, 0, 0))];
  const top = project(camera, at(0, 1, 0));
  const deep = project(camera, at(0, 1, 1));
  const seen = (view: PosedCamera, off: number) => {
    const centre = meet(view, middle, [0, 0, -height.value - off], [0, 0, 1]);
    const [a, b, p] = [...sides, top].map((point) => meet(view, point, centre, inwards));
    // The wall runs inwards from that point of the rim.
    const q = meet(view, deep, p, far);
    return { across: Math.hypot(...less(a, b)), depth: dot(less(q, p), inwards) };
  };
  const base = seen(camera, 0);
  return (parameters: Float64Array, off: number) => {
    const now = seen(cameraFrom(parameters, prior), off);
    return { across: now.across / base.across, depth: now.depth / base.depth };
  };
}

/** Where the viewing ray through a photo point meets the plane through `on` with this normal. */
function meet(camera: PosedCamera, point: readonly [number, number], on: Vec3, normal: Vec3): Vec3 {
  const ray = rayThrough(camera, point);
  const k = dot(less(on, camera.centre), normal) / dot(ray, normal);
  return [0, 1, 2].map((i) => camera.centre[i] + k * ray[i]) as unknown as Vec3;
}

const less = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
