import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command as outside tests do: `npm run --silent NAME -- ARGS…`. */
export function runCommand(name: string, ...args: string[]): Promise<Ran> {
  return new Promise((resolve) => {
    const options = { cwd: root, maxBuffer: 64 * 2 ** 20 };
    execFile('npm', ['run', '--silent', name, '--', ...args], options, (error, out, err) => {
      resolve({ code: error ? Number(error.code) : 0, out, err });
    });
  });
}

export function jsonLines(out: string): Record<string, never>[] {
  return out
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line));
}
