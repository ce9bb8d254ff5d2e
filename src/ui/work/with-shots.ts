import { combineShots } from '../../journey/5-measurement/combine-shots';
import { measuredAgain } from '../../journey/8-sheet/measured-again';
import { combineWorn } from '../../journey/wear/combine-worn';
import { endOf } from '../end/end-choice';
import { conclude } from './engine';
import type { Sheet, Shot } from './open-sheet';
import { toolsAtHand } from './tools';

const combineWhole = (measurements: readonly Shot['measurement'][]) => {
  const combined = combineShots(measurements);
  const [end, ...others] = new Set(measurements.map(endOf));
  if (!combined.ok || others.length > 0) return null;
  // Which end it is is not among what several photos are combined from.
  return end === 'female' ? { ...combined.value, end } : combined.value;
};

/** The sheet with these photos: their measurements combined, and concluded anew. Null when the
 *  photos do not agree. */
export async function withShots(sheet: Sheet, shots: readonly Shot[]): Promise<Sheet | null> {
  const measurements = shots.map((shot) => shot.measurement);
  const measurement = sheet.wear ? combineWorn(measurements) : combineWhole(measurements);
  if (!measurement) return null;
  const conclusion = await conclude(measurement, sheet.readings, toolsAtHand());
  return {
    ...sheet,
    ...measuredAgain(sheet, measurement, new Date()),
    shots,
    conclusion,
  };
}
