import type { Connection } from '../../standards/connections/connection';
import type { Thread } from '../../standards/thread';
import type { WeighedThread } from '../6-candidates/weigh';

/** One way things may be: a thread with one use. */
export interface Scenario {
  /** Null with `thread`: none of the listed threads. */
  readonly weighed: WeighedThread | null;
  readonly thread: Thread | null;
  readonly connection: Connection | null;
  readonly probability: number;
  /** Scenarios that mean the same answer share a label. */
  readonly label: number;
}
