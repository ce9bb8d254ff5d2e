export function compilerVersion(): string | null;
export function sourceSha256(): string;
export function compiled(): Buffer;
