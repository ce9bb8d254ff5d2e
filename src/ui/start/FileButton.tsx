import { takeIn } from '../work/intake';

export const photoTypes = 'image/*,.jpg,.jpeg,.png,.webp,.heic,.heif,.avif';
const sheetTypes = '.crestwise,.crestwise-drawer';

/** A file input that looks like a button. With `capture`, phones open the camera. */
export function FileButton(props: {
  readonly label: string;
  readonly capture?: boolean;
  readonly strong?: boolean;
  readonly onFile?: (file: File) => void;
  readonly accept?: string;
}) {
  return (
    <label class="button file-button" classList={{ strong: props.strong ?? false }}>
      <input
        type="file"
        accept={props.accept ?? (props.capture ? 'image/*' : `${photoTypes},${sheetTypes}`)}
        capture={props.capture ? 'environment' : undefined}
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          event.currentTarget.value = '';
          if (file) (props.onFile ?? takeIn)(file);
        }}
      />
      <span>{props.label}</span>
    </label>
  );
}
