import type { Sheet } from '../../journey/8-sheet/sheet-schema';
import { dateTime } from '../language/format';
import { t } from '../language/language';
import './sheet.css';

/** The first fields of any title block of a sheet: which one, and when. */
export function SheetFacts(props: { readonly sheet: Sheet }) {
  return (
    <>
      <div>
        <dt class="caps">{t().sheet.number}</dt>
        <dd>{props.sheet.id.slice(0, 8)}</dd>
      </div>
      <div>
        <dt class="caps">{t().sheet.date}</dt>
        <dd>{dateTime(props.sheet.createdAt)}</dd>
      </div>
    </>
  );
}
