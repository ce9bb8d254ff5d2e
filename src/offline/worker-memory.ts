import type { ToServiceWorker } from './messages';

/** The service worker's memory outlives a reload of the page and is never written anywhere. It is
 *  gone after a minute, and whenever the browser ends the worker. Holds one value, or null. */
export async function holdInMemory(value: unknown): Promise<void> {
  (await serviceWorker())?.postMessage({ hold: value } satisfies ToServiceWorker);
}

export async function heldInMemory(): Promise<unknown> {
  const worker = await serviceWorker();
  if (!worker) return null;
  const { port1, port2 } = new MessageChannel();
  return new Promise((resolve) => {
    port1.onmessage = ({ data }) => resolve(data);
    worker.postMessage('held' satisfies ToServiceWorker, [port2]);
    // A worker of an older version does not know the question.
    setTimeout(() => resolve(null), 1000);
  }).finally(() => port1.close());
}

async function serviceWorker(): Promise<ServiceWorker | null> {
  try {
    return (await globalThis.navigator?.serviceWorker?.getRegistration())?.active ?? null;
  } catch {
    return null;
  }
}
