import { createMemo, createSignal, Show } from 'solid-js';
import { maxShots } from '../../journey/8-sheet/sheet-schema';
import type { WearAssessment } from '../../journey/wear/assess';
import { createShownShot } from '../inspection/create-shown-shot';
import { PhotoChoice } from '../inspection/PhotoChoice';
import { PhotoView } from '../inspection/PhotoView';
import { RemeasuringNote } from '../inspection/RemeasuringNote';
import { plusMinus } from '../language/format';
import { t } from '../language/language';
import { noChangeWords } from '../measuring/refusal-words';
import { FileButton, photoTypes } from '../start/FileButton';
import { addPhoto, remeasuring } from '../work/remeasure';
import { openSheet } from '../work/sheets';
import { CrestChart } from './CrestChart';
import { markedCrests, WearMarks } from './WearMarks';

/** Crests of each photo, on the photo and as a chart; and what the photos say together. */
export function WearPhotos(props: { readonly wear: WearAssessment }) {
  const { index, setIndex, shot, photo, showLast } = createShownShot();
  const against = () => (props.wear.anotherPitch ? null : props.wear.limits);
  const marks = createMemo(() => markedCrests(shot().crests, shot().overlay, against()));
  const has = (state: 'short' | 'below') => marks().some((mark) => mark.state === state);
  return (
    <>
      <PhotoChoice index={index()} onIndex={setIndex} />
      <section class="stack tight" aria-labelledby="wear-chart-title">
        <h2 id="wear-chart-title">{t().wear.chart}</h2>
        <Show when={shot().crests.length > 0} fallback={<p>{t().wear.chartNone}</p>}>
          <CrestChart crests={shot().crests} limits={against()} />
        </Show>
      </section>
      <section class="stack tight" aria-labelledby="wear-marks-title">
        <h2 id="wear-marks-title">{t().wear.marks}</h2>
        <Show when={photo()} keyed fallback={<div class="photo-stage" />}>
          {(blob) => (
            <PhotoView
              photo={blob}
              overlay={shot().overlay}
              crest={null}
              onCrest={() => undefined}
              fromThread
            >
              {(view) => <WearMarks marks={marks()} scale={view.scale()} />}
            </PhotoView>
          )}
        </Show>
        <ul class="plain-list small wear-keys">
          <Show when={has('short')}>
            <li data-state="short">{t().wear.markShort}</li>
          </Show>
          <Show when={has('below')}>
            <li data-state="below">{t().wear.markBelow}</li>
          </Show>
          <Show when={marks().length === 0 && shot().crests.length > 0}>
            <li>{t().wear.noMarks}</li>
          </Show>
        </ul>
      </section>
      <RoundThePart wear={props.wear} onAdded={showLast} />
    </>
  );
}

function RoundThePart(props: { readonly wear: WearAssessment; readonly onAdded: () => void }) {
  const [problem, setProblem] = createSignal<string | null>(null);
  const add = async (file: File) => {
    setProblem(null);
    const kept = await addPhoto(file);
    if (kept === null) props.onAdded();
    else setProblem(noChangeWords(kept));
  };
  const round = () => props.wear.roundness;
  const roundWords = () => {
    const found = round();
    if (!found) return props.wear.gauge ? t().wear.taperNote : t().wear.roundOne;
    return t().wear[found.uneven ? 'roundUneven' : 'roundEven'](plusMinus(found.apartMm));
  };
  return (
    <section class="stack tight" aria-labelledby="wear-round-title">
      <h2 id="wear-round-title">{t().wear.round}</h2>
      <p data-uneven={round()?.uneven}>{roundWords()}</p>
      <Show when={openSheet()!.sheet.shots.length < maxShots && remeasuring() === null}>
        <div class="row">
          <FileButton label={t().wear.takeQuarter} capture onFile={(file) => void add(file)} />
          <FileButton
            label={t().wear.addQuarter}
            accept={photoTypes}
            onFile={(file) => void add(file)}
          />
        </div>
      </Show>
      <RemeasuringNote problem={problem()} />
    </section>
  );
}
