import { createSignal } from 'solid-js';
import {
  defaultOptions,
  type MeasureOptions,
  type Refused,
  type StageName,
} from '../../journey/identification';
import { barsInUse } from '../card/card-checks';
import { t } from '../language/language';
import { notify } from '../shell/notices';
import { measurePhoto, WorkerDied } from './engine';
import { makeShot } from './make-sheet';
import { uprightPhoto } from './photo-bytes';
import { change, openSheet } from './sheets';
import { withShots } from './with-shots';

const [stage, setStage] = createSignal<StageName | null>(null);
/** The stage in hand, or null when nothing is being measured again. */
export const remeasuring = stage;

/** Measures one photo of the open sheet again, with a person's help and the card check now in use.
 *  A refusal leaves the sheet as it was. */
export async function remeasure(
  index: number,
  help: Pick<MeasureOptions, 'ruler' | 'corrections'>,
): Promise<Refused | null> {
  const now = openSheet();
  const shot = now?.sheet.shots[index];
  const bytes = now?.photos[index];
  if (!now || !shot || !bytes) return null;
  const photo = await uprightPhoto(bytes, shot);
  const options: MeasureOptions = {
    ...defaultOptions,
    ...help,
    bars: barsInUse() ?? (shot.bars && { ...shot.bars }),
    readings: now.sheet.readings,
  };
  setStage('photo');
  try {
    const answer = await measurePhoto(new AbortController().signal, photo, options, setStage);
    if (answer.outcome === 'refused') return answer;
    const made = await makeShot(photo, options, answer);
    const shots = now.sheet.shots.map((one, i) => (i === index ? made.shot : one));
    const sheet = await withShots(now.sheet, shots);
    await change(() => ({ sheet }));
    return null;
  } catch (cause) {
    if (!(cause instanceof WorkerDied)) throw cause;
    notify(t().shell.workerDied);
    return null;
  } finally {
    setStage(null);
  }
}
