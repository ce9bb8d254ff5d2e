/** One version of the page, as the service worker keeps it. */
export interface Build {
  readonly version: string;
  /** Paths relative to the page. The page itself is ''. */
  readonly files: readonly { readonly path: string; readonly sha256: string }[];
}
