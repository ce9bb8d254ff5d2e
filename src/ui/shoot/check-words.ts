import type { Guidance } from '../../journey/guidance';
import { tiltFault } from '../../journey/guided-tilt';
import { endChoice } from '../end/end-choice';
import { t } from '../language/language';
import { referenceChoice } from '../reference/reference-choice';
import type { CheckKey } from './checks';

/** What to do about a check that fails. */
export function hintWords(key: CheckKey, guidance: Guidance | null): string {
  const choice = referenceChoice();
  if (key === 'card' && choice !== 'card') return t().reference.camera.bring[choice];
  if (key === 'tilt' && endChoice() === 'female')
    return tiltFault(guidance?.tiltDeg ?? 0, 'female') === 'too-level'
      ? t().end.shoot.tooLevel
      : t().end.shoot.tooSlanted;
  return key === 'contrast' && guidance?.field === 'dark'
    ? t().shoot.contrastOnDark
    : t().shoot.hints[key];
}

export function checkWords(key: CheckKey): string {
  if (key === 'card' && referenceChoice() !== 'card') return t().reference.camera.inView;
  return key === 'tilt' && endChoice() === 'female' ? t().end.shoot.check : t().shoot.checks[key];
}
