import type { JSX } from 'solid-js';
import { t } from '../language/language';
import './next-step.css';

/** The bar at the bottom of the screen: what to do next, always in reach. */
export function NextStep(props: { readonly children: JSX.Element }) {
  return (
    <nav class="next-step" aria-label={t().loop.next}>
      {props.children}
    </nav>
  );
}
