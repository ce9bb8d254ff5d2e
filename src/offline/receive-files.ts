import { inboxName, sharedFilePath } from './inbox';

interface LaunchQueue {
  setConsumer(
    consumer: (launch: { files?: readonly { getFile(): Promise<File> }[] }) => void,
  ): void;
}

/** Files that reach the installed app from outside: shared into it from another app, or opened from
 *  the file manager. Each is given once. */
export async function receiveFiles(take: (file: Blob) => void): Promise<void> {
  const queue = (globalThis as { launchQueue?: LaunchQueue }).launchQueue;
  queue?.setConsumer(async ({ files = [] }) => {
    for (const handle of files) take(await handle.getFile());
  });
  try {
    const scope = new URL('./', document.baseURI).href;
    const cacheName = inboxName(scope);
    const waiting = await caches.match(scope + sharedFilePath, { cacheName });
    if (!waiting) return;
    await caches.delete(cacheName);
    take(await waiting.blob());
  } catch {
    // No caches here (plain http, private window): nothing can have been shared into the page.
  }
}
