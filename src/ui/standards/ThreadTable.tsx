import { createMemo } from 'solid-js';
import { aliasesOf } from '../../standards/aliases';
import type { Connection } from '../../standards/connections/connection';
import type { Thread } from '../../standards/thread';
import { number } from '../language/format';
import { t } from '../language/language';
import { tradeName } from '../language/trade-names';
import type { Column } from './column';
import { SortedTable } from './SortedTable';

export function lengthText(mm: number, unit: 'mm' | 'in'): string {
  return unit === 'mm' ? number(mm, 3) : number(mm / 25.4, 4);
}

export function ThreadTable(props: {
  readonly rows: readonly Thread[];
  /** Connections on a thread, by its designation. */
  readonly users: ReadonlyMap<string, readonly Connection[]>;
  readonly search: string;
  readonly unit: 'mm' | 'in';
}) {
  const usersOf = (row: Thread) => props.users.get(row.designation) ?? [];
  const usedBy = (row: Thread) =>
    [...new Set(usersOf(row).map((one) => tradeName(one.tradeName)))].join(' · ');
  /** Those that some connection uses come first. */
  const rows = createMemo(() => {
    const used = (row: Thread) => props.users.has(row.designation);
    return [...props.rows.filter(used), ...props.rows.filter((row) => !used(row))];
  });
  const columns = (): Column<Thread>[] => {
    const name = t().standards.columns;
    const length = (mm: number) => lengthText(mm, props.unit);
    return [
      { name: name.designation, show: (row) => row.designation },
      {
        name: name.system,
        show: (row) => (row.series === row.system ? row.system : `${row.system} ${row.series}`),
      },
      {
        name: `${name.major}, ${props.unit}`,
        show: (row) => length(row.basicMajorMm),
        by: (row) => row.basicMajorMm,
        numeric: true,
      },
      {
        name: `${name.pitch}, ${props.unit}`,
        show: (row) => length(row.pitchMm),
        by: (row) => row.pitchMm,
        numeric: true,
      },
      {
        name: name.tpi,
        show: (row) => (row.tpi === null ? '–' : number(row.tpi, row.tpi % 1 ? 1 : 0)),
        by: (row) => row.tpi ?? 0,
        numeric: true,
      },
      {
        name: `${name.minor}, ${props.unit}`,
        show: (row) => length(row.minorInternalMm),
        by: (row) => row.minorInternalMm,
        numeric: true,
      },
      { name: name.flank, show: (row) => `${row.flankAngleDeg}°`, numeric: true },
      { name: name.taper, show: (row) => (row.taper ? '1:16' : '–') },
      {
        name: t().standards.usedBy,
        show: (row) => usedBy(row) || '–',
        also: (row) => usersOf(row).flatMap(aliasesOf).join(' '),
        note: true,
      },
      { name: name.source, show: (row) => row.source, note: true },
    ];
  };
  return (
    <SortedTable
      caption={t().standards.threads}
      rows={rows()}
      columns={columns()}
      search={props.search}
      asGiven={t().standards.hydraulicFirst}
      lines={(row) => ({
        head: row.designation,
        tail: `⌀ ${lengthText(row.basicMajorMm, props.unit)} ${props.unit}`,
        under: [
          row.tpi === null
            ? `${lengthText(row.pitchMm, props.unit)} ${props.unit}`
            : `${number(row.tpi, row.tpi % 1 ? 1 : 0)} ${t().reading.units.tpi}`,
          usedBy(row),
        ]
          .filter((part) => part !== '')
          .join(' · '),
      })}
    />
  );
}
