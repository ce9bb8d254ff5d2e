import * as portable from '../../quantity/portable-math';

/** A window that fades towards its ends (sin², Hann's). */
export interface FadingWindow {
  readonly w: Float64Array;
  /** Its energy. */
  readonly window2: number;
}

/** Of how many lengths a window is kept: memory only (judgement). A stretch is trimmed to the same few again and again. */
const windowsKept = 64;
const windows = new Map<number, FadingWindow>();

/** So many samples long. */
export function fadingWindow(n: number): FadingWindow {
  const known = windows.get(n);
  if (known) return known;
  const w = Float64Array.from(
    { length: n },
    (_, i) => portable.sin((Math.PI * (i + 0.5)) / n) ** 2,
  );
  const made = { w, window2: w.reduce((s, x) => s + x * x, 0) };
  if (windows.size >= windowsKept) windows.clear();
  windows.set(n, made);
  return made;
}
