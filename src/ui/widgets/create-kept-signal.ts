import { createSignal, type Signal } from 'solid-js';

/** A signal that survives a reload of this tab: phones reload a page that was in the background.
 *  Only for text a person is typing; gone with the tab. */
export function createKeptSignal(key: string, first: string): Signal<string> {
  const name = `crestwise.form.${key}`;
  const [value, setValue] = createSignal(read(name) ?? first);
  const keep = ((next: string) => {
    try {
      sessionStorage.setItem(name, next);
    } catch {
      // The form then lives as long as the page.
    }
    return setValue(next);
  }) as Signal<string>[1];
  return [value, keep];
}

function read(name: string): string | null {
  try {
    return sessionStorage.getItem(name);
  } catch {
    return null;
  }
}
