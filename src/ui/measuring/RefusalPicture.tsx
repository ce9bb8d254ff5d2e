import { Show } from 'solid-js';
import { CardSketch } from '../widgets/CardSketch';

/** The wrong way beside the right way, for reasons that a picture explains. */
export function RefusalPicture(props: { readonly reason: string }) {
  const wrong = () =>
    (
      ({
        'no-card': 'no-card',
        'no-thread': 'no-thread',
        'too-few-turns': 'few-turns',
        'cut-off': 'cut-off',
        'several-fittings': 'several',
        'too-coarse': 'far',
        'too-blurred': 'blurred',
        'card-mirrored': 'mirrored',
      }) as const
    )[props.reason];
  return (
    <Show when={wrong()}>
      {(kind) => (
        <div class="refusal-picture" aria-hidden="true">
          <CardSketch shows={kind()} verdict="wrong" />
          <CardSketch shows="right" verdict="right" />
        </div>
      )}
    </Show>
  );
}
