import { createSignal } from 'solid-js';
import { measureNew } from './job';

const [hovering, setHovering] = createSignal(false);
/** A file is being dragged over the page. */
export const dropping = hovering;

/** One way in for whatever is chosen, dropped, pasted or shared into the page. */
export async function takeIn(file: File | Blob): Promise<void> {
  await measureNew(file);
}

/** Listens for as long as the page lives. */
export function acceptDropsAndPastes(): void {
  addEventListener('dragover', (event) => {
    if (!event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    setHovering(true);
  });
  addEventListener('dragleave', (event) => {
    if (event.relatedTarget === null) setHovering(false);
  });
  addEventListener('drop', (event) => {
    setHovering(false);
    const file = event.dataTransfer?.files[0];
    if (!file) return;
    event.preventDefault();
    void takeIn(file);
  });
  addEventListener('paste', (event) => {
    const file = event.clipboardData?.files[0];
    if (!file) return;
    event.preventDefault();
    void takeIn(file);
  });
}
