import type { TaperGauge } from '../../standards/limits/taper-gauge';
import { type Verdict, verdictOn } from './verdict';

/** One standard uncertainty of where a hand-tight ring comes to rest, turns: judged to a quarter turn either
 *  way (common practice), 0.25/√3. */
const uTurns = 0.25 / Math.sqrt(3);

/** A taper by how far its ring runs on (ISO 7-2; ASME B1.20.1): past the face by more than the tolerance is a
 *  smaller part, `below`; short of it, `above`. `by` in mm along the axis. */
export function judgeGaugePlane(ringTurns: number, { pitchMm, toleranceMm }: TaperGauge): Verdict {
  return verdictOn(
    { value: -ringTurns * pitchMm, u: uTurns * pitchMm },
    { minMm: -toleranceMm, maxMm: toleranceMm },
  );
}
