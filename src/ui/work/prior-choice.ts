import { createSignal } from 'solid-js';
import type { PriorOptions } from '../../journey/6-candidates/priors';

export type Region = NonNullable<PriorOptions['region']>;
export type TradeKind = NonNullable<PriorOptions['trade']>;

/** What the part is off; of this part and this visit, so that it never tips the next one unseen. */
const [choice, setChoice] = createSignal<Required<PriorOptions>>({
  region: 'anywhere',
  trade: 'any',
});

export { choice as priorChoice, setChoice as setPriorChoice };
