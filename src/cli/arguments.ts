import { realpathSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseReading } from '../journey/6-candidates/parse-reading';
import type { Reading } from '../journey/6-candidates/reading';

/** What the person typed cannot be meant: exit code 2, and a word on how to type it. */
export class UsageError extends Error {}

type Say = (text: string) => void;

export interface Command {
  readonly usage: string;
  /** Its number is the exit code. */
  run(args: string[], print: Say): Promise<number>;
}

/** The command's exit code; that of a usage error is 2. */
export async function execute(
  command: Command,
  args: readonly string[],
  print: Say,
  complain: Say,
): Promise<number> {
  try {
    return await command.run([...args], print);
  } catch (error) {
    if (!(error instanceof UsageError) && !isParseArgsError(error)) throw error;
    complain(`${error.message}\n\nUsage: ${command.usage}`);
    return 2;
  }
}

/** Runs a command if its file (`import.meta.url`) is what Node was started with, and not where a test imports it. */
export async function runIfStarted(url: string, command: Command): Promise<void> {
  const [, started, ...args] = process.argv;
  if (started === undefined || realpathSync(started) !== fileURLToPath(url)) return;
  process.stdout.on('error', leaveIfReaderLeft);
  process.exitCode = await execute(command, args, console.log, console.error);
}

/** As in `… | head`: nobody reads on, and that is no fault. */
function leaveIfReaderLeft(error: NodeJS.ErrnoException): void {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
}

/** node:util's parseArgs throws these for unknown options and missing values. */
function isParseArgsError(error: unknown): error is Error {
  return (
    error instanceof Error && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS')
  );
}

export function readingsFrom(texts: readonly string[]): Reading[] {
  return texts.map((text) => {
    const reading = parseReading(text);
    if (!reading.ok) throw new UsageError(`--reading ${text}: ${reading.advice}`);
    return reading.value;
  });
}

/** npm runs scripts in the project's folder; the person typed the path where they were. */
export function pathFrom(text: string): string {
  return resolve(process.env.INIT_CWD ?? process.cwd(), text);
}
