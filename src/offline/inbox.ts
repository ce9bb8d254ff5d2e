/** Where the service worker lays a file that another app shared, until the page takes it. Paths
 *  are relative to the page; `sharePath` is the manifest's share target. */
export const sharePath = 'share-target';
export const sharedFilePath = 'shared-file';
export const inboxName = (scope: string) => `crestwise-inbox ${scope}`;
