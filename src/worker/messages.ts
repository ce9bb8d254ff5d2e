import type { OnStage, SeenReference, StageName } from '../journey/identification';
import type { Api } from './api';

export type CallName = keyof Api;

/** What a call takes besides the signal and the progress callback. */
export type CallArguments<N extends CallName> =
  Parameters<Api[N]> extends [AbortSignal, OnStage, ...infer Rest] ? Rest : never;

export type CallResult<N extends CallName> = Awaited<ReturnType<Api[N]>>;

/** To the worker. Photos go as blobs: a reference, not a copy. */
export interface Call {
  readonly id: number;
  readonly name: CallName;
  readonly args: readonly unknown[];
}

/** From the worker. */
export type Answer =
  /** Sent once: the name of the lock that the worker holds for as long as it lives. */
  | { readonly kind: 'alive'; readonly lock: string | null }
  | {
      readonly kind: 'stage';
      readonly id: number;
      readonly stage: StageName;
      readonly seen?: SeenReference | undefined;
    }
  | { readonly kind: 'done'; readonly id: number; readonly value: unknown }
  /** The journey refuses what it cannot measure; whatever is thrown instead is a fault. */
  | { readonly kind: 'fault'; readonly id: number; readonly message: string };
