import type { ToServiceWorker } from './messages';

/** Starts keeping the page for use without a network. `onUpdate` is called when a newer version
 *  lies ready; what it is given puts that version into use and reloads every open tab, so call it
 *  only when the user agrees. Does nothing in development and where service workers are missing. */
export function keepOffline(onUpdate: (takeOver: () => void) => void): void {
  const workers = globalThis.navigator?.serviceWorker;
  if (!import.meta.env.PROD || !workers) return;
  let controlled = workers.controller !== null;
  workers.addEventListener('controllerchange', () => {
    // The first controller is of the page's own version.
    if (controlled) location.reload();
    controlled = true;
  });
  const start = async () => {
    try {
      const script = new URL('service-worker.js', document.baseURI);
      const registration = await workers.register(script, { updateViaCache: 'none' });
      const offer = (waiting: ServiceWorker) =>
        onUpdate(() => waiting.postMessage('take-over' satisfies ToServiceWorker));
      if (registration.waiting && controlled) offer(registration.waiting);
      registration.addEventListener('updatefound', () => {
        const arriving = registration.installing;
        arriving?.addEventListener('statechange', () => {
          if (arriving.state === 'installed' && controlled) offer(arriving);
        });
      });
    } catch (cause) {
      // A private window or a plain-http host: the page works, but only with a network.
      console.warn('not kept for offline use:', cause);
    }
  };
  if (document.readyState === 'complete') void start();
  else addEventListener('load', () => void start(), { once: true });
}
