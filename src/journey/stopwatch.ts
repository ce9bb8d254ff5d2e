import type { OnStage, SeenReference, StageName } from './identification';

/** Times the stages as they are entered, and says each to `onStage`; entering one after the signal's
 *  abort throws. A stage entered twice adds up. */
export function stopwatch(signal: AbortSignal, onStage: OnStage) {
  const begun = performance.now();
  const timings: Record<string, number> = {};
  let stage: StageName | null = null;
  let since = begun;
  const close = () => {
    const now = performance.now();
    if (stage) timings[stage] = (timings[stage] ?? 0) + now - since;
    since = now;
  };
  return {
    enter(next: StageName, seen?: SeenReference) {
      signal.throwIfAborted();
      close();
      stage = next;
      onStage(next, seen);
    },
    timings() {
      close();
      stage = null;
      return { ...timings, total: performance.now() - begun };
    },
  };
}
