/** The shape of a dictionary: its keys, with any words in them. */
export type Widen<T> = T extends string
  ? string
  : T extends (...given: infer A) => string
    ? (...given: A) => string
    : { readonly [K in keyof T]: Widen<T[K]> };
