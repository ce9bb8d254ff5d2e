import { gThreads } from './g-threads';
import { metricTaperThreads } from './metric-taper-threads';
import { metricThreads } from './metric-threads';
import { nptThreads } from './npt-threads';
import { rThreads } from './r-threads';
import type { Thread } from './thread';
import { unifiedThreads } from './unified-threads';

export const threads: readonly Thread[] = [
  ...unifiedThreads,
  ...metricThreads,
  ...metricTaperThreads,
  ...gThreads,
  ...rThreads,
  ...nptThreads,
];

const byDesignation = new Map(threads.map((t) => [t.designation, t]));

/** What a left-hand thread carries behind its designation (ISO 965-1, ISO 228-1, ASME B1.1). */
export const leftHandSuffix = ' LH';

/** By designation as the tables write it ('11/16-16 UN'), or null. A left-hand thread has the
 *  dimensions of the right-hand one. */
export function findThread(designation: string): Thread | null {
  return byDesignation.get(designation.replace(leftHandSuffix, '')) ?? null;
}

/** As a table writes it without the series: '11/16-16', and throws on a typing error in a table. */
export function unifiedThread(sizeAndTpi: string): Thread {
  const found = unifiedThreads.find((t) => t.designation.startsWith(`${sizeAndTpi} `));
  if (!found) throw new Error(`No unified thread ${sizeAndTpi} in the tables`);
  return found;
}
