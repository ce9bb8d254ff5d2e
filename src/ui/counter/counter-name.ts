import { createSignal } from 'solid-js';
import { keepText, keptText } from '../widgets/kept-text';

const key = 'crestwise.counter-name';

const [name, setName] = createSignal(keptText(key) ?? '');

/** Whoever judges on this device, as they call themselves. */
export const counterName = name;

export function setCounterName(next: string): void {
  setName(next);
  keepText(key, next);
}
