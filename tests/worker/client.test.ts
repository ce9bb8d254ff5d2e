import { expect, test } from 'vitest';
import { defaultOptions, type StageName } from '../../src/journey/identification';
import { MeasuringWorker, WorkerDied, type WorkerLike } from '../../src/worker/client';
import type { Answer, Call } from '../../src/worker/messages';

/** Stands in for a worker: the test says what it answers and when it dies. */
class ScriptedWorker implements WorkerLike {
  readonly received: Call[] = [];
  terminated = false;
  readonly #listeners = new Map<string, (event: never) => void>();

  postMessage(message: Call): void {
    this.received.push(message);
  }
  terminate(): void {
    this.terminated = true;
  }
  addEventListener(type: string, listener: (event: never) => void): void {
    this.#listeners.set(type, listener);
  }
  answer(data: Answer): void {
    this.#listeners.get('message')?.({ data } as never);
  }
  fail(message: string): void {
    this.#listeners.get('error')?.({ type: 'error', message } as never);
  }
}

function setUp() {
  const workers: ScriptedWorker[] = [];
  const client = new MeasuringWorker(() => {
    const worker = new ScriptedWorker();
    workers.push(worker);
    return worker;
  });
  return { client, workers };
}

const photo = new Blob([new Uint8Array(3)]);
const refusal = {
  outcome: 'refused',
  refusal: { reason: 'no-card', advice: 'Lay the card under the fitting.' },
  overlay: null,
  field: null,
  timingsMs: {},
} as const;

test('a call passes on the stages and resolves with the answer', async () => {
  const { client, workers } = setUp();
  const stages: StageName[] = [];
  const answer = client.identify(new AbortController().signal, photo, defaultOptions, (stage) =>
    stages.push(stage),
  );
  const [{ id, name, args }] = workers[0].received;
  expect(name).toBe('identify');
  expect(args).toEqual([photo, defaultOptions]);
  workers[0].answer({ kind: 'stage', id, stage: 'photo' });
  workers[0].answer({ kind: 'stage', id, stage: 'card-pose' });
  workers[0].answer({ kind: 'done', id, value: refusal });
  expect(await answer).toEqual(refusal);
  expect(stages).toEqual(['photo', 'card-pose']);
});

test('an abort rejects with its reason, ends the worker, and a fresh one is ready', async () => {
  const { client, workers } = setUp();
  const abort = new AbortController();
  const answer = client.identify(abort.signal, photo, defaultOptions, () => {});
  abort.abort();
  await expect(answer).rejects.toMatchObject({ name: 'AbortError' });
  expect(workers[0].terminated).toBe(true);
  expect(workers).toHaveLength(2);

  const next = client.identify(new AbortController().signal, photo, defaultOptions, () => {});
  const [{ id }] = workers[1].received;
  workers[0].answer({ kind: 'done', id, value: 'late, from a worker already replaced' });
  workers[1].answer({ kind: 'done', id, value: refusal });
  expect(await next).toEqual(refusal);
});

test('a signal aborted beforehand costs nothing', async () => {
  const { client, workers } = setUp();
  const signal = AbortSignal.abort();
  await expect(client.identify(signal, photo, defaultOptions, () => {})).rejects.toMatchObject({
    name: 'AbortError',
  });
  expect(workers[0].received).toHaveLength(0);
  expect(workers[0].terminated).toBe(false);
});

test('a worker that crashes fails its calls as WorkerDied, and the next call gets a new one', async () => {
  const { client, workers } = setUp();
  const signal = new AbortController().signal;
  const answer = client.identify(signal, photo, defaultOptions, () => {});
  workers[0].fail('out of memory');
  await expect(answer).rejects.toThrow(WorkerDied);
  await expect(answer).rejects.toThrow('out of memory');
  expect(workers).toHaveLength(1);

  const next = client.identify(signal, photo, defaultOptions, () => {});
  expect(workers).toHaveLength(2);
  workers[1].answer({ kind: 'done', id: workers[1].received[0].id, value: refusal });
  expect(await next).toEqual(refusal);
});

test('a worker that cannot be loaded is not started over and over', () => {
  const { workers } = setUp();
  workers[0].fail('404');
  expect(workers).toHaveLength(1);
});

test('a fault inside the worker replaces it, since its heap may be in any state', async () => {
  const { client, workers } = setUp();
  const answer = client.identify(new AbortController().signal, photo, defaultOptions, () => {});
  workers[0].answer({ kind: 'fault', id: workers[0].received[0].id, message: 'unreachable' });
  await expect(answer).rejects.toThrow('unreachable');
  expect(workers[0].terminated).toBe(true);
});
