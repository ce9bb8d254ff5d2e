import { createSignal, Show } from 'solid-js';
import { classLimits } from '../../standards/limits/class-limits';
import { findThread } from '../../standards/threads';
import { t } from '../language/language';
import { Cautions } from '../result/Cautions';
import { FileButton, photoTypes } from '../start/FileButton';
import { createKeptSignal } from '../widgets/create-kept-signal';
import { conclude } from '../work/engine';
import { takeIn } from '../work/intake';
import { sheetFromReadings } from '../work/make-sheet';
import { adopt } from '../work/sheets';
import { toolsAtHand } from '../work/tools';
import { ThreadAndClass } from './ThreadAndClass';
import { freshWear } from './wear-of-sheet';
import { neededWords } from './wear-words';
import './wear.css';

/** The question from the start: which thread a used part should have, then a photo or readings. */
export function UsedScreen() {
  const [name, setName] = createKeptSignal('used-thread', '');
  const [className, setClassName] = createKeptSignal('used-class', '');
  const [missing, setMissing] = createSignal(false);
  const [busy, setBusy] = createSignal(false);
  const thread = () => (name() ? findThread(name()) : null);
  const chosenClass = () => className() || null;
  const limits = () => {
    const of = thread();
    return of && classLimits(of, chosenClass() ?? undefined);
  };
  const asked = () => freshWear({ thread: name() || null, class: chosenClass() });
  const photo = (file: File) => void takeIn(file, {}, asked());
  const goOn = async () => {
    const of = thread();
    setMissing(of === null);
    if (!of) return;
    setBusy(true);
    try {
      const conclusion = await conclude(null, [], toolsAtHand());
      const title = [of.designation, limits()?.class].filter(Boolean).join(' ');
      await adopt(
        await sheetFromReadings([], conclusion, { title, wear: asked() }),
        'push',
        'wear',
      );
    } finally {
      setBusy(false);
    }
  };
  return (
    <div class="used stack">
      <div class="screen-head">
        <h1>{t().wear.title}</h1>
        <p class="soft measure-width">{t().wear.lead}</p>
      </div>
      <ThreadAndClass
        thread={thread()}
        className={chosenClass()}
        suggested={[]}
        onThread={(designation) => {
          setName(designation);
          setClassName('');
          setMissing(false);
        }}
        onClass={setClassName}
      />
      <Show when={!thread()}>
        <p class="small soft">{t().wear.threadEmpty}</p>
      </Show>
      <Show when={limits()} keyed>
        {(of) => (
          <div class="wear-beforehand measure-width">
            <strong>{t().wear.beforehand}</strong>
            <p>{neededWords(of)}</p>
          </div>
        )}
      </Show>
      <Show when={thread() && !limits()}>
        <p class="measure-width">
          {(thread()?.taper ?? 0) > 0 ? t().wear.taperNote : t().wear.noClass}
        </p>
      </Show>
      <div class="used-ways">
        <section class="stack tight" aria-labelledby="used-photo-title">
          <h2 id="used-photo-title">{t().wear.photoTitle}</h2>
          <p>{t().wear.photoText}</p>
          <div class="row">
            <FileButton label={t().start.take} capture strong onFile={photo} />
            <FileButton label={t().start.choose} accept={photoTypes} onFile={photo} />
          </div>
        </section>
        <section class="stack tight" aria-labelledby="used-readings-title">
          <h2 id="used-readings-title">{t().wear.readingsTitle}</h2>
          <p>{t().wear.readingsText}</p>
          <div class="row">
            <button type="button" class="button" disabled={busy()} onClick={() => void goOn()}>
              {t().wear.goOn}
            </button>
          </div>
          <Show when={missing()}>
            <p class="small wrong" role="alert">
              {t().wear.threadMissing}
            </p>
          </Show>
        </section>
      </div>
      <Cautions />
    </div>
  );
}
