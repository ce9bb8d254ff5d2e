import { createMemo, createSignal, For, Show } from 'solid-js';
import { t } from '../language/language';
import { narrowForTables } from '../widgets/narrow';
import type { Column, Lines } from './column';
import { RowList } from './RowList';
import { isFound } from './search';
import { WideTable } from './WideTable';

const firstRows = 80;

export function SortedTable<Row>(props: {
  readonly caption: string;
  readonly rows: readonly Row[];
  readonly columns: readonly Column<Row>[];
  readonly search: string;
  readonly lines: (row: Row) => Lines;
  /** What the order is called in which the rows come. */
  readonly asGiven?: string;
}) {
  const [order, setOrder] = createSignal<{ column: number; up: boolean } | null>(null);
  const [all, setAll] = createSignal(false);
  const found = createMemo(() => {
    if (props.search.trim() === '') return props.rows;
    return props.rows.filter((row) =>
      isFound(
        props.search,
        props.columns.map((column) => `${column.show(row)} ${column.also?.(row) ?? ''}`).join(' '),
      ),
    );
  });
  const sorted = createMemo(() => {
    const by = order();
    if (!by) return found();
    const { show, by: key } = props.columns[by.column];
    const sign = by.up ? 1 : -1;
    return [...found()].sort((a, b) => {
      const [x, y] = key ? [key(a), key(b)] : [show(a), show(b)];
      const compared =
        typeof x === 'number' && typeof y === 'number'
          ? x - y
          : String(x).localeCompare(String(y), undefined, { numeric: true });
      return sign * compared;
    });
  });
  const shown = () => (all() ? sorted() : sorted().slice(0, firstRows));
  const direction = (column: number) => {
    const by = order();
    if (by?.column !== column) return 'none';
    return by.up ? 'ascending' : 'descending';
  };
  return (
    <>
      <p class="small soft" role="status">
        {t().standards.rows(found().length, props.rows.length)}
      </p>
      <Show
        when={narrowForTables()}
        fallback={
          <WideTable
            caption={props.caption}
            columns={props.columns}
            rows={shown()}
            direction={direction}
            onSort={(column) =>
              setOrder((now) => ({ column, up: now?.column === column ? !now.up : true }))
            }
          />
        }
      >
        <label class="field">
          <span class="small soft">{t().standards.order}</span>
          <select
            value={order()?.column ?? ''}
            onChange={({ currentTarget: { value } }) =>
              setOrder(value === '' ? null : { column: Number(value), up: true })
            }
          >
            <option value="">{props.asGiven ?? '–'}</option>
            <For each={props.columns}>
              {(column, index) => <option value={index()}>{column.name}</option>}
            </For>
          </select>
        </label>
        <RowList
          caption={props.caption}
          columns={props.columns}
          rows={shown()}
          lines={props.lines}
        />
      </Show>
      <Show when={!all() && sorted().length > firstRows}>
        <p>
          <button type="button" class="button" onClick={() => setAll(true)}>
            {t().standards.showAll}
          </button>
        </p>
      </Show>
    </>
  );
}
