import { createEffect, createSignal, For, on, Show } from 'solid-js';
import { maxShots } from '../../journey/8-sheet/sheet-schema';
import { defaultOptions } from '../../journey/identification';
import type { PhotoPoint } from '../../journey/overlay';
import { endOf } from '../end/end-choice';
import { t } from '../language/language';
import { shownIn } from '../measuring/next-steps';
import { noChangeWords } from '../measuring/refusal-words';
import { CornersByHand } from '../reference/CornersByHand';
import { FileButton, photoTypes } from '../start/FileButton';
import { addPhoto, type Help, type NoChange, remeasure, remeasuring } from '../work/remeasure';
import { openSheet } from '../work/sheets';
import { BudgetPicture } from './BudgetPicture';
import { createShownShot } from './create-shown-shot';
import { HelpHandles } from './HelpHandles';
import { type Hand, HelpPanel } from './HelpPanel';
import { createHistory } from './history';
import { Numbers } from './Numbers';
import { PhotoChoice } from './PhotoChoice';
import { PhotoView } from './PhotoView';
import { ProfilePlot } from './ProfilePlot';
import { RemeasuringNote } from './RemeasuringNote';
import './inspection.css';

/** The photo of the open sheet, what was found on it, and the numbers with their budget. */
export function Inspection() {
  const sheet = () => openSheet()!.sheet;
  const { index, setIndex, shot, photo, showLast } = createShownShot();
  const [crest, setCrest] = createSignal<number | null>(null);
  const [helping, setHelping] = createSignal(false);
  const [cornering, setCornering] = createSignal(false);
  const [problem, setProblem] = createSignal<string | null>(null);
  createEffect(on(shot, () => setCrest(null)));

  const female = () => endOf(shot().measurement) === 'female';
  const outlined = () => shot().reference.kind !== 'card' && shot().reference.kind !== 'rule';
  const photoSize = () => ({
    width: shot().overlay?.widthPx ?? shot().photo.widthPx,
    height: shot().overlay?.heightPx ?? shot().photo.heightPx,
  });

  const history = createHistory<Hand>(startingHand());

  function startingHand(): Hand {
    const { overlay, corrections, ruler } = shot();
    const width = overlay?.widthPx ?? 1000;
    const height = overlay?.heightPx ?? 1000;
    const somewhere: readonly [PhotoPoint, PhotoPoint] = [
      [width * 0.45, height / 2],
      [width * 0.55, height / 2],
    ];
    const [a, b] =
      corrections?.axis ?? (ruler ? [ruler.from, ruler.to] : null) ?? overlay?.axis ?? somewhere;
    return {
      mode: ruler ? 'ruler' : 'axis',
      a,
      b,
      side: corrections?.side ?? 'both',
      distance: ruler ? String(ruler.mm) : '',
    };
  }

  const settle = async (work: Promise<NoChange | null>, help: Partial<Help> = {}) => {
    setProblem(null);
    const kept = await work;
    if (kept !== null)
      setProblem(
        noChangeWords(
          kept,
          shownIn({ ...defaultOptions, gender: endOf(shot().measurement), ...help }),
        ),
      );
    return kept === null;
  };
  const again = (help: Help) => settle(remeasure(sheet().shots.indexOf(shot()), help), help);
  const another = async (file: File) => {
    if (await settle(addPhoto(file))) showLast();
  };

  return (
    <div class="inspection stack">
      <section class="stack tight" aria-labelledby="inspection-title">
        <h2 id="inspection-title" class="visually-hidden">
          {t().inspection.title}
        </h2>
        <PhotoChoice index={index()} onIndex={setIndex} />
        <Show when={cornering() && photo()} keyed>
          {(blob) => (
            <CornersByHand
              of={{ photo: blob, ...photoSize() }}
              overlay={shot().overlay}
              asked={shot().asked}
              busy={remeasuring() !== null}
              onApply={(reference) =>
                void again({ reference, ruler: null, corrections: shot().corrections })
              }
              onClose={() => setCornering(false)}
            />
          )}
        </Show>
        <Show when={!cornering()}>
          <Show when={photo()} keyed fallback={<div class="photo-stage" />}>
            {(blob) => (
              <PhotoView
                photo={blob}
                overlay={shot().overlay}
                female={female()}
                crest={crest()}
                onCrest={setCrest}
              >
                {helping()
                  ? (scale, toPhoto) => (
                      <HelpHandles
                        history={history}
                        scale={scale()}
                        toPhoto={toPhoto}
                        of={{ photo: blob, ...photoSize() }}
                      />
                    )
                  : undefined}
              </PhotoView>
            )}
          </Show>
          <Show
            when={helping()}
            fallback={
              <div class="row">
                {/* An axis and a rule speak of a thread outside. */}
                <Show when={!female()}>
                  <button type="button" class="button" onClick={() => setHelping(true)}>
                    {t().inspection.help}
                  </button>
                </Show>
                <Show when={outlined()}>
                  <button type="button" class="button" onClick={() => setCornering(true)}>
                    {t().reference.showCorners}
                  </button>
                </Show>
                <Show when={sheet().shots.length < maxShots && remeasuring() === null}>
                  <FileButton
                    label={t().sheet.addPhoto}
                    accept={photoTypes}
                    onFile={(file) => void another(file)}
                  />
                </Show>
              </div>
            }
          >
            <HelpPanel
              history={history}
              busy={remeasuring() !== null}
              onApply={(help) => void again(help)}
              onClear={() => void again({ ruler: null, corrections: null })}
              onClose={() => setHelping(false)}
            />
          </Show>
        </Show>
        <RemeasuringNote problem={problem()} />
      </section>
      <Show when={shot().notes.length > 0}>
        <ul class="photo-notes small">
          <For each={shot().notes}>{(note) => <li>{t().inspection.note[note]}</li>}</For>
          <Show when={shot().reference.kind === 'id1'}>
            <li>{t().reference.painted}</li>
          </Show>
        </ul>
      </Show>
      <Show when={!female() && shot().profile}>
        {(profile) => (
          <section class="stack tight" aria-labelledby="profile-title">
            <h2 id="profile-title">{t().inspection.profile}</h2>
            <ProfilePlot
              profile={profile()}
              crests={shot().overlay?.crests ?? []}
              crest={crest()}
              onCrest={setCrest}
              turns={shot().measurement.turns}
            />
          </section>
        )}
      </Show>
      <div class="inspection-numbers">
        <section class="stack tight" aria-labelledby="numbers-title">
          <h2 id="numbers-title">{t().inspection.numbers}</h2>
          <Show when={sheet().shots.length > 1}>
            <p class="small soft">{t().sheet.photos(sheet().shots.length)}</p>
          </Show>
          <Numbers
            measurement={sheet().measurement ?? shot().measurement}
            reference={shot().reference}
          />
          <p class="small soft">{t().inspection.numbersNote}</p>
        </section>
        <BudgetPicture measurement={sheet().measurement ?? shot().measurement} />
      </div>
    </div>
  );
}
