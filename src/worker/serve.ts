import type { OnStage } from '../journey/identification';
import { api } from './api';
import type { Answer, Call } from './messages';

declare const self: DedicatedWorkerGlobalScope;

const answer = (message: Answer) => self.postMessage(message);

// A worker that cancels nothing by itself: the page ends it instead, since the work is
// synchronous for most of its time and would not hear of it.
const never = new AbortController().signal;

self.addEventListener('message', async ({ data: { id, name, args } }: MessageEvent<Call>) => {
  const onStage: OnStage = (stage, seen) => answer({ kind: 'stage', id, stage, seen });
  try {
    const call = api[name] as (...all: unknown[]) => Promise<unknown>;
    answer({ kind: 'done', id, value: await call(never, onStage, ...args) });
  } catch (error) {
    answer({ kind: 'fault', id, message: error instanceof Error ? error.message : String(error) });
  }
});

announceLife();

/** A worker killed by the system sends no event, but its locks come free: the page waits for one. */
function announceLife(): void {
  if (!('locks' in navigator)) {
    answer({ kind: 'alive', lock: null });
    return;
  }
  const lock = `crestwise-worker-${crypto.randomUUID()}`;
  void navigator.locks.request(lock, () => {
    answer({ kind: 'alive', lock });
    return new Promise(() => {});
  });
}
