import { t } from '../language/language';

export function HandOver() {
  return <section class="hand-over">{t().sheet.share}</section>;
}
