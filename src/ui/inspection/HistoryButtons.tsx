import { t } from '../language/language';
import type { History } from './history';

export function HistoryButtons(props: {
  readonly of: Omit<History<unknown>, 'now' | 'push' | 'slide'>;
}) {
  return (
    <>
      <button
        type="button"
        class="button"
        disabled={!props.of.canUndo()}
        onClick={() => props.of.undo()}
      >
        {t().inspection.undo}
      </button>
      <button
        type="button"
        class="button"
        disabled={!props.of.canRedo()}
        onClick={() => props.of.redo()}
      >
        {t().inspection.redo}
      </button>
    </>
  );
}
