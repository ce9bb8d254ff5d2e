import { fileURLToPath } from 'node:url';

/** Path-traced renders, not photographs; nobody tuned for speed on them. */
export const benchPhotos = [
  { label: '2 MP', name: 'd05' },
  { label: '3 MP', name: 'd11' },
  { label: '12 MP', name: 'd09' },
].map((photo) => ({
  ...photo,
  path: fileURLToPath(new URL(`../../fixtures/photos/${photo.name}.jpg`, import.meta.url)),
}));

/** Rounds per figure, after one to warm up. */
export const rounds = 7;

export interface Timed {
  readonly totalMs: number;
  readonly stagesMs: Readonly<Record<string, number>>;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? Number.NaN;
}

/** Median of each stage over the rounds, in the order of the journey. */
export function medianStages(results: readonly Timed[]): Record<string, number> {
  const names = Object.keys(results[0]?.stagesMs ?? {});
  return Object.fromEntries(
    names.map((name) => [name, median(results.map(({ stagesMs }) => stagesMs[name]))]),
  );
}
