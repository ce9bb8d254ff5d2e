/** T with every field and array read-only, however deep: what a zod schema infers, as it is handed on. */
export type ReadOnly<T> = T extends object ? { readonly [K in keyof T]: ReadOnly<T[K]> } : T;
