import type { TestSpecification } from 'vitest/node';

/** Files that take ten seconds and more, or one of the two workers waits for the other in the end.
 *  Vitest knows no durations in a fresh clone, and goes by the files' sizes. */
const longest = [
  'journey/real-photos',
  'journey/ruler-renders',
  'accuracy/photos',
  'journey/ruler-drawings',
  'journey/2-reference/no-reference',
  'accuracy/edges-and-markers',
  'accuracy/matching/matching',
  'accuracy/synthetic',
  'accuracy/uncertainty',
  'cli/measure',
  'cli/measure-expect',
  'accuracy/period',
  'cli/identify',
  'accuracy/edge-response',
];

/** Order of test files, for vite.config.ts. */
export class LongestFirst {
  sort(files: TestSpecification[]): TestSpecification[] {
    const place = ({ moduleId }: TestSpecification) => {
      const at = longest.findIndex((name) => moduleId.endsWith(`/${name}.test.ts`));
      return at < 0 ? longest.length : at;
    };
    return [...files].sort((a, b) => place(a) - place(b));
  }

  shard(files: TestSpecification[]): TestSpecification[] {
    return files;
  }
}
