import { readFileSync } from 'node:fs';
import { chromium, type Browser, type BrowserContext, type BrowserContextOptions, type Page } from 'playwright';
import { test as base, expect, inject } from 'vitest';

/** What `scripts/setup.mjs all` found: a browser that runs, and the flags it runs with. */
interface FoundBrowser {
  readonly executable: string;
  readonly flags: string[];
}

function foundBrowser(): FoundBrowser {
  const record = 'node_modules/.piecewright/browser.json';
  try {
    return JSON.parse(readFileSync(record, 'utf8')) as FoundBrowser;
  } catch {
    throw new Error(`No browser is set up for the end-to-end tests: run "node scripts/setup.mjs all", which writes ${record}.`);
  }
}

/** How long, in milliseconds, the page is waited for before it counts as never coming: no test is about time. */
const PATIENCE = 60_000;

/** One person's visit: a fresh profile, a page on which nothing is open yet, and what went wrong in it. */
export interface Visit {
  readonly context: BrowserContext;
  readonly page: Page;
  /** Console errors, uncaught errors and requests that would leave this machine, as sentences, oldest first. */
  readonly complaints: string[];
}

/**
 * Starts a visit. Requests to anywhere but this machine are refused and complained about.
 * @param browser a running browser
 * @param options what Playwright takes for a context: viewport, hasTouch, colorScheme …
 */
export async function visit(browser: Browser, options: BrowserContextOptions = {}): Promise<Visit> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, ...options });
  context.setDefaultTimeout(PATIENCE);
  const complaints: string[] = [];
  await context.route(
    (url) => /^(https?|wss?):$/.test(url.protocol) && url.hostname !== '127.0.0.1',
    async (route) => {
      complaints.push(`a request leaves this machine: ${route.request().url()}`);
      await route.abort();
    },
  );
  context.on('console', (message) => {
    if (message.type() === 'error') complaints.push(`console error: ${message.text()}`);
  });
  context.on('weberror', (error) => complaints.push(`uncaught error: ${error.error().message}`));
  return { context, page: await context.newPage(), complaints };
}

/** Where the built app is served. */
export const appAddress = (): string => inject('address');

/**
 * A test in a browser. It is given `browser` (one for all files of a worker), `visitor` (its own visit) and `page`, with the
 * built app opened in it. It fails where its visit ends with a complaint, whatever else it has checked.
 */
export const test = base.extend<{ browser: Browser; visitor: Visit; page: Page }>({
  browser: [
    async ({}, use) => {
      const { executable, flags } = foundBrowser();
      const browser = await chromium.launch({ executablePath: executable, args: flags });
      await use(browser);
      await browser.close();
    },
    { scope: 'worker' },
  ],
  visitor: async ({ browser, task }, use) => {
    const visitor = await visit(browser);
    await use(visitor);
    if (task.result?.state === 'fail' || visitor.complaints.length > 0) await keepPicture(visitor.page, task.name);
    await visitor.context.close();
    expect(visitor.complaints, 'what went wrong in the page').toEqual([]);
  },
  page: async ({ visitor }, use) => {
    await visitor.page.goto(appAddress(), { waitUntil: 'load' });
    await use(visitor.page);
  },
});

/** Keeps what a failed test saw in test-results/, under the test's own name. */
async function keepPicture(page: Page, name: string): Promise<void> {
  const file = name.replace(/[^a-z0-9]+/gi, '-');
  await page.screenshot({ path: `test-results/${file}.png` }).catch(() => undefined);
}

export { expect };
