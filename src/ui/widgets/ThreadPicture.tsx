import { createMemo, createResource, For, onCleanup, Show } from 'solid-js';
import { arrowHead, paintCrop, plateFrom, type ThreadCrop } from '../../handover/crop-drawing';
import { threadCrop } from '../../handover/thread-crop';
import { drawnFeatures, featureName } from '../identification/drawn-features';
import { plusMinus } from '../language/format';
import { t } from '../language/language';
import type { Sheet, SheetWithPhotos } from '../work/open-sheet';
import { uprightPhoto } from '../work/photo-bytes';
import { CropFeatures, FeatureButton, plateWidth } from './CropFeatures';
import './thread-picture.css';

/** Enough for a dense screen and for paper. */
const pxPerUnit = 3;

export function dimensionWords(measurement: NonNullable<Sheet['measurement']>) {
  return {
    diameter: `⌀ ${plusMinus(measurement.majorDiameterMm, 'mm')}`,
    pitch: `P ${plusMinus(measurement.pitchMm, 'mm')}`,
  };
}

/** The thread of a sheet's first photo, level, with its dimensions: the picture that stands for
 *  the sheet. Where no drawing came along, the photo as it is. `onAsk` leads from what is drawn of the seat to the
 *  question about it. */
export function ThreadPicture(props: {
  readonly item: SheetWithPhotos;
  readonly onAsk?: (() => void) | undefined;
}) {
  const shot = () => props.item.sheet.shots[0] ?? null;
  const features = createMemo(
    () => {
      const of = shot();
      return of ? drawnFeatures(props.item.sheet, of) : [];
    },
    undefined,
    { equals: (a, b) => a.length === b.length && a.every((one, i) => one === b[i]) },
  );
  const crop = createMemo(() => threadCrop(shot()?.overlay ?? null, features()));
  const source = createMemo(
    () => {
      const bytes = props.item.photos[0];
      const now = shot();
      return bytes && now ? { bytes, shot: now, crop: crop() } : undefined;
    },
    undefined,
    { equals: (a, b) => a?.bytes === b?.bytes && a?.shot.overlay === b?.shot.overlay },
  );
  const [url] = createResource(source, async ({ bytes, shot: of, crop: at }) => {
    const photo = await uprightPhoto(bytes, of);
    return URL.createObjectURL(at ? await cropped(photo, at) : photo);
  });
  onCleanup(() => {
    const made = url.latest;
    if (made) URL.revokeObjectURL(made);
  });
  const words = createMemo(() => {
    const measured = props.item.sheet.measurement ?? shot()?.measurement;
    return measured ? dimensionWords(measured) : null;
  });
  const said = (at: ThreadCrop) =>
    [words()?.diameter, words()?.pitch, ...at.features.map(({ seat }) => featureName(seat))].join(
      ', ',
    );
  return (
    <Show when={shot()}>
      <Show
        when={crop()}
        keyed
        fallback={<img class="thread-photo" src={url()} alt={t().inspection.title} />}
      >
        {(at) => (
          <div class="thread-frame">
            <svg
              class="thread-picture"
              viewBox={`0 0 ${at.width} ${at.height}`}
              role="img"
              aria-label={`${t().loop.crop}: ${said(at)}`}
            >
              <Show when={url()}>
                {(href) => <image href={href()} width={at.width} height={at.height} />}
              </Show>
              <Dimensions crop={at} words={words()} />
              <CropFeatures crop={at} asked={props.onAsk !== undefined} />
            </svg>
            <Show when={props.onAsk} keyed>
              {(ask) => (
                <For each={at.features}>
                  {(feature) => <FeatureButton crop={at} feature={feature} onAsk={ask} />}
                </For>
              )}
            </Show>
          </div>
        )}
      </Show>
    </Show>
  );
}

function Dimensions(props: {
  readonly crop: ThreadCrop;
  readonly words: ReturnType<typeof dimensionWords> | null;
}) {
  const d = () =>
    props.crop.lines.map(([from, to]) => `M${from.join(' ')}L${to.join(' ')}`).join('');
  return (
    <>
      <path class="casing" d={d()} />
      <path class="line" d={d()} />
      <For each={props.crop.arrows}>
        {(arrow) => <polygon points={arrowHead(arrow).join(' ')} />}
      </For>
      <Show when={props.words}>
        {(words) => (
          <For each={props.crop.plates}>
            {(plate) => {
              const text = () => words()[plate.of];
              const width = () => plateWidth(text());
              const from = () => plateFrom(plate, width(), props.crop);
              return (
                <>
                  <rect x={from()} y={plate.at[1] - 10} width={width()} height={20} />
                  <text x={from() + width() / 2} y={plate.at[1] + 4.5} text-anchor="middle">
                    {text()}
                  </text>
                </>
              );
            }}
          </For>
        )}
      </Show>
    </>
  );
}

async function cropped(photo: Blob, crop: ThreadCrop): Promise<Blob> {
  const bitmap = await createImageBitmap(photo, { imageOrientation: 'from-image' });
  const canvas = paintCrop(bitmap, crop, pxPerUnit);
  bitmap.close();
  return canvas ? canvas.convertToBlob({ type: 'image/jpeg', quality: 0.9 }) : photo;
}
