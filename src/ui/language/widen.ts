/** The same keys with any words. */
export type Widen<T> = T extends string
  ? string
  : T extends (...given: infer A) => string
    ? (...given: A) => string
    : T extends readonly string[]
      ? readonly string[]
      : { readonly [K in keyof T]: Widen<T[K]> };
