import { conclude } from './engine';
import { recall } from './keep';
import type { Sheet, SheetWithPhotos } from './open-sheet';
import { adopt } from './sheets';
import { toolsAtHand } from './tools';

/** A sheet from elsewhere. One that is here already is an answer: what was measured here, from the
 *  full photo, stays, and the other side's words come to it. */
export async function arrive(arrived: SheetWithPhotos): Promise<void> {
  const here = await recall(arrived.sheet.id);
  await adopt(here ? await merged(here, arrived) : await concluded(arrived));
}

async function merged(here: SheetWithPhotos, arrived: SheetWithPhotos): Promise<SheetWithPhotos> {
  // A picture's code keeps times to the second.
  const second = (sheet: Sheet) => Math.floor(Date.parse(sheet.updatedAt) / 1000);
  if (second(here.sheet) >= second(arrived.sheet)) return here;
  const poorer =
    arrived.sheet.shots.length < here.sheet.shots.length ||
    arrived.sheet.shots.some((shot) => shot.photo.recompressed);
  if (!poorer) return arrived;
  const { title, remarks, readings, counter, updatedAt } = arrived.sheet;
  const wear = arrived.sheet.wear ?? here.sheet.wear;
  return concluded({
    sheet: { ...here.sheet, title, remarks, readings, counter, wear, updatedAt },
    photos: here.photos,
  });
}

/** A picture's code leaves out what can be worked out again. */
async function concluded(item: SheetWithPhotos): Promise<SheetWithPhotos> {
  const { sheet, photos } = item;
  const conclusion = await conclude(sheet.measurement, sheet.readings, toolsAtHand());
  return {
    sheet: { ...sheet, conclusion: structuredClone(conclusion) as Sheet['conclusion'] },
    photos,
  };
}
