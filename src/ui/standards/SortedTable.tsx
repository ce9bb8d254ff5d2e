import { createMemo, createSignal, For, Show } from 'solid-js';
import { t } from '../language/language';
import { isFound } from './search';

export interface Column<Row> {
  readonly name: string;
  readonly show: (row: Row) => string;
  /** What to sort by; the shown text when left out. */
  readonly by?: (row: Row) => number | string;
  readonly numeric?: boolean;
  readonly wide?: boolean;
}

const firstRows = 80;

export function SortedTable<Row>(props: {
  readonly caption: string;
  readonly rows: readonly Row[];
  readonly columns: readonly Column<Row>[];
  readonly search: string;
}) {
  const [order, setOrder] = createSignal<{ column: number; up: boolean } | null>(null);
  const [all, setAll] = createSignal(false);
  const found = createMemo(() => {
    if (props.search.trim() === '') return props.rows;
    return props.rows.filter((row) =>
      isFound(props.search, props.columns.map((column) => column.show(row)).join(' ')),
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
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolled region must be reachable by keyboard */}
      <section class="table-scroll" tabIndex={0} aria-label={props.caption}>
        <table class="standards-table">
          <caption class="visually-hidden">{props.caption}</caption>
          <thead>
            <tr>
              <For each={props.columns}>
                {(column, index) => (
                  <th
                    scope="col"
                    aria-sort={direction(index())}
                    classList={{ numeric: column.numeric ?? false }}
                  >
                    <button
                      type="button"
                      aria-label={t().standards.sortBy(column.name)}
                      onClick={() =>
                        setOrder((now) => ({
                          column: index(),
                          up: now?.column === index() ? !now.up : true,
                        }))
                      }
                    >
                      {column.name}
                      <span aria-hidden="true" class="sort-mark">
                        {{ none: '', ascending: ' ↑', descending: ' ↓' }[direction(index())]}
                      </span>
                    </button>
                  </th>
                )}
              </For>
            </tr>
          </thead>
          <tbody>
            <For each={shown()}>
              {(row) => (
                <tr>
                  <For each={props.columns}>
                    {(column) => (
                      <td
                        classList={{
                          numeric: column.numeric ?? false,
                          wide: column.wide ?? false,
                        }}
                      >
                        {column.show(row)}
                      </td>
                    )}
                  </For>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </section>
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
