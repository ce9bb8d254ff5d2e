import { resolve } from 'node:path';
import { parseReading } from '../journey/6-candidates/parse-reading';
import type { Reading } from '../journey/6-candidates/reading';

/** What the person typed cannot be meant: exit code 2, and a word on how to type it. */
export class UsageError extends Error {}

/** Runs a command: its number is the exit code, a usage error is 2, anything else thrown is 1. */
export async function runCommand(usage: string, main: () => Promise<number>): Promise<void> {
  process.stdout.on('error', leaveIfReaderLeft);
  try {
    process.exitCode = await main();
  } catch (error) {
    if (!(error instanceof UsageError) && !isParseArgsError(error)) throw error;
    console.error(`${error.message}\n\nUsage: ${usage}`);
    process.exitCode = 2;
  }
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
