import { createResource, onCleanup, Show } from 'solid-js';
import { uprightPhoto } from '../work/photo-bytes';
import { openSheet } from '../work/sheets';

/** A small print of the sheet's first photo. */
export function ResultPhoto() {
  const [url] = createResource(
    () => openSheet()?.photos[0],
    async (bytes) => {
      const made = URL.createObjectURL(await uprightPhoto(bytes, openSheet()!.sheet.shots[0]));
      made_.push(made);
      return made;
    },
  );
  const made_: string[] = [];
  onCleanup(() => {
    for (const one of made_) URL.revokeObjectURL(one);
  });
  return <Show when={url()}>{(src) => <img class="result-photo" src={src()} alt="" />}</Show>;
}
