import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { execute } from '../../src/cli/arguments';
import { identify } from '../../src/cli/identify';
import { measure } from '../../src/cli/measure';
import { standards } from '../../src/cli/standards';

const root = fileURLToPath(new URL('../..', import.meta.url));
const commands = { identify, measure, standards };

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command within this process: what it prints, and its exit code. */
export async function runCommand(name: keyof typeof commands, ...args: string[]): Promise<Ran> {
  const out: string[] = [];
  const err: string[] = [];
  const code = await execute(
    commands[name],
    args,
    (line) => out.push(`${line}\n`),
    (line) => err.push(`${line}\n`),
  );
  return { code, out: out.join(''), err: err.join('') };
}

/** Runs a command as outside tests do: `npm run --silent NAME -- ARGS…`. */
export function spawnCommand(name: keyof typeof commands, ...args: string[]): Promise<Ran> {
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
