import { combineShots } from '../../journey/5-measurement/combine-shots';
import { measuredAgain } from '../../journey/8-sheet/measured-again';
import { conclude } from './engine';
import type { Sheet, Shot } from './open-sheet';
import { toolsAtHand } from './tools';

/** The sheet with these photos: their measurements combined, and concluded anew. Null when the
 *  photos do not agree. */
export async function withShots(sheet: Sheet, shots: readonly Shot[]): Promise<Sheet | null> {
  const combined = combineShots(shots.map((shot) => shot.measurement));
  if (!combined.ok) return null;
  const measurement = combined.value;
  const conclusion = await conclude(measurement, sheet.readings, toolsAtHand());
  return {
    ...sheet,
    ...measuredAgain(sheet, structuredClone(measurement) as Sheet['measurement'], new Date()),
    shots: [...shots],
    conclusion: structuredClone(conclusion) as Sheet['conclusion'],
  };
}
