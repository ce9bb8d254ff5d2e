/** What a page says to the service worker; `held` is answered over the port that comes with it. */
export type ToServiceWorker = 'take-over' | 'held' | { readonly hold: unknown };
