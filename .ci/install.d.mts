export const root: string;
/** Runs a command in the project; its exit code. */
export function run(command: string, args: readonly string[], env?: Record<string, string>): number;
export function installPackages(): Promise<void>;
/** Path of a Chromium, installed when there is none and that is possible; throws otherwise. */
export function findChromium(): string;
