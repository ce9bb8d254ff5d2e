import { type Connection, connection } from './connection';

/** Pressure-gauge ends: a short spigot at the tip, sealed by a washer at the bottom of the port.
 *  From memory of EN 837-1, whose taper ends are those of ASME B1.20.1. */
const source = 'EN 837-1 (from memory)';

const threads = ['G1/8', 'G1/4', 'G3/8', 'G1/2', 'M10x1', 'M12x1.5', 'M20x1.5'];

export const en837: readonly Connection[] = threads.map((thread) =>
  connection({
    family: 'EN 837-1',
    tradeName: 'pressure-gauge end',
    size: thread.replace(/x.*/, ''),
    end: 'male',
    endTypes: ['stud'],
    thread,
    seat: 'none',
    sealing: 'face-ring',
    source,
  }),
);
