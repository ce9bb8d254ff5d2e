import { createSignal } from 'solid-js';
import {
  defaultOptions,
  type MeasureOptions,
  type Refused,
  type StageName,
} from '../../journey/identification';
import { barsInUse } from '../card/card-checks';
import { endOf } from '../end/end-choice';
import { t } from '../language/language';
import { askedReference } from '../reference/reference-choice';
import { notify } from '../shell/notices';
import { dropDraft, keepDraft } from './draft';
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

/** A photo added to a sheet that it contradicts; not part of it. */
export interface PhotosApart {
  readonly sheetId: string;
  readonly photo: Blob;
  readonly measurement: Shot['measurement'];
}

const [apart, setApart] = createSignal<PhotosApart | null>(null);
export const photosApart = () => (apart()?.sheetId === openSheet()?.sheet.id ? apart() : null);

/** The contradicting photo is left out for good, or goes on by itself. */
export async function forgetPhotosApart(): Promise<void> {
  setApart(null);
  await dropDraft();
}

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
    {
      ...defaultOptions,
      gender: endOf(shot.measurement),
      reference: shot.asked,
      ...help,
      bars: barsInUse() ?? shot.bars,
    },
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
  const options = {
    ...defaultOptions,
    gender: endOf(now.sheet.measurement),
    reference: askedReference(),
    bars: barsInUse(),
  };
  setApart(null);
  let added: { shot: Shot; bytes: Uint8Array } | null = null;
  const problem = await measureInto(photo, options, (made) => {
    added = made;
    return { shots: [...now.sheet.shots, made.shot], photos: [...now.photos, made.bytes] };
  });
  if (problem === 'photos-disagree' && added) await keepApart(now.sheet.id, added, options);
  return problem;
}

/** As a draft too: a reload does not lose it. */
async function keepApart(
  sheetId: string,
  { shot, bytes }: { shot: Shot; bytes: Uint8Array },
  options: MeasureOptions,
): Promise<void> {
  const photo = await uprightPhoto(bytes, shot);
  setApart({ sheetId, photo, measurement: shot.measurement });
  await keepDraft({ photo, at: new Date().toISOString(), options });
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
