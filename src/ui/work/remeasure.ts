import { createSignal } from 'solid-js';
import {
  defaultOptions,
  type MeasureOptions,
  type Refused,
  type StageName,
} from '../../journey/identification';
import { barsInUse } from '../card/card-checks';
import { t } from '../language/language';
import { askedReference } from '../reference/reference-choice';
import { notify } from '../shell/notices';
import { measurePhoto, WorkerDied } from './engine';
import { makeShot } from './make-sheet';
import type { Shot } from './open-sheet';
import { uprightPhoto } from './photo-bytes';
import { change, openSheet } from './sheets';
import { withShots } from './with-shots';

const [stage, setStage] = createSignal<StageName | null>(null);
/** The stage in hand, or null when nothing is being measured for the open sheet. */
export const remeasuring = stage;

/** What a person shows by hand. */
export type Help = Pick<MeasureOptions, 'ruler' | 'corrections'> &
  Partial<Pick<MeasureOptions, 'reference'>>;

export type NoChange = Refused | 'photos-disagree';

/** Measures one photo of the open sheet again, with a person's help and the card check now in use.
 *  A refusal leaves the sheet as it was. */
export async function remeasure(index: number, help: Help): Promise<NoChange | null> {
  const now = openSheet();
  const shot = now?.sheet.shots[index];
  const bytes = now?.photos[index];
  if (!now || !shot || !bytes) return null;
  const photo = await uprightPhoto(bytes, shot);
  return measureInto(
    photo,
    { ...defaultOptions, reference: shot.asked, ...help, bars: barsInUse() ?? shot.bars },
    // The bytes stay those that were kept first, unless a bank card has been found in them now.
    (made) => ({
      shots: now.sheet.shots.map((one, i) => (i === index ? made.shot : one)),
      photos:
        made.shot.reference.kind === 'id1'
          ? now.photos.map((one, i) => (i === index ? made.bytes : one))
          : now.photos,
    }),
  );
}

/** One more photo of the same fitting; what the photos say is combined. */
export async function addPhoto(photo: Blob): Promise<NoChange | null> {
  const now = openSheet();
  if (!now) return null;
  return measureInto(
    photo,
    { ...defaultOptions, reference: askedReference(), bars: barsInUse() },
    (made) => ({
      shots: [...now.sheet.shots, made.shot],
      photos: [...now.photos, made.bytes],
    }),
  );
}

async function measureInto(
  photo: Blob,
  options: MeasureOptions,
  place: (made: { shot: Shot; bytes: Uint8Array }) => {
    shots: readonly Shot[];
    photos: readonly Uint8Array[];
  },
): Promise<NoChange | null> {
  setStage('photo');
  try {
    const answer = await measurePhoto(new AbortController().signal, photo, options, setStage);
    if (answer.outcome === 'refused') return answer;
    const { shots, photos } = place(await makeShot(photo, options, answer));
    const now = openSheet();
    const sheet = now && (await withShots(now.sheet, shots));
    if (!sheet) return 'photos-disagree';
    await change(() => ({ sheet, photos }));
    return null;
  } catch (cause) {
    if (!(cause instanceof WorkerDied)) throw cause;
    notify(t().shell.workerDied);
    return null;
  } finally {
    setStage(null);
  }
}
