import { randomBytes } from 'node:crypto';
import { gzipSync } from 'node:zlib';
import { describe } from 'vitest';
import { appAddress, expect, test, visit, type Visit } from './browser.ts';

const LIMIT = 250 * 1024;

/** What is needed before anything is asked: the screen, the engine in its worker, the block that lies open; and what is not. */
const FIRST = ['01-point-light.block', 'first', 'pattern-worker'];
const LATER = ['block-file', 'GridPanel', 'Shelf', 'arranger', 'SelectionBar', 'PictureDialog', 'UnderTheCloth', 'MethodChooser', 'StepPanels', 'PublishingRoom', 'pages-worker', '02-harbour-steps.block'];

/** Opens the app for the first time. @returns how many bytes each script weighs, gzipped, by the name of its chunk */
async function firstLoad({ context, page }: Visit): Promise<ReadonlyMap<string, number>> {
  const chunks = new Map<string, number>();
  const pending: Promise<void>[] = [];
  context.on('response', (response) => {
    if (!/javascript/.test(response.headers()['content-type'] ?? '')) return;
    const chunk = /([^/]+)-.{8}\.js$/.exec(response.url())?.[1] ?? response.url();
    pending.push(response.body().then((body) => void chunks.set(chunk, (chunks.get(chunk) ?? 0) + gzipSync(body).length)));
  });
  await page.goto(appAddress(), { waitUntil: 'networkidle' });
  await Promise.all(pending);
  return chunks;
}

const total = (chunks: ReadonlyMap<string, number>): number => [...chunks.values()].reduce((a, b) => a + b, 0);
const weights = (chunks: ReadonlyMap<string, number>): string => [...chunks].map(([chunk, size]) => `${chunk} ${size}`).join('\n');

describe('the built app, opened', () => {
  test('comes up with its own name and something to work with', async ({ page }) => {
    expect(await page.title()).toContain('Piecewright');
    await page.locator('#root > *').first().waitFor();
  });

  test('loads at most 250 KB of gzipped script before anything is asked of it', async ({ visitor }) => {
    const chunks = await firstLoad(visitor);
    console.log(`first load, gzipped:\n${weights(chunks)}`);
    for (const chunk of FIRST) expect([...chunks.keys()]).toContain(chunk);
    for (const chunk of LATER) expect([...chunks.keys()]).not.toContain(chunk);
    expect(total(chunks), weights(chunks)).toBeLessThanOrEqual(LIMIT);
  });

  test('is found too heavy by the same count where a large import is planted', async ({ visitor }) => {
    // Random text cannot be pressed small.
    const ballast = `export const ballast = '${randomBytes(LIMIT / 2).toString('base64')}';`;
    await visitor.context.route('**/assets/ballast-11111111.js', (route) => route.fulfill({ contentType: 'text/javascript', body: ballast }));
    await visitor.context.route('**/assets/first-*.js', async (route) => {
      const own = await route.fetch();
      await route.fulfill({ response: own, body: `import './ballast-11111111.js';${await own.text()}` });
    });
    const chunks = await firstLoad(visitor);
    expect([...chunks.keys()]).toContain('ballast');
    expect(total(chunks), weights(chunks)).toBeGreaterThan(LIMIT);
  });
});

describe("the page's Content-Security-Policy", () => {
  const attempts = [
    {
      what: 'a script written into the page',
      directive: 'script-src-elem',
      attempt: () => document.body.append(Object.assign(document.createElement('script'), { textContent: 'window.planted = true' })),
    },
    // Later, not at once: what the debugger itself evaluates is allowed it.
    { what: 'code made from text', directive: 'script-src', attempt: () => setTimeout(() => new Function('window.planted = true')()) },
    {
      what: 'a request to another machine',
      directive: 'connect-src',
      attempt: () => void fetch('https://elsewhere.invalid/').catch(() => undefined),
    },
    {
      what: 'a picture from another machine',
      directive: 'img-src',
      attempt: () => void Object.assign(new Image(), { src: 'https://elsewhere.invalid/a.png' }),
    },
  ];

  for (const { what, directive, attempt } of attempts) {
    test(`refuses ${what}`, async ({ browser }) => {
      const { page, context } = await visit(browser);
      await page.goto(appAddress());
      await page.evaluate(() => {
        const refused: string[] = [];
        document.addEventListener('securitypolicyviolation', (event) => refused.push(event.effectiveDirective));
        Object.assign(window, { refused });
      });
      await page.evaluate<unknown>(attempt);
      await expect.poll(() => page.evaluate(() => Reflect.get(window, 'refused'))).toEqual([directive]);
      expect(await page.evaluate(() => 'planted' in window)).toBe(false);
      await context.close();
    });
  }
});

describe('the watch kept over every visit', () => {
  test('hears an error in the page, and a request that would leave this machine', async ({ browser }) => {
    const { page, context, complaints } = await visit(browser, { bypassCSP: true });
    await page.goto(appAddress());
    await page.evaluate(async () => {
      setTimeout(() => {
        throw new Error('a planted error');
      });
      console.error('a planted complaint');
      await fetch('https://elsewhere.invalid/planted').catch(() => undefined);
    });
    const heard = () => complaints.join('\n');
    await expect.poll(heard).toContain('uncaught error: a planted error');
    await expect.poll(heard).toContain('console error: a planted complaint');
    await expect.poll(heard).toContain('a request leaves this machine: https://elsewhere.invalid/planted');
    await context.close();
  });
});
