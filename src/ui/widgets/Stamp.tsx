import type { Stamp as Kind } from '../../journey/8-sheet/what-holds';
import { t } from '../language/language';
import './stamp.css';

/** The state of a sheet in one word. Each kind has a frame and a sign of its own, so that it is
 *  told apart without colour. */
export function Stamp(props: { readonly kind: Kind }) {
  return (
    <span class="stamp" data-stamp={props.kind}>
      <span class="visually-hidden">{t().loop.stampTitle}: </span>
      {t().loop.stamp[props.kind]}
    </span>
  );
}
