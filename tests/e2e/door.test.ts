import { gzipSync } from 'node:zlib';
import { describe } from 'vitest';
import { appAddress, expect, test, visit } from './browser.ts';

describe('the built app, opened', () => {
  test('comes up with its own name and something to work with', async ({ page }) => {
    expect(await page.title()).toContain('Piecewright');
    await page.locator('#root > *').first().waitFor();
  });

  test('loads at most 250 KB of gzipped script before anything is asked of it', async ({ visitor }) => {
    const sizes = new Map<string, number>();
    const pending: Promise<void>[] = [];
    visitor.context.on('response', (response) => {
      if (!/javascript/.test(response.headers()['content-type'] ?? '')) return;
      pending.push(response.body().then((body) => void sizes.set(response.url(), gzipSync(body).length)));
    });
    await visitor.page.goto(appAddress(), { waitUntil: 'networkidle' });
    await Promise.all(pending);
    const total = [...sizes.values()].reduce((a, b) => a + b, 0);
    expect(sizes.size).toBeGreaterThan(0);
    expect(total, [...sizes].map(([url, size]) => `${url} ${size}`).join('\n')).toBeLessThanOrEqual(250 * 1024);
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
