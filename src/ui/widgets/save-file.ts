/** Hands a file to the browser's own download. */
export function saveFile(file: Blob, name: string): void {
  const url = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The download has its own reference by then.
  setTimeout(() => URL.revokeObjectURL(url), 30_000);
}

/** Through the device's share sheet where it takes files, else as a download.
 *  A share that the person calls off is no failure. */
export async function shareFile(file: File): Promise<'shared' | 'saved' | 'called-off'> {
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file], title: file.name });
      return 'shared';
    } catch (cause) {
      if (cause instanceof DOMException && cause.name === 'AbortError') return 'called-off';
    }
  }
  saveFile(file, file.name);
  return 'saved';
}
