/** What this browser keeps of a person's choice under a name; null where there is none, or storage is off. */
export function keptText(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

/** Where storage is off or full, the choice lasts until reload. */
export function keepText(key: string, text: string): void {
  try {
    localStorage.setItem(key, text);
  } catch {
    // until reload then
  }
}
