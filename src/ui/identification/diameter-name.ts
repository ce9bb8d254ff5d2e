import type { ThreadMeasurement } from '../../journey/5-measurement/thread-measurement';
import { t } from '../language/language';

/** Of the diameter over the crests: a female end has them inside. */
export const diameterName = ({ end }: Pick<ThreadMeasurement, 'end'>): string =>
  end === 'female' ? t().inspection.minor : t().inspection.major;
