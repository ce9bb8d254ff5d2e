import { conclude } from './engine';
import type { Sheet, Shot } from './open-sheet';
import { toolsAtHand } from './tools';

/** The sheet with these photos: their measurements combined, and concluded anew. */
export async function withShots(sheet: Sheet, shots: readonly Shot[]): Promise<Sheet> {
  const measurement = shots[0]?.measurement ?? null;
  const conclusion = await conclude(measurement, sheet.readings, toolsAtHand());
  return {
    ...sheet,
    shots: [...shots],
    measurement,
    conclusion: structuredClone(conclusion) as Sheet['conclusion'],
  };
}
