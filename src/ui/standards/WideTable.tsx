import { For } from 'solid-js';
import { t } from '../language/language';
import type { Column } from './column';

/** Every column side by side, where there is room for them. */
export function WideTable<Row>(props: {
  readonly caption: string;
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly direction: (column: number) => 'none' | 'ascending' | 'descending';
  readonly onSort: (column: number) => void;
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolled region must be reachable by keyboard
    <section class="table-scroll" tabIndex={0} aria-label={props.caption}>
      <table class="standards-table">
        <caption class="visually-hidden">{props.caption}</caption>
        <thead>
          <tr>
            <For each={props.columns}>
              {(column, index) => (
                <th
                  scope="col"
                  aria-sort={props.direction(index())}
                  classList={{ numeric: column.numeric ?? false }}
                >
                  <button
                    type="button"
                    aria-label={t().standards.sortBy(column.name)}
                    onClick={() => props.onSort(index())}
                  >
                    {column.name}
                    <span aria-hidden="true" class="sort-mark">
                      {{ none: '', ascending: ' ↑', descending: ' ↓' }[props.direction(index())]}
                    </span>
                  </button>
                </th>
              )}
            </For>
          </tr>
        </thead>
        <tbody>
          <For each={props.rows}>
            {(row) => (
              <tr>
                <For each={props.columns}>
                  {(column) => (
                    <td
                      classList={{
                        numeric: column.numeric ?? false,
                        wraps: column.wraps ?? false,
                        note: column.note ?? false,
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
  );
}
