import type { Connection } from '../../standards/connections/connection';
import { looksLikelihood } from './end-looks';
import { type MeasuredThread, noseLikelihood } from './photo-likelihood';
import type { Reading } from './reading';

interface EndEvidence {
  readonly photo: MeasuredThread | null;
  readonly readings: readonly Reading[];
}

/** Chance of what the photo shows of the end, given its connection (null: in no table). The looks hold
 *  the cone's angle too, so that the angle counts by itself only where nothing was seen but it. Whoever
 *  has denied what the photo shows has seen the part: of its end the photo says nothing more then. */
export function endLikelihood(
  { photo, readings }: EndEvidence,
  connection: Connection | null,
): number {
  if (!photo || readings.some(({ kind }) => kind === 'other-seat')) return 1;
  return looksLikelihood(photo, connection) ?? noseLikelihood(photo.noseHalfAngleDeg, connection);
}
