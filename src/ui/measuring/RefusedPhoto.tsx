import { createResource, Show } from 'solid-js';
import { defaultOptions } from '../../journey/identification';
import type { Overlay } from '../../journey/overlay';
import { HelpHandles } from '../inspection/HelpHandles';
import { HelpPanel } from '../inspection/HelpPanel';
import type { Hand } from '../inspection/hand';
import { createHistory } from '../inspection/history';
import { PhotoView } from '../inspection/PhotoView';
import { CornersByHand } from '../reference/CornersByHand';
import { job, measureNew } from '../work/job';
import { showable } from '../work/showable';

export type ByHand = Hand['mode'] | 'corners';

/** The photo that was not measured, with what was found on it, and help given by hand. */
export function RefusedPhoto(props: {
  readonly photo: Blob;
  readonly overlay: Overlay | null;
  readonly mode: ByHand | null;
  readonly onClose: () => void;
}) {
  const [shown] = createResource(
    () => props.photo,
    async (photo) => {
      const { overlay } = props;
      const blob = await showable(photo);
      if (overlay) return { blob, width: overlay.widthPx, height: overlay.heightPx };
      return createImageBitmap(blob).then(
        (image) => {
          const { width, height } = image;
          image.close();
          return { blob, width, height };
        },
        () => null,
      );
    },
  );
  return (
    <Show when={shown()} keyed>
      {({ blob, width, height }) => {
        const history = createHistory<Hand>({
          mode: 'axis',
          a: [width * 0.42, height / 2],
          b: [width * 0.58, height / 2],
          side: 'both',
          distance: '',
        });
        return (
          <div class="refused-photo stack tight">
            <Show
              when={props.mode !== 'corners'}
              fallback={
                <CornersByHand
                  of={{ photo: blob, width, height }}
                  overlay={props.overlay}
                  asked={job()?.options.reference ?? null}
                  busy={false}
                  onApply={(reference) => void measureNew(props.photo, { reference })}
                  onClose={props.onClose}
                />
              }
            >
              <PhotoView
                photo={blob}
                overlay={props.overlay}
                female={job()?.options.gender === 'female'}
                crest={null}
                onCrest={() => undefined}
              >
                {props.mode
                  ? (view) => (
                      <HelpHandles
                        history={history}
                        view={view}
                        of={{ photo: blob, width, height }}
                      />
                    )
                  : undefined}
              </PhotoView>
              <Show when={props.mode !== 'corners' && props.mode} keyed>
                {(mode) => {
                  history.push({ ...history.now(), mode });
                  return (
                    <HelpPanel
                      history={history}
                      busy={false}
                      onApply={(help) => {
                        const asked = job()?.options;
                        void measureNew(props.photo, {
                          ...help,
                          reference: asked?.reference ?? defaultOptions.reference,
                          ruler: help.ruler ?? asked?.ruler ?? null,
                        });
                      }}
                      onClear={() => void measureNew(props.photo)}
                      onClose={props.onClose}
                    />
                  );
                }}
              </Show>
            </Show>
          </div>
        );
      }}
    </Show>
  );
}
