import { createSignal, Show } from 'solid-js';
import { maxShots } from '../../journey/8-sheet/sheet-schema';
import { drawnFeatures } from '../identification/drawn-features';
import { goToClaim } from '../identification/go-to-question';
import { openClaim } from '../identification/SeatClaim';
import { t } from '../language/language';
import { CornersByHand } from '../reference/CornersByHand';
import { FileButton, photoTypes } from '../start/FileButton';
import { remeasuring } from '../work/remeasure';
import { openSheet } from '../work/sheets';
import { createMeasureAgain } from './create-measure-again';
import type { ShownShot } from './create-shown-shot';
import { HelpHandles } from './HelpHandles';
import { HelpPanel } from './HelpPanel';
import { type Hand, startingHand } from './hand';
import { createHistory, type History } from './history';
import { PhotoChoice } from './PhotoChoice';
import { PhotoView, type PhotoViewProps } from './PhotoView';
import { RemeasuringNote } from './RemeasuringNote';

interface Crest {
  readonly female: boolean;
  readonly crest: number | null;
  readonly onCrest: (crest: number | null) => void;
}

/** The photo, and a person's help with it: an axis or a rule, corners, one more photo. */
export function InspectedPhoto(props: { readonly shown: ShownShot } & Crest) {
  const { index, setIndex, shot } = props.shown;
  const [helping, setHelping] = createSignal(false);
  const [cornering, setCornering] = createSignal(false);
  const history = createHistory<Hand>(startingHand(shot()));
  const { problem, again, another } = createMeasureAgain(props.shown);
  return (
    <>
      <PhotoChoice index={index()} onIndex={setIndex} />
      {/* Not keyed: what a person is choosing outlives the photo that comes anew when it has been measured again. */}
      <Show when={cornering() && props.shown.photo()}>
        {(photo) => (
          <CornersByHand
            of={{ photo: photo(), ...sizeOf(props.shown) }}
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
        <ShownPhoto
          shown={props.shown}
          female={props.female}
          crest={props.crest}
          onCrest={props.onCrest}
          history={helping() ? history : null}
        />
        <Show
          when={helping()}
          fallback={
            <PhotoActions
              shown={props.shown}
              female={props.female}
              onHelp={() => setHelping(true)}
              onCorners={() => setCornering(true)}
              onAnother={(file) => void another(file)}
            />
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
    </>
  );
}

/** With handles on it while a person helps. */
function ShownPhoto(
  props: { readonly shown: ShownShot; readonly history: History<Hand> | null } & Crest,
) {
  const handles =
    (photo: Blob, history: History<Hand>): PhotoViewProps['children'] =>
    (view) => <HelpHandles history={history} view={view} of={{ photo, ...sizeOf(props.shown) }} />;
  /** The handles alone while a person helps. */
  const features = () => {
    const { sheet } = openSheet()!;
    if (props.history) return undefined;
    const onAsk = openClaim(sheet) ? goToClaim : undefined;
    return { list: drawnFeatures(sheet, props.shown.shot()), onAsk };
  };
  return (
    <Show when={props.shown.photo()} keyed fallback={<div class="photo-stage" />}>
      {(photo) => (
        <PhotoView
          photo={photo}
          overlay={props.shown.shot().overlay}
          female={props.female}
          features={features()}
          crest={props.crest}
          onCrest={props.onCrest}
        >
          {props.history ? handles(photo, props.history) : undefined}
        </PhotoView>
      )}
    </Show>
  );
}

function PhotoActions(props: {
  readonly shown: ShownShot;
  readonly female: boolean;
  readonly onHelp: () => void;
  readonly onCorners: () => void;
  readonly onAnother: (file: File) => void;
}) {
  const kind = () => props.shown.shot().reference.kind;
  const hasRoom = () => openSheet()!.sheet.shots.length < maxShots;
  return (
    <div class="row">
      {/* Only the thread of a male end can be shown by an axis or a rule. */}
      <Show when={!props.female}>
        <button type="button" class="button" onClick={props.onHelp}>
          {t().inspection.help}
        </button>
      </Show>
      <Show when={kind() !== 'card' && kind() !== 'rule'}>
        <button type="button" class="button" onClick={props.onCorners}>
          {t().reference.showCorners}
        </button>
      </Show>
      <Show when={hasRoom() && remeasuring() === null}>
        <FileButton label={t().sheet.addPhoto} accept={photoTypes} onFile={props.onAnother} />
      </Show>
    </div>
  );
}

const sizeOf = ({ shot }: ShownShot) => ({
  width: shot().overlay?.widthPx ?? shot().photo.widthPx,
  height: shot().overlay?.heightPx ?? shot().photo.heightPx,
});
