import type { Connection } from '../../standards/connections/connection';
import { t } from '../language/language';
import { tradeName } from '../language/trade-names';
import { type Column, SortedTable } from './SortedTable';
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
        show: (row) => `${row.family} · ${tradeName(row.tradeName)}`,
      },
      { name: name.size, show: (row) => row.size },
      { name: name.end, show: (row) => t().standards.ends[row.end] },
      {
        name: `${name.tube}, ${props.unit}`,
        show: (row) => (row.tubeOdMm === null ? '–' : lengthText(row.tubeOdMm, props.unit)),
        by: (row) => row.tubeOdMm ?? 0,
        numeric: true,
      },
      { name: name.thread, show: (row) => row.thread ?? '–' },
      {
        name: name.seat,
        show: (row) => (row.sealing === 'thread' ? '–' : t().reading.seats[row.seat]),
      },
      { name: name.oRing, show: (row) => row.oRing?.designation ?? '–' },
      { name: name.source, show: (row) => row.source, wide: true },
    ];
  };
  return (
    <SortedTable
      caption={t().standards.connections}
      rows={props.rows}
      columns={columns()}
      search={props.search}
    />
  );
}
