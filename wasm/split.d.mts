export const wasmFile: URL;
export const glueFile: URL;
/** Throws when the installed package is not the pinned one. */
export function ensureOpenCv(): void;
