import { createSignal, For, Show } from 'solid-js';
import type { ReferenceAsked } from '../../journey/identification';
import type { Overlay, PhotoPoint } from '../../journey/overlay';
import { HistoryButtons } from '../inspection/HistoryButtons';
import { createHistory, type History } from '../inspection/history';
import { PhotoView } from '../inspection/PhotoView';
import type { ShownPart } from '../inspection/view-box';
import { t } from '../language/language';
import { HandMarks } from './HandMarks';
import type { LoupePhoto } from './Loupe';
import { paperChoice, referenceChoice } from './reference-choice';
import '../inspection/help-panel.css';
import './reference.css';

type Outlined = 'id1' | 'a4' | 'letter';
type Corners = readonly PhotoPoint[];

/** The four corners of a card or sheet dragged on the photo, and what it is. */
export function CornersByHand(props: {
  readonly of: LoupePhoto;
  readonly overlay: Overlay | null;
  readonly asked: ReferenceAsked | null;
  readonly busy: boolean;
  readonly onApply: (asked: ReferenceAsked) => void;
  readonly onClose: () => void;
}) {
  const { width, height } = props.of;
  const seen =
    props.asked?.corners ?? (props.overlay?.reference.length ? props.overlay.reference : null);
  const history = createHistory<Corners>(
    seen ?? [
      [0.2 * width, 0.25 * height],
      [0.8 * width, 0.25 * height],
      [0.8 * width, 0.75 * height],
      [0.2 * width, 0.75 * height],
    ],
  );
  const [kind, setKind] = createSignal<Outlined>(
    props.asked && props.asked.kind !== 'auto' && props.asked.kind !== 'card'
      ? props.asked.kind
      : referenceChoice() === 'sheet'
        ? paperChoice()
        : 'id1',
  );
  return (
    <div class="stack tight">
      <Show when={props.of.photo} keyed>
        {(photo) => (
          <PhotoView photo={photo} overlay={props.overlay} crest={null} onCrest={() => undefined}>
            {(view) => <CornerMarks of={props.of} history={history} view={view} />}
          </PhotoView>
        )}
      </Show>
      <section class="panel stack tight help-panel" aria-label={t().reference.showCorners}>
        <p class="small">{t().reference.cornersText}</p>
        <fieldset class="row help-modes">
          <legend class="small soft">{t().reference.whatIsIt}</legend>
          <For each={['id1', 'a4', 'letter'] as const}>
            {(which) => (
              <label class="choice">
                <input
                  type="radio"
                  name="outlined"
                  checked={kind() === which}
                  onChange={() => setKind(which)}
                />
                {t().reference.kind[which]}
              </label>
            )}
          </For>
        </fieldset>
        <div class="row">
          <button
            type="button"
            class="button strong"
            disabled={props.busy}
            onClick={() => props.onApply({ kind: kind(), corners: history.now() })}
          >
            {t().inspection.apply}
          </button>
          <HistoryButtons of={history} />
          <button type="button" class="button plain" onClick={props.onClose}>
            {t().inspection.doneHelp}
          </button>
        </div>
      </section>
    </div>
  );
}

function CornerMarks(props: {
  readonly of: LoupePhoto;
  readonly history: History<Corners>;
  readonly view: ShownPart;
}) {
  const corners = () => props.history.now();
  return (
    <>
      <path
        class="corner-lines"
        d={`M${corners()
          .map(([x, y]) => `${x} ${y}`)
          .join('L')}Z`}
      />
      <HandMarks
        history={props.history}
        keys={[1, 2, 3, 4]}
        at={(which) => corners()[which - 1]!}
        moved={(which, to) => corners().map((corner, i) => (i === which - 1 ? to : corner))}
        label={(which) => t().reference.corner(which)}
        attribute="data-corner"
        of={props.of}
        view={props.view}
      />
    </>
  );
}
