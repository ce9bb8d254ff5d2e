import type { en } from './en';

export type Widen<T> = T extends string
  ? string
  : T extends (...given: infer A) => string
    ? (...given: A) => string
    : { readonly [K in keyof T]: Widen<T[K]> };

/** Every language has exactly the English keys: a missing one fails the type check. */
export type Dictionary = Widen<typeof en>;
