import type { Reading } from '../../journey/6-candidates/reading';
import { conclude } from '../work/engine';
import type { Tool } from '../work/open-sheet';
import { change, openSheet } from '../work/sheets';

/** The sheet with other readings, or other tools at hand: concluded again at once. */
export async function withReadings(
  readings: readonly Reading[],
  tools: readonly Tool[],
): Promise<void> {
  const now = openSheet();
  if (!now) return;
  const conclusion = await conclude(now.sheet.measurement, readings, tools);
  await change(({ sheet }) => ({
    sheet: {
      ...sheet,
      readings: structuredClone(readings) as typeof sheet.readings,
      conclusion: structuredClone(conclusion) as typeof sheet.conclusion,
    },
  }));
}
