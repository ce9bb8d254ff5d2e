import type { RectangleKind } from '../journey/2-reference/rectangles';
import type { Guidance } from '../journey/guidance';
import type { GuidedEnd } from '../journey/guided-tilt';
import type { Identification, MeasureOptions, OnStage } from '../journey/identification';
import type { Answer, Call, CallArguments, CallName, CallResult } from './messages';

/** The worker ended without an answer (out of memory, killed, a fault in the code or in loading
 *  it). The next call starts a new one: the same call may be made again. */
export class WorkerDied extends Error {
  override readonly name = 'WorkerDied';
}

/** The part of Worker that is used, so that tests can stand in for it. */
export interface WorkerLike {
  postMessage(message: Call, transfer: Transferable[]): void;
  terminate(): void;
  addEventListener(type: 'message', listener: (event: { data: Answer }) => void): void;
  addEventListener(type: 'error' | 'messageerror', listener: (event: Event) => void): void;
}

interface Pending {
  readonly onStage: OnStage;
  resolve(value: unknown): void;
  reject(reason: unknown): void;
}

export class MeasuringWorker {
  readonly #spawn: () => WorkerLike;
  #worker: WorkerLike | null;
  readonly #pending = new Map<number, Pending>();
  #lastId = 0;

  constructor(spawn: () => WorkerLike = spawnWorker) {
    this.#spawn = spawn;
    this.#worker = this.#start();
  }

  /** Measures one photo. Rejects with the signal's reason when aborted, and with WorkerDied. */
  identify(
    signal: AbortSignal,
    photo: Blob,
    options: MeasureOptions,
    onStage: OnStage,
  ): Promise<Identification> {
    return this.call('identify', signal, onStage, photo, options);
  }

  /** Judges one frame of the live view. Takes its pixels: the frame is empty afterwards. */
  guide(
    signal: AbortSignal,
    { width, height, data }: ImageData,
    outline: RectangleKind | null = null,
    end: GuidedEnd = 'male',
  ): Promise<Guidance> {
    const rgba = data.buffer as ArrayBuffer;
    return this.#call('guide', signal, () => {}, [{ width, height, rgba }, outline, end], [rgba]);
  }

  call<N extends CallName>(
    name: N,
    signal: AbortSignal,
    onStage: OnStage,
    ...args: CallArguments<N>
  ): Promise<CallResult<N>> {
    return this.#call(name, signal, onStage, args, []);
  }

  /** Aborting a measurement ends the worker and starts a fresh one: the work is synchronous for
   *  most of its time, and a fresh worker compiles its wasm from the browser's cache. What is
   *  short runs to its end unheard. */
  #call<N extends CallName>(
    name: N,
    signal: AbortSignal,
    onStage: OnStage,
    args: CallArguments<N>,
    transfer: Transferable[],
  ): Promise<CallResult<N>> {
    if (signal.aborted) return Promise.reject(signal.reason);
    const id = ++this.#lastId;
    return new Promise<CallResult<N>>((resolve, reject) => {
      const onAbort = () => {
        this.#pending.delete(id);
        reject(signal.reason);
        if (name !== 'identify') return;
        this.#bury(new WorkerDied('ended to cancel another call'));
        this.#worker = this.#start();
      };
      signal.addEventListener('abort', onAbort, { once: true });
      const settle = () => {
        this.#pending.delete(id);
        signal.removeEventListener('abort', onAbort);
      };
      this.#pending.set(id, {
        onStage,
        resolve(value) {
          settle();
          resolve(value as CallResult<N>);
        },
        reject(reason) {
          settle();
          reject(reason);
        },
      });
      this.#worker ??= this.#start();
      this.#worker.postMessage({ id, name, args }, transfer);
    });
  }

  /** Ends the worker for good. */
  dispose(): void {
    this.#bury(new WorkerDied('disposed'));
  }

  #start(): WorkerLike {
    const worker = this.#spawn();
    // Late messages of a worker already replaced concern nobody.
    const ifCurrent =
      <T>(then: (value: T) => void) =>
      (value: T) => {
        if (worker === this.#worker) then(value);
      };
    worker.addEventListener(
      'message',
      ifCurrent(({ data }) => this.#receive(data, worker)),
    );
    const onDeath = ifCurrent((event: Event) => {
      const message = 'message' in event ? String(event.message) : event.type;
      this.#bury(new WorkerDied(message || 'the worker could not be loaded'));
    });
    worker.addEventListener('error', onDeath);
    worker.addEventListener('messageerror', onDeath);
    return worker;
  }

  #receive(message: Answer, worker: WorkerLike): void {
    if (message.kind === 'alive') this.#watch(message.lock, worker);
    else if (message.kind === 'stage')
      this.#pending.get(message.id)?.onStage(message.stage, message.seen);
    else if (message.kind === 'done') this.#pending.get(message.id)?.resolve(message.value);
    // After a trap the wasm heap may be in any state.
    else this.#bury(new WorkerDied(message.message));
  }

  /** The lock comes free when its holder is gone, however it went. */
  #watch(lock: string | null, worker: WorkerLike): void {
    if (lock === null) return;
    void navigator.locks.request(lock, () => {
      if (worker === this.#worker) this.#bury(new WorkerDied('ended by the system'));
    });
  }

  /** The next call starts a new one: starting at once could go on for ever where the worker
   *  cannot even be loaded. */
  #bury(reason: WorkerDied): void {
    this.#worker?.terminate();
    this.#worker = null;
    this.#rejectAll(reason);
  }

  #rejectAll(reason: WorkerDied): void {
    for (const call of [...this.#pending.values()]) call.reject(reason);
  }
}

function spawnWorker(): WorkerLike {
  return new Worker(new URL('./serve.ts', import.meta.url), { type: 'module' });
}
