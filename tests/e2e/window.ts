import { type BrowserContext, test as base, type Page } from '@playwright/test';

/** A window that stays, and the page in it that keeps its process alive between tests. */
interface Window {
  readonly context: BrowserContext;
  readonly keeper: Page;
}

interface Own {
  /** A fresh window for this test alone: for what emptying does not undo. */
  ownWindow: boolean;
}

/** `test` of Playwright, but tests of one worker and one kind of device have one window, emptied after each: a process
 *  that starts anew, with fonts and scripts to load and compile, is half of what opening the page takes. */
export const test = base.extend<Own, { windows: Map<string, Window> }>({
  ownWindow: [false, { option: true }],

  windows: [
    async ({ browser: _ }, use) => {
      const windows = new Map<string, Window>();
      await use(windows);
      for (const { context } of windows.values()) await context.close();
    },
    { scope: 'worker' },
  ],

  context: async (
    { browser, windows, baseURL, ownWindow, serviceWorkers, viewport, hasTouch, isMobile, locale },
    use,
  ) => {
    if (ownWindow || serviceWorkers === 'allow') {
      const context = await browser.newContext();
      await use(context);
      await context.close();
      return;
    }
    const kind = JSON.stringify({ viewport, hasTouch, isMobile, locale });
    const window = windows.get(kind) ?? (await opened(await browser.newContext(), baseURL!));
    windows.set(kind, window);
    await use(window.context);
    await empty(window, baseURL!);
  },
});

async function opened(context: BrowserContext, site: string): Promise<Window> {
  const keeper = await context.newPage();
  await keeper.goto(`${site}icon.svg`);
  return { context, keeper };
}

/** Nothing that a test kept, asked for or opened is there for the next. */
async function empty({ context, keeper }: Window, site: string): Promise<void> {
  for (const page of context.pages()) if (page !== keeper) await page.close();
  await context.unrouteAll();
  await context.clearPermissions();
  const devtools = await context.newCDPSession(keeper);
  const { origin } = new URL(site);
  await devtools.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' });
  await devtools.detach();
}
