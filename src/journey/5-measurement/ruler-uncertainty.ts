import type { Estimate } from '../../quantity/estimate';
import * as portable from '../../quantity/portable-math';
import { type Distance, ruleParallax } from '../2-reference/rule-parallax';
import type { BudgetRow, SpreadPart, ThreadMeasurement } from './thread-measurement';
import { unresolvedTaper } from './uncertainty';

/** As near as a phone focuses well. */
const nearestMm = 150;

/** What is known of a shot beside a rule. Lengths in mm. */
export interface RulerShot {
  /** Between the two marked points, px of the photo, and how far a mark may be off. */
  readonly rulerPx: number;
  readonly markPx: number;
  readonly distance: Distance;
  readonly radiusMm: number;
  /** Of the axis over the table. */
  readonly axisMm: Estimate;
  /** As far as the axis can lie above or below the rule's face. */
  readonly furthestMm: number;
  /** From the middle of the marked length to the middle of the thread. */
  readonly apartMm: number;
  /** Between the rule and the thread's axis, rad. */
  readonly angleRad: number;
}

/** By hand and 'from above', the camera is within this of straight above; any value as likely. */
const tiltBoundRad = (15 * Math.PI) / 180;

/** Steel rules are 0.5 to 1 mm thick, folding ones up to 3 (common practice). */
const faceMm: Estimate = { value: 1, u: 0.5 };

/** What the axis's height over the rule's face makes of the scale there. Where the photo states no focal length,
 *  nothing is corrected: such photos are mostly cropped or taken from farther off than is usual, and correcting
 *  for the usual distance made real ones worse. Then 1/distance and the height are rectangular up to their
 *  bounds (JCGM 100:2008, 4.3.7). `ridges`: relative u of the pitch, which the ridges carry; most of them lie
 *  nearer to the camera than the axis by 0.8 R, and what the distance is wrong by tells on them more. */
function parallax({ distance, axisMm, furthestMm, radiusMm }: RulerShot): {
  axis: Estimate;
  ridges: number;
} {
  const nearerMm = 0.8 * radiusMm;
  if (!distance.stated) {
    const u = Math.hypot(furthestMm / Math.sqrt(3), faceMm.u) / nearestMm;
    return {
      axis: { value: 1, u },
      ridges: Math.hypot(u, nearerMm / (2 * nearestMm) / Math.sqrt(3)),
    };
  }
  const lnDistance = { value: portable.log(distance.mm), u: distance.uLn };
  const over = (heightMm: number) =>
    ruleParallax({ lnDistance, faceMm, axisMm: { value: heightMm, u: axisMm.u } });
  const axis = over(axisMm.value);
  return { axis, ridges: over(axisMm.value + nearerMm).u / axis.value };
}

/** Brings what was measured in the plane of the rule's face to the axis's height, and adds what a missing pose
 *  costs: of tilt no more is known than bounds, and each counts as rectangular (JCGM 100:2008, 4.3.7). Parallax
 *  and a scale that changes from the rule to the thread are common to pitch and diameter; foreshortening is
 *  not, for a round body has none across its axis. */
export function withRuler(inFace: ThreadMeasurement, shot: RulerShot): ThreadMeasurement {
  const { mm, uLn } = shot.distance;
  const { axis, ridges } = parallax(shot);
  const base = inMillimetres(inFace, axis.value);
  const pitch = base.pitchMm.value;
  const major = base.majorDiameterMm.value;
  const rectangular = Math.sqrt(3);
  const onAxis = axis.u / axis.value;
  const inverse = portable.exp(uLn ** 2) / mm;
  // Both marks are off by up to markPx along the rule.
  const marks = (Math.SQRT2 * shot.markPx) / rectangular / shot.rulerPx;
  const uTilt = tiltBoundRad / rectangular;
  // Towards any side alike: 1/√2 of it along the line from rule to thread.
  const gradient = ((uTilt * shot.apartMm) / Math.SQRT2) * inverse;
  // Scale along a direction φ is 1 − t²/2·cos²(φ − ψ), ψ uniform, E[(t²/2)²] = T⁴/20 for t rectangular in ±T.
  // Pitch: along the axis over along the rule. Diameter: 1 over along the rule.
  const square = (tiltBoundRad * tiltBoundRad) ** 2 / 20;
  const sin2 = portable.sin(shot.angleRad) ** 2;
  const foreshortened = {
    pitch: (square * sin2) / 2,
    major: (3 * square) / 8,
    both: (square * sin2) / 4,
  };
  const shared: BudgetRow[] = [
    {
      source: 'height',
      pitchMm: ridges * pitch,
      majorDiameterMm: onAxis * major,
    },
    { source: 'print-scale', pitchMm: marks * pitch, majorDiameterMm: marks * major },
    {
      source: 'tilt',
      pitchMm: pitch * Math.sqrt(gradient ** 2 + foreshortened.pitch),
      majorDiameterMm: major * Math.sqrt(gradient ** 2 + foreshortened.major),
    },
  ];
  const rows = [...base.budget.filter(({ source }) => kept.has(source)), ...shared];
  const total = (pick: (row: BudgetRow) => number) => Math.hypot(...rows.map(pick));
  const beside = Math.hypot(...shared.map((row) => row.majorDiameterMm));
  const uPitch = total((row) => row.pitchMm);
  const uMajor = total((row) => row.majorDiameterMm);
  const covariance =
    base.correlation * base.pitchMm.u * base.majorDiameterMm.u +
    pitch * major * (onAxis * ridges + marks ** 2 + gradient ** 2 + foreshortened.both);
  // The same change of scale runs along the thread, and looks like a taper.
  const seeming = ((uTilt * major) / Math.SQRT2) * inverse;
  const uTaper = base.taper && Math.hypot(base.taper.u, seeming);
  return {
    ...base,
    pitchMm: { value: pitch, u: uPitch },
    majorDiameterMm: { value: major, u: uMajor },
    ...(base.diameterParts && { diameterParts: widened(base.diameterParts, beside) }),
    ...(base.taperParts && { taperParts: widened(base.taperParts, seeming) }),
    correlation: Math.max(-0.999, Math.min(0.999, covariance / (uPitch * uMajor))),
    taper:
      base.taper && uTaper && uTaper < unresolvedTaper
        ? { value: base.taper.value, u: uTaper }
        : null,
    budget: rows,
  };
}

const widened = (parts: readonly SpreadPart[], beside: number): SpreadPart[] =>
  parts.map(({ share, u }) => ({ share, u: Math.hypot(u, beside) }));

/** What the outline itself leaves open; the rest of a card's budget has no meaning here. */
const kept: ReadonlySet<BudgetRow['source']> = new Set(['edge-noise', 'edge-bias', 'thread-form']);

/** A measurement made in units of `unitMm`, in mm. */
export function inMillimetres(seen: ThreadMeasurement, unitMm: number): ThreadMeasurement {
  const scaled = ({ value, u }: Estimate): Estimate => ({ value: value * unitMm, u: u * unitMm });
  const { diameterParts } = seen;
  return {
    ...seen,
    pitchMm: scaled(seen.pitchMm),
    majorDiameterMm: scaled(seen.majorDiameterMm),
    ...(diameterParts && {
      diameterParts: diameterParts.map(({ share, u }) => ({ share, u: u * unitMm })),
    }),
    middleFromEndMm: seen.middleFromEndMm === null ? null : seen.middleFromEndMm * unitMm,
    budget: seen.budget.map((row) => ({
      ...row,
      pitchMm: row.pitchMm * unitMm,
      majorDiameterMm: row.majorDiameterMm * unitMm,
    })),
  };
}
