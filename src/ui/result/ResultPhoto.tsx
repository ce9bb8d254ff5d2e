import { createMemo, createResource, onCleanup, Show } from 'solid-js';
import { uprightPhoto } from '../work/photo-bytes';
import { openSheet } from '../work/sheets';

/** A small print of the sheet's first photo. Beside the numbers, so it needs no words of its own. */
export function ResultPhoto() {
  const [photo] = createResource(
    () => openSheet()?.photos[0],
    (bytes) => uprightPhoto(bytes, openSheet()!.sheet.shots[0]),
  );
  const url = createMemo(() => {
    const blob = photo();
    if (!blob) return null;
    const made = URL.createObjectURL(blob);
    onCleanup(() => URL.revokeObjectURL(made));
    return made;
  });
  return <Show when={url()}>{(src) => <img class="result-photo" src={src()} alt="" />}</Show>;
}
