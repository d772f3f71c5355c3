import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright';
import type { PreviewServer } from 'vite';
import { whatKeptBusy } from '../tests/e2e/long-tasks.ts';
import { address, browserHere, column, ms, ninetyFifth, openFullGrid, served } from './painting.ts';
import { median } from './timing.ts';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const SCRIPT = { path: fileURLToPath(new URL('recolour-page.js', import.meta.url)) };
const SIDES = [12, 24, 48];
/** How long the sheet of the drawing may take before it is recoloured, in milliseconds. */
const SHEET = 30_000;
/** How often each drawing is recoloured. */
const TIMES = 20;

/** What one recolouring took, in milliseconds, and whether the very next frame showed it. */
interface Shown {
  readonly took: number;
  readonly next: boolean;
}

/** Recolours a page so many times. @param deed the event that recolours, and on what */
async function recoloured(page: Page, deed: { readonly selector: string; readonly event: string }): Promise<readonly Shown[]> {
  return page.evaluate((wish) => Reflect.get(window, 'recoloured')(wish) as Promise<readonly Shown[]>, { ...deed, times: TIMES });
}

/** How often a press is traced. */
const TRACED = 7;

/** @returns processor time of the longest task of a press, in milliseconds, the middle one of some: how long it keeps its frame waiting */
async function workOf(browser: Browser, page: Page, { selector, event }: { readonly selector: string; readonly event: string }): Promise<number> {
  const longest: number[] = [];
  for (let i = 0; i < TRACED; i++) {
    const { worked } = await whatKeptBusy(browser, page, async () => {
      await page.locator(selector).dispatchEvent(event);
      await page.waitForTimeout(100);
    });
    longest.push(worked[0] ?? 0);
  }
  return median(longest);
}

/** Prints how long a block takes to be shown in other colours, beside one react-konva shape for each patch, and what a thousand small pictures ask. */
export async function recolouring(): Promise<void> {
  console.log('\nRecolouring a full grid throughout: milliseconds from the press to the end of the next frame, median and 95th percentile, on our');
  console.log('table and beside it with one react-konva shape for each patch; and how many of those frames showed it.');
  const browser = await browserHere();
  if (typeof browser === 'string') return console.log(`  ${browser}`);
  const folder = await mkdtemp(join(tmpdir(), 'piecewright-bench-'));
  const servers: PreviewServer[] = [];
  try {
    servers.push(await served(ROOT, join(folder, 'ours'), false), await served(join(ROOT, 'bench/plain'), join(folder, 'plain'), true));
    const [ours, plain] = servers.map(address) as [string, string];
    console.log(`  ${'cells'.padEnd(9)}${['ours', 'p95', 'next frame', 'plain', 'p95', 'next frame', 'ratio', 'work: ours', 'plain'].map(column).join('')}`);
    for (const cells of SIDES) {
      const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
      await page.addInitScript(SCRIPT);
      await openFullGrid(page, ours, cells, SHEET);
      await page.getByRole('button', { name: 'Other cloth' }).click();
      const round = page.getByRole('button', { name: 'Hand round' });
      await round.waitFor();
      await round.evaluate((button) => (button.id = 'hand-round'));
      await page.waitForTimeout(1500);
      const press = { selector: '#hand-round', event: 'click' };
      const a = await recoloured(page, press);
      const work = await workOf(browser, page, press);
      await page.close();
      const other = await browser.newPage();
      await other.addInitScript(SCRIPT);
      await other.goto(`${plain}?cells=${cells}`);
      await other.locator('canvas').first().waitFor();
      const plainPress = { selector: '#table', event: 'dblclick' };
      const b = await recoloured(other, plainPress);
      const plainWork = await workOf(browser, other, plainPress);
      await other.close();
      const [mine, theirs] = [a, b].map((shown) => shown.map(({ took }) => took)) as [number[], number[]];
      const next = (shown: readonly Shown[]): string => `${shown.filter((each) => each.next).length} of ${shown.length}`;
      console.log(`  ${`${cells} × ${cells}`.padEnd(9)}${[ms(median(mine)), ms(ninetyFifth(mine)), next(a), ms(median(theirs)), ms(ninetyFifth(theirs)), next(b), `1 : ${ms(median(theirs) / median(mine))}`, ms(work), ms(plainWork)].map(column).join('')}`);
    }
    console.log('  "Work" is processor time of the longest task of a press, which no other program makes longer.');
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    await page.goto(ours);
    await page.locator('article[aria-busy=false]').waitFor();
    const busy = await whatKeptBusy(browser, page, async () => {
      await page.getByRole('button', { name: 'Other cloth' }).click();
      await page.getByLabel('And with').selectOption({ index: 1 });
      await page.waitForFunction(() => document.querySelectorAll('.thumbnail').length === 1000, null, { timeout: 60_000 });
    });
    console.log(`  A thousand small pictures of a block of 89 pieces: longest tasks ${busy.worked.join(', ')} ms of processor time.`);
  } finally {
    await Promise.all(servers.map((server) => server.close()));
    await browser.close();
    await rm(folder, { recursive: true, force: true });
  }
}
