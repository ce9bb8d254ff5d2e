import type { TestSpecification } from 'vitest/node';

/** Files that take ten seconds and more, or one of the two workers waits for the other in the end.
 *  Vitest knows no durations in a fresh clone, and goes by the files' sizes. */
const longest = [
  'journey/ruler-renders',
  'journey/ruler-drawings',
  'accuracy/edges-and-markers',
  'accuracy/matching/matching',
  'standards/walk-rows',
  'journey/2-reference/no-reference',
  'vision/heap',
  'journey/ruler-refused',
  'journey/2-reference/find-reference',
  'journey/1-photo/heif-tiles',
  'journey/ruler-poseless',
  'accuracy/photos',
  'accuracy/synthetic',
  'journey/1-photo/bad-files',
  'journey/odd-photos',
  'journey/refusals',
  'journey/real-photos',
  'journey/hand-and-rings',
  'journey/flash',
  'cli/measure',
  'journey/4-limbs/by-hand',
  'journey/end-drawn',
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
