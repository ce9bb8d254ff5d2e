import { aliasesOf } from '../../standards/aliases';
import { type Connection, hasSeat } from '../../standards/connections/connection';
import { seatText } from '../identification/reading-text';
import { t } from '../language/language';
import { tradeName } from '../language/trade-names';
import type { Column } from './column';
import { familyCell } from './family-cell';
import { SortedTable } from './SortedTable';
import { lengthText } from './ThreadTable';

export function ConnectionTable(props: {
  readonly rows: readonly Connection[];
  readonly search: string;
  readonly unit: 'mm' | 'in';
}) {
  const columns = (): Column<Connection>[] => {
    const name = t().standards.columns;
    return [
      {
        name: name.family,
        show: familyCell,
        wraps: true,
      },
      { name: name.size, show: (row) => row.size },
      {
        name: name.end,
        show: (row) =>
          [
            t().standards.ends[row.end],
            row.endTypes.map((type) => t().trade.endTypes[type]).join(` ${t().trade.or} `),
            row.form ?? '',
          ]
            .filter((part) => part !== '')
            .join(', '),
        wraps: true,
      },
      {
        name: `${name.tube}, ${props.unit}`,
        show: (row) => (row.tubeOdMm === null ? '–' : lengthText(row.tubeOdMm, props.unit)),
        by: (row) => row.tubeOdMm ?? 0,
        numeric: true,
      },
      { name: name.thread, show: (row) => row.thread ?? '–' },
      {
        name: name.seat,
        show: (row) => (hasSeat(row) ? seatText(row.seat, row.end) : '–'),
        wraps: true,
      },
      { name: name.oRing, show: (row) => row.oRing?.designation ?? '–' },
      { name: name.source, show: (row) => row.source, note: true },
    ];
  };
  return (
    <SortedTable
      caption={t().standards.connections}
      rows={props.rows}
      columns={columns()}
      search={props.search}
      lines={(row) => ({
        head: `${tradeName(row.tradeName)} ${row.size}`,
        tail: row.thread ?? '–',
        under: [row.family, t().standards.ends[row.end], ...aliasesOf(row)].join(' · '),
      })}
    />
  );
}
