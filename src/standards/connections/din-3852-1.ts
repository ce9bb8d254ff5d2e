import { metricTaperThreads } from '../metric-taper-threads';
import { type Connection, connection } from './connection';

/** Metric taper stud, form C: it seals in the thread, in a parallel hole made for it. From memory of
 *  DIN 3852-1. */
const source = 'DIN 3852-1:2002 and DIN 158-1 (from memory)';

export const din3852part1: readonly Connection[] = metricTaperThreads.map(({ designation }) =>
  connection({
    family: 'DIN 3852-1',
    tradeName: 'taper stud end, metric',
    size: designation.replace(/x.*/, ''),
    form: 'C',
    end: 'male',
    endTypes: ['stud', 'fixed'],
    thread: designation,
    seat: 'none',
    sealing: 'thread',
    source,
  }),
);
