import { classesOf } from '../standards/limits/class-limits';
import { namedThread } from '../standards/limits/named-thread';
import type { Thread } from '../standards/thread';
import { UsageError } from './arguments';

/** The thread that a part is said to have, and the class it was made to; null for the usual one. */
export interface Expected {
  readonly thread: Thread;
  readonly className: string | null;
}

export function expectedThread(given: {
  readonly expect?: string | undefined;
  readonly class?: string | undefined;
}): Expected | null {
  if (given.expect === undefined) {
    if (given.class !== undefined) throw new UsageError('--class goes with --expect THREAD.');
    return null;
  }
  const thread = namedThread(given.expect);
  if (!thread)
    throw new UsageError(
      `--expect ${given.expect}: no such thread in the tables; write it like "3/4-16 UNF", M22x1.5 or G1/2.`,
    );
  const classes = classesOf(thread);
  const className = given.class ?? null;
  if (className !== null && !classes.some((one) => one === className))
    throw new UsageError(
      classes.length > 0
        ? `--class ${className}: ${thread.designation} is judged by class ${classes.join(' or ')}.`
        : `--class ${className}: ${thread.designation} has no class to judge its crests by.`,
    );
  return { thread, className };
}
