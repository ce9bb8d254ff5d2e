import { createSignal } from 'solid-js';

const key = 'crestwise.counter-name';

function read(): string {
  try {
    return localStorage.getItem(key) ?? '';
  } catch {
    return '';
  }
}

const [name, setName] = createSignal(read());

/** Whoever judges on this device, as they call themselves. */
export const counterName = name;

export function setCounterName(next: string): void {
  setName(next);
  try {
    localStorage.setItem(key, next);
  } catch {
    // lasts until reload then
  }
}
