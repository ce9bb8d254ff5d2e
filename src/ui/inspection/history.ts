import { createSignal } from 'solid-js';

/** A value with undo and redo. A drag passes many values: `slide` changes the newest
 *  entry in place, `push` makes a new one. */
export interface History<T> {
  readonly now: () => T;
  readonly push: (value: T) => void;
  readonly slide: (value: T) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly canUndo: () => boolean;
  readonly canRedo: () => boolean;
}

export function createHistory<T>(first: T): History<T> {
  const [state, setState] = createSignal<{ values: readonly T[]; at: number }>({
    values: [first],
    at: 0,
  });
  return {
    now: () => state().values[state().at],
    push: (value) =>
      setState(({ values, at }) => ({ values: [...values.slice(0, at + 1), value], at: at + 1 })),
    slide: (value) =>
      setState(({ values, at }) => ({ values: [...values.slice(0, at), value], at })),
    undo: () => setState(({ values, at }) => ({ values, at: Math.max(0, at - 1) })),
    redo: () => setState(({ values, at }) => ({ values, at: Math.min(values.length - 1, at + 1) })),
    canUndo: () => state().at > 0,
    canRedo: () => state().at < state().values.length - 1,
  };
}
