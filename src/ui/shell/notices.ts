import { createSignal } from 'solid-js';

export interface Notice {
  readonly id: number;
  readonly text: string;
  readonly action: { readonly label: string; readonly run: () => void } | null;
}

const [list, setList] = createSignal<readonly Notice[]>([]);
let last = 0;

export const notices = list;

/** One line at the foot of the screen. It stays for 8 s, or 20 s when it offers an action. */
export function notify(text: string, action: Notice['action'] = null): void {
  last += 1;
  const id = last;
  setList((now) => [...now.filter((n) => n.text !== text), { id, text, action }].slice(-3));
  setTimeout(() => dismiss(id), action ? 20_000 : 8_000);
}

/** Someone goes on with the page: only what offers an action stays. */
export function leaveRoom(): void {
  setList((now) => now.filter((n) => n.action));
}

export function dismiss(id: number): void {
  setList((now) => now.filter((n) => n.id !== id));
}
