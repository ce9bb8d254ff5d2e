import { type Connection, connection } from './connection';

/** Metric brake-line flares: the male end is a nut on the flared tube, the female end a port whose
 *  bottom carries the seat. From memory of ISO 4038 and SAE J533 (metric sizes). */
const source = 'ISO 4038 / SAE J533 (from memory)';

/** tube OD, thread */
const sizes: readonly (readonly [number, string])[] = [
  [4.75, 'M10x1'],
  [6, 'M12x1'],
];

export const brakeFlare: readonly Connection[] = sizes.flatMap(([tube, thread]) =>
  (['male', 'female'] as const).map((end) =>
    connection({
      family: 'ISO 4038',
      tradeName: 'brake-line flare, metric',
      size: thread.replace(/x.*/, ''),
      end,
      endTypes: [end === 'male' ? 'tube-nut' : 'fixed'],
      tubeOdMm: tube,
      metricTubesMm: [tube],
      thread,
      seat: 'cone-inverted',
      sealing: 'metal-cone',
      source,
    }),
  ),
);
