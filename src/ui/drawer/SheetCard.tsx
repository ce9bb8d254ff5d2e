import { createMemo, onCleanup, Show } from 'solid-js';
import type { DrawerEntry } from '../../drawer/drawer-entry';
import { dateTime } from '../language/format';
import { t } from '../language/language';
import { hashOf } from '../shell/route';
import { entryName, entryState } from './entry-words';
import './sheet-card.css';

/** One sheet in a list. */
export function SheetCard(props: {
  readonly entry: DrawerEntry;
  readonly onDelete?: (entry: DrawerEntry) => void;
}) {
  const picture = createMemo(() => {
    const bytes = props.entry.thumbnail;
    if (!bytes) return null;
    const url = URL.createObjectURL(new Blob([bytes.slice()], { type: 'image/jpeg' }));
    onCleanup(() => URL.revokeObjectURL(url));
    return url;
  });
  const name = () => props.entry.title || entryName(props.entry) || t().drawer.untitled;
  return (
    <li class="sheet-card">
      <a href={hashOf({ screen: props.entry.received ? 'counter' : 'sheet', id: props.entry.id })}>
        <span class="sheet-card-picture">
          <Show when={picture()} fallback={<NoPicture />}>
            {(url) => <img src={url()} alt="" width="96" height="72" />}
          </Show>
        </span>
        <span class="sheet-card-words">
          <strong>{name()}</strong>
          <span class="small soft">
            {props.entry.title ? `${entryName(props.entry) ?? t().drawer.untitled} · ` : ''}
            {t().sheet.states[entryState(props.entry)]} · {dateTime(props.entry.createdAt)}
          </span>
          <Show when={props.entry.usedThread !== null}>
            <span class="small">
              {t().wear.title} {props.entry.usedThread}
            </span>
          </Show>
        </span>
      </a>
      <Show when={props.onDelete}>
        {(remove) => (
          <button
            type="button"
            class="button plain"
            aria-label={t().drawer.deleteOf(name())}
            onClick={() => remove()(props.entry)}
          >
            {t().drawer.delete}
          </button>
        )}
      </Show>
    </li>
  );
}

function NoPicture() {
  return (
    <svg viewBox="0 0 96 72" aria-hidden="true">
      <path d="M22 44 l8 -16 l8 16 l8 -16 l8 16 l8 -16 l8 16 M18 54 h18 m5 0 h6 m5 0 h24" />
    </svg>
  );
}
