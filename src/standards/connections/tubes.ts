import type { Connection } from './connection';

/** Tubes that an end takes, mm OD. A stud or port may be sized by a tube, but takes none. */
export function tubesOf(connection: Connection | null): readonly number[] {
  if (connection === null || connection.endType === 'stud' || connection.endType === 'port') {
    return [];
  }
  const { tubeOdMm, metricTubesMm } = connection;
  return [tubeOdMm, ...metricTubesMm].filter(
    (mm, i, all): mm is number => mm !== null && all.indexOf(mm) === i,
  );
}
