import type { Build } from './build-list';
import { inboxName, sharedFilePath, sharePath } from './inbox';
import type { ToServiceWorker } from './messages';

/** Keeps one whole version of the page on the device and answers from it, so that everything works
 *  without a network after one visit. Versions never mix: a new one is fetched completely and
 *  checked byte by byte before it may take over, and takes over all tabs at once. */

/** Written before this script by precache-plugin.ts. */
declare const crestwiseBuild: Build;

const worker = self as unknown as ServiceWorkerGlobalScope;
/** One origin may serve several copies from sub-paths; each has caches of its own. */
const cachePrefix = `crestwise ${worker.registration.scope} `;
const cacheName = cachePrefix + crestwiseBuild.version;
const parallel = 4;

worker.addEventListener('install', (event) => {
  event.waitUntil(fetchAll());
});

worker.addEventListener('activate', (event) => {
  event.waitUntil(
    (async () => {
      const older = (await caches.keys()).filter(
        (name) => name.startsWith(cachePrefix) && name !== cacheName,
      );
      await Promise.all(older.map((name) => caches.delete(name)));
      // On the very first visit the open page is of this version; later it need not be.
      if (older.length === 0) await worker.clients.claim();
    })(),
  );
});

let held: unknown = null;
const heldForMs = 60_000;

worker.addEventListener('message', (event) => {
  const message = event.data as ToServiceWorker;
  if (message === 'take-over') void worker.skipWaiting();
  else if (message === 'held') event.ports[0]?.postMessage(held);
  else event.waitUntil(hold(message.hold));
});

/** Keeps the worker from being ended while it holds what nobody has written down. */
async function hold(value: unknown): Promise<void> {
  held = value;
  if (value === null) return;
  await new Promise((done) => setTimeout(done, heldForMs));
  if (held === value) held = null;
}

worker.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method === 'POST' && request.url === worker.registration.scope + sharePath) {
    event.respondWith(layInInbox(request));
    return;
  }
  if (request.method !== 'GET' || !request.url.startsWith(worker.registration.scope)) return;
  event.respondWith(answer(request));
});

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(cacheName);
  const options = { ignoreSearch: true, ignoreVary: true };
  const kept =
    (await cache.match(request, options)) ??
    (request.mode === 'navigate'
      ? await cache.match(worker.registration.scope, options)
      : undefined);
  return kept ?? (await onDemand(cache, request)) ?? fetch(request);
}

/** A part of this build that is kept from its first use on; null when it is none. */
async function onDemand(cache: Cache, { url }: Request): Promise<Response | null> {
  const wanted = crestwiseBuild.onDemand.find(
    ({ path }) => url === new URL(path, worker.registration.scope).href,
  );
  if (!wanted) return null;
  const whole = await wholeFile(url, wanted.sha256);
  // Where there is no room it serves once.
  await cache.put(url, whole.clone()).catch(() => undefined);
  return whole;
}

/** A file shared into the installed app; the page finds it when it opens. */
async function layInInbox(request: Request): Promise<Response> {
  const { scope } = worker.registration;
  const file = (await request.formData()).get('file');
  if (file instanceof File) {
    const inbox = await caches.open(inboxName(scope));
    await inbox.put(scope + sharedFilePath, new Response(file));
  }
  return Response.redirect(scope, 303);
}

async function fetchAll(): Promise<void> {
  const cache = await caches.open(cacheName);
  const queue = [...crestwiseBuild.files];
  const lane = async () => {
    for (let file = queue.shift(); file; file = queue.shift()) {
      const url = new URL(file.path, worker.registration.scope).href;
      await cache.put(url, await wholeFile(url, file.sha256));
    }
  };
  try {
    await Promise.all(Array.from({ length: parallel }, lane));
    await takeOverOnDemand(cache);
  } catch (cause) {
    await caches.delete(cacheName);
    throw cause;
  }
}

/** What an older version kept on demand and this one has unchanged. */
async function takeOverOnDemand(cache: Cache): Promise<void> {
  for (const { path } of crestwiseBuild.onDemand) {
    const url = new URL(path, worker.registration.scope).href;
    const kept = await caches.match(url);
    if (kept) await cache.put(url, kept);
  }
}

/** The file of exactly this build: from an older version's cache, the browser's, or the server. */
async function wholeFile(url: string, sha256: string): Promise<Response> {
  const sources = [
    () => caches.match(url),
    () => fetch(url),
    () => fetch(url, { cache: 'reload' }),
  ];
  for (const source of sources) {
    const response = await source();
    if (!response?.ok) continue;
    const body = await response.arrayBuffer();
    if ((await digest(body)) !== sha256) continue;
    // Made anew, because a redirected response may not answer a navigation.
    const type = response.headers.get('content-type') ?? 'application/octet-stream';
    return new Response(body, { headers: { 'content-type': type } });
  }
  throw new Error(`${url} is not of version ${crestwiseBuild.version}`);
}

async function digest(body: ArrayBuffer): Promise<string> {
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', body));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
