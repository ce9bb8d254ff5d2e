import { For } from 'solid-js';
import type { Column, Lines } from './column';

/** Two lines a row, for a telephone; a touch shows all that the table has of it. */
export function RowList<Row>(props: {
  readonly caption: string;
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly lines: (row: Row) => Lines;
}) {
  return (
    <ul class="row-list" aria-label={props.caption}>
      <For each={props.rows}>
        {(row) => {
          const lines = () => props.lines(row);
          return (
            <li>
              <details>
                <summary>
                  <strong>{lines().head}</strong>
                  <span class="numeric">{lines().tail}</span>
                  <span class="under small soft">{lines().under}</span>
                </summary>
                <dl class="small">
                  <For each={props.columns}>
                    {(column) => (
                      <div>
                        <dt class="soft">{column.name}</dt>
                        <dd>{column.show(row)}</dd>
                      </div>
                    )}
                  </For>
                </dl>
              </details>
            </li>
          );
        }}
      </For>
    </ul>
  );
}
