import { createEffect, createSignal, on, onCleanup, onMount } from 'solid-js';
import type { Overlay, PhotoPoint } from '../../journey/overlay';
import { visibleRings } from '../../journey/visible-rings';
import { makeGestures } from './make-gestures';
import { around, fit, moveBy, type Size, type ViewBox, zoomAbout } from './view-box';

const unknown: Size = { width: 4, height: 3 };

/** Which part of a photo is shown, and what moves it: buttons, keys, gestures, a chosen crest. Its
 *  owner disposes of it. */
export function createPhotoView(props: {
  readonly overlay: Overlay | null;
  readonly female?: boolean;
  readonly crest: number | null;
  readonly fromThread?: boolean;
}) {
  let stage!: HTMLElement;
  const [natural, setNatural] = createSignal<Size | null>(null);
  const [viewer, setViewer] = createSignal<Size>(unknown);
  const [view, setView] = createSignal<ViewBox | null>(null);

  const photo = (): Size =>
    props.overlay
      ? { width: props.overlay.widthPx, height: props.overlay.heightPx }
      : (natural() ?? unknown);
  const box = () => view() ?? fit(photo(), viewer());
  const scale = () => box().width / viewer().width;
  const zoomed = () => box().width < fit(photo(), viewer()).width * 0.999;
  const middle = (): [number, number] => [box().x + box().width / 2, box().y + box().height / 2];

  const zoom = (factor: number, at: readonly [number, number] = middle()) =>
    setView(zoomAbout(box(), factor, at, photo(), viewer()));
  const move = (dx: number, dy: number) => setView(moveBy(box(), dx, dy, photo()));
  const showAll = () => setView(null);
  const points = () => threadPoints(props.overlay, props.female === true);
  const showThread = () => setView(around(points(), photo(), viewer()));
  const toPhoto = (event: PointerEvent): PhotoPoint => {
    const rect = stage.getBoundingClientRect();
    return [
      box().x + (event.clientX - rect.left) * scale(),
      box().y + (event.clientY - rect.top) * scale(),
    ];
  };

  onMount(() => {
    const watch = new ResizeObserver(([entry]) => {
      const { width, height } = entry.contentRect;
      if (width > 0 && height > 0) setViewer({ width, height });
      showAll();
      if (props.fromThread && points().length > 0) showThread();
    });
    watch.observe(stage);
    onCleanup(() => watch.disconnect());
    makeGestures(stage, {
      zoomed,
      move: (dx, dy) => move(dx * scale(), dy * scale()),
      zoom: (factor, x, y) => zoom(factor, [box().x + x * scale(), box().y + y * scale()]),
    });
  });

  /** A crest chosen in the plot is brought into view here. */
  const bringIntoView = (index: number | null) => {
    const mark = index === null ? undefined : props.overlay?.crests[index];
    if (!mark || !zoomed()) return;
    const [x, y] = mark.at;
    const b = box();
    if (x < b.x || y < b.y || x > b.x + b.width || y > b.y + b.height)
      move(x - (b.x + b.width / 2), y - (b.y + b.height / 2));
  };
  createEffect(on(() => props.crest, bringIntoView, { defer: true }));

  const onKey = (event: KeyboardEvent) => {
    const step = 40 * scale();
    const acts: Record<string, () => void> = {
      '+': () => zoom(1.4),
      '=': () => zoom(1.4),
      '-': () => zoom(1 / 1.4),
      '0': showAll,
      ArrowLeft: () => move(-step, 0),
      ArrowRight: () => move(step, 0),
      ArrowUp: () => move(0, -step),
      ArrowDown: () => move(0, step),
    };
    const act = acts[event.key];
    if (!act || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key.startsWith('Arrow') && !zoomed()) return;
    event.preventDefault();
    act();
  };

  return {
    attach: (element: HTMLElement) => {
      stage = element;
    },
    setNatural,
    photo,
    box,
    scale,
    zoomed,
    zoom,
    showAll,
    hasThread: () => points().length > 0,
    showThread,
    toPhoto,
    onKey,
  };
}

export type PhotoViewState = ReturnType<typeof createPhotoView>;

/** What is drawn of the thread. */
function threadPoints(found: Overlay | null, female: boolean): readonly PhotoPoint[] {
  if (!found) return [];
  const lines = female ? visibleRings(found) : found.contactLines;
  return [...lines.flat(), ...(found.axis ?? []), ...found.crests.map((c) => c.at)];
}
