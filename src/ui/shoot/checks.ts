import type { Guidance } from '../../journey/guidance';
import { type GuidedEnd, tiltFault } from '../../journey/guided-tilt';
import type { Choice } from '../reference/reference-choice';

export type CheckKey = 'card' | 'tilt' | 'distance' | 'light' | 'still' | 'contrast' | 'inside';

export interface Check {
  readonly key: CheckKey;
  readonly state: 'good' | 'bad' | 'unknown';
}

/** In the order in which a person would put them right. Beside a rule only light and stillness are seen; beside
 *  a bank card and on a sheet, not how the fitting lies. */
export function checksOf(seen: Guidance | null, choice: Choice, end: GuidedEnd): readonly Check[] {
  const judge = (key: CheckKey, good: boolean | null): Check => ({
    key,
    state: good === null ? 'unknown' : good ? 'good' : 'bad',
  });
  const card = seen?.referenceSeen ?? null;
  const onCard = <T>(value: T): T | null => (card ? value : null);
  const light = judge('light', seen && !seen.tooDark);
  if (choice === 'rule') return [light];
  const all = [
    light,
    judge('card', card),
    judge('tilt', onCard(seen?.tiltDeg == null ? null : tiltFault(seen.tiltDeg, end) === null)),
    judge('distance', onCard(!seen?.tooNear)),
    judge('inside', onCard(!seen?.fittingOutside)),
    judge('contrast', onCard(!seen?.lowContrast)),
    judge('still', seen && !seen.moving),
  ];
  return choice === 'card' ? all : all.filter(({ key }) => key !== 'inside' && key !== 'contrast');
}

export function firstHint(seen: Guidance | null, choice: Choice, end: GuidedEnd): CheckKey | null {
  return checksOf(seen, choice, end).find((check) => check.state === 'bad')?.key ?? null;
}
