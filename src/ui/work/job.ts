import { createSignal } from 'solid-js';
import {
  defaultOptions,
  type Measured,
  type MeasureOptions,
  type Refused,
  type StageName,
} from '../../journey/identification';
import type { WearPart } from '../../journey/wear/wear-schema';
import { barsInUse } from '../card/card-checks';
import { endChoice } from '../end/end-choice';
import { t } from '../language/language';
import { askedReference, referenceChoice } from '../reference/reference-choice';
import { notify } from '../shell/notices';
import { go, route } from '../shell/route';
import { dropDraft, holdDraft, keepDraft, recallDraft } from './draft';
import { measurePhoto, WorkerDied } from './engine';
import { sheetFromPhoto } from './make-sheet';
import { privatePhoto } from './private-photo';
import { adopt } from './sheets';

export const stages: readonly StageName[] = [
  'photo',
  'card-pose',
  'silhouette',
  'thread-signal',
  'measurement',
  'candidates',
];

/** The photo being measured, or refused and waiting for the person. */
export interface Job {
  readonly photo: Blob;
  readonly at: string;
  readonly options: MeasureOptions;
  readonly wear: WearPart | null;
  /** `marking`: two graduations of a rule have to be shown first. */
  readonly status: 'running' | 'marking' | 'refused' | 'cancelled' | 'failed';
  readonly stage: StageName | null;
  readonly refused: Refused | null;
}

const [current, setCurrent] = createSignal<Job | null>(null);
export const job = current;

let running: AbortController | null = null;

/** What a photo given on the measuring screen is given instead of. */
const jobBefore = (): Job | null => (route().screen === 'measuring' ? current() : null);

/** From a fresh photo to a kept sheet; the way on (refusal, cancel) stays on the measuring screen. A photo taken
 *  again there is asked the same as the one before. Wear is judged of male ends alone. */
export async function measureNew(
  photo: Blob,
  options: Partial<MeasureOptions> = {},
  wear: WearPart | null = jobBefore()?.wear ?? null,
): Promise<void> {
  const full: MeasureOptions = {
    ...defaultOptions,
    reference: askedReference(),
    bars: barsInUse(),
    gender: jobBefore()?.options.gender ?? (wear ? 'male' : endChoice()),
    ...options,
  };
  const at = new Date().toISOString();
  running?.abort();
  const controller = new AbortController();
  running = controller;
  const marking = referenceChoice() === 'rule' && !options.ruler && !options.reference;
  const status = marking ? 'marking' : 'running';
  setCurrent({ photo, at, options: full, wear, status, stage: null, refused: null });
  go({ screen: 'measuring' });
  if (marking) {
    await keepDraft({ photo, at, options, wear });
    return;
  }
  void holdDraft({ photo, at, options: full, wear });
  let draft: Promise<void> | null = null;
  const keep = async (safe: Blob) => {
    if (controller.signal.aborted) return;
    setCurrent((now) => now && { ...now, photo: safe });
    await keepDraft({ photo: safe, at, options: full, wear });
  };
  try {
    const answer = await measurePhoto(controller.signal, photo, full, (stage, seen) => {
      if (controller.signal.aborted) return;
      setCurrent((now) => now && { ...now, stage });
      // Not before it is known whether there is a bank card in it.
      if (seen) draft = privatePhoto(photo, seen).then(keep);
    });
    await draft;
    if (controller.signal.aborted) return;
    if (answer.outcome === 'refused') {
      // A bank card that was not found may still be in it.
      if (!draft && full.reference.kind !== 'id1') await keep(photo);
      setCurrent((now) => now && { ...now, status: 'refused', refused: answer });
      return;
    }
    await finish(photo, full, wear, answer);
  } catch (cause) {
    if (controller.signal.aborted) return;
    if (cause instanceof WorkerDied) notify(t().shell.workerDied);
    else console.error(cause);
    setCurrent((now) => now && { ...now, status: 'failed' });
  }
}

async function finish(
  photo: Blob,
  options: MeasureOptions,
  wear: WearPart | null,
  answer: Measured,
): Promise<void> {
  const made = await sheetFromPhoto(photo, options, answer, wear);
  const { id } = made.sheet;
  // Whoever went elsewhere meanwhile is told, not pulled away.
  const waiting = route().screen === 'measuring';
  await adopt(made, waiting ? 'replace' : 'stay', wear ? 'wear' : 'sheet');
  if (!waiting)
    notify(t().measuring.finished, {
      label: t().drawer.open,
      run: () => go({ screen: wear ? 'wear' : 'sheet', id }),
    });
  await dropDraft();
  setCurrent(null);
}

export function cancelJob(): void {
  running?.abort();
  setCurrent((now) => now && { ...now, status: 'cancelled' });
}

export async function discardJob(): Promise<void> {
  running?.abort();
  setCurrent(null);
  await dropDraft();
}

export async function resumeDraft(): Promise<boolean> {
  const draft = await recallDraft();
  if (!draft) return false;
  void measureNew(draft.photo, draft.options, draft.wear ?? null);
  return true;
}
