import { type Connection, connection } from './connection';

/** Test points of M16x2: a male end with a valve and an O-ring inside it, under a cap; the female end
 *  is the nut of a test hose. From memory of ISO 15171-2. */
const source = 'ISO 15171-2 (from memory)';

export const iso15171: readonly Connection[] = (['male', 'female'] as const).map((end) =>
  connection({
    family: 'ISO 15171',
    tradeName: 'test point',
    size: 'M16',
    end,
    endTypes: [end === 'male' ? 'fixed' : 'swivel-nut'],
    thread: 'M16x2',
    seat: 'none',
    sealing: 'o-ring',
    source,
  }),
);
