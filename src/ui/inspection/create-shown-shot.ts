import { createMemo, createResource, createSignal } from 'solid-js';
import { uprightPhoto } from '../work/photo-bytes';
import { openSheet } from '../work/sheets';

/** One photo of the open sheet at a time, with what was found on it. Its owner disposes of it. */
export function createShownShot() {
  const shots = () => openSheet()!.sheet.shots;
  const [index, setIndex] = createSignal(0);
  const shot = createMemo(() => shots()[Math.min(index(), shots().length - 1)]!);
  const bytes = createMemo(() => openSheet()!.photos[shots().indexOf(shot())]);
  const [photo] = createResource(
    () => ({ bytes: bytes(), shot: shot() }),
    (from) => (from.bytes ? uprightPhoto(from.bytes, from.shot) : null),
  );
  return { index, setIndex, shot, photo, showLast: () => setIndex(shots().length - 1) };
}

export type ShownShot = ReturnType<typeof createShownShot>;
