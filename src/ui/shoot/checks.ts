import type { Guidance } from '../../journey/guidance';

export type CheckKey = 'card' | 'tilt' | 'distance' | 'light' | 'still' | 'contrast' | 'inside';

export interface Check {
  readonly key: CheckKey;
  readonly state: 'good' | 'bad' | 'unknown';
}

// As the guidance itself judges (journey/guidance.ts); here only to name what is missing.
const leastMarkers = 12;
const mostTiltDeg = 30;

/** In the order in which a person would put them right. */
export function checksOf(seen: Guidance | null): readonly Check[] {
  const judge = (key: CheckKey, good: boolean | null): Check => ({
    key,
    state: good === null ? 'unknown' : good ? 'good' : 'bad',
  });
  const card = seen && seen.markersSeen >= leastMarkers;
  const onCard = <T>(value: T): T | null => (card ? value : null);
  return [
    judge('light', seen && !seen.tooDark),
    judge('card', card),
    judge('tilt', onCard(seen?.tiltDeg == null ? null : seen.tiltDeg <= mostTiltDeg)),
    judge('distance', onCard(!seen?.tooNear)),
    judge('inside', onCard(!seen?.fittingOutside)),
    judge('contrast', onCard(!seen?.lowContrast)),
    judge('still', seen && !seen.moving),
  ];
}

export function firstHint(seen: Guidance | null): CheckKey | null {
  return checksOf(seen).find((check) => check.state === 'bad')?.key ?? null;
}
