/** Outcome of a stage that can fail for reasons of the photo or the input.
 *  `reason` is a stable kebab-case code; `advice` says in one sentence what to do. */
export type Result<T, R extends string = string> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly reason: R; readonly advice: string };

export const ok = <T>(value: T): { ok: true; value: T } => ({ ok: true, value });

export const refuse = <R extends string>(
  reason: R,
  advice: string,
): { ok: false; reason: R; advice: string } => ({ ok: false, reason, advice });
