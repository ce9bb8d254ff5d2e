/** One version of the page, as the service worker keeps it. */
export interface Build {
  readonly version: string;
  /** Kept by everyone from the first visit on. */
  readonly files: readonly BuildFile[];
  /** Kept by whoever has needed them once. */
  readonly onDemand: readonly BuildFile[];
}

export interface BuildFile {
  /** Relative to the page, which itself is ''. */
  readonly path: string;
  readonly sha256: string;
}
