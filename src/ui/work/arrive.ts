import { conclude } from './engine';
import { recall } from './keep';
import type { Sheet, SheetWithPhotos } from './open-sheet';
import { adopt } from './sheets';
import { toolsAtHand } from './tools';
import { uncut } from './uncut';

/** A sheet from elsewhere, shown where its next step is: at the counter it is judged; whoever gets
 *  an answer reads it. One that is here already is what the other side says to it: what was
 *  measured here, from the full photo, stays. */
export async function arrive(arrived: SheetWithPhotos): Promise<void> {
  const here = await recall(arrived.sheet.id);
  const item = here
    ? await merged(here, arrived)
    : await concluded({ ...arrived, sheet: { ...arrived.sheet, received: true } });
  await adopt(item, 'push', landing(item.sheet, here !== null));
}

function landing(sheet: Sheet, known: boolean): 'sheet' | 'result' | 'counter' {
  const answered = sheet.counter !== null && (sheet.counter.verdict !== 'open' || known);
  if (sheet.received) return answered && !known ? 'result' : 'counter';
  return answered ? 'result' : 'sheet';
}

async function merged(here: SheetWithPhotos, arrived: SheetWithPhotos): Promise<SheetWithPhotos> {
  // A picture's code keeps times to the second.
  const second = (sheet: Sheet) => Math.floor(Date.parse(sheet.updatedAt) / 1000);
  if (second(here.sheet) >= second(arrived.sheet)) return here;
  const { received } = here.sheet;
  const counter = arrived.sheet.counter ?? here.sheet.counter;
  const shrunk = (sheet: Sheet) => sheet.shots.some((shot) => shot.photo.recompressed);
  const poorer =
    arrived.sheet.shots.length < here.sheet.shots.length ||
    (shrunk(arrived.sheet) && !shrunk(here.sheet)) ||
    (here.sheet.measuredBy === 'counter' && arrived.sheet.measuredBy === 'sender');
  if (!poorer) return { ...arrived, sheet: { ...arrived.sheet, received, counter } };
  const { handedOver, updatedAt } = arrived.sheet;
  return concluded({
    sheet: {
      ...here.sheet,
      ...othersMeasurement(here.sheet, arrived.sheet),
      ...uncut(here.sheet, arrived.sheet),
      counter,
      wear: arrived.sheet.wear ?? here.sheet.wear,
      handedOver,
      updatedAt,
    },
    photos: here.photos,
  });
}

/** The counter judged by what it measured itself: that then holds here too, with ours before it. */
function othersMeasurement(here: Sheet, arrived: Sheet): Partial<Sheet> {
  if (here.received || arrived.measuredBy !== 'counter' || !arrived.measurement) return {};
  const { measurement, measuredAt, measuredBy, earlier } = arrived;
  return { measurement, measuredAt, measuredBy, earlier };
}

/** A picture's code leaves out what can be worked out again. */
async function concluded(item: SheetWithPhotos): Promise<SheetWithPhotos> {
  const { sheet, photos } = item;
  const conclusion = await conclude(sheet.measurement, sheet.readings, toolsAtHand());
  return { sheet: { ...sheet, conclusion }, photos };
}
