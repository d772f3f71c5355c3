import type { Page } from 'playwright';
import { describe } from 'vitest';
import { randomHalves } from '../../bench/drawings.ts';
import { expect, test } from './browser.ts';
import { eventually, openBlock, sheet, sheetIsCurrent } from './on-the-table.ts';

const CLOTHS: Readonly<Record<string, string>> = { cloth1: 'marram', cloth2: 'chalk', cloth3: 'lamp' };

/** A drawing of this many cells a side in which nothing repeats: the longest to look into. */
const restless = (cells: number) => ({
  name: `Choppy water ${cells}`,
  cells,
  patches: randomHalves(cells, 3, 1000 * cells + 3).patches.map(({ fabric, points }) => ({ fabric: CLOTHS[fabric]!, points })),
});

const CALM = { name: 'Calm water', cells: 2, patches: [{ fabric: 'lamp', points: [[0, 0], [1, 0], [1, 1], [0, 1]] as const }] };

/** Writes down from now on whatever the sheet says of its search, beside the name of the block, each saying once. */
async function listen(page: Page): Promise<() => Promise<string[]>> {
  await page.evaluate(() => {
    const said: string[] = [];
    Object.assign(window, { said });
    new MutationObserver(() => {
      const [name, words] = ['#sheet-title', '.standing'].map((where) => document.querySelector(where)?.textContent ?? '');
      const now = `${name}: ${words}`;
      if (words !== '' && said.at(-1) !== now) said.push(now);
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
  return () => page.evaluate(() => (window as unknown as { said: string[] }).said);
}

describe('a long search', () => {
  test('shows a first way at once, says that better ones are looked for, and then the best that was found', async ({ page }) => {
    const said = await listen(page);
    await openBlock(page, restless(24));
    const line = sheet(page).locator('.standing');
    await page.locator('.standing[data-looking]').waitFor({ timeout: 60_000 });
    await eventually(() => line.textContent()).toContain('the search is over');
    await sheetIsCurrent(page);
    expect((await said()).map((words) => words.replace('Choppy water 24: ', ''))).toEqual([
      'This is a first way to sew it; better ones are still looked for …',
      'This is the best way that was found; the search is over.',
    ]);
  });

  test('says of the fewest pieces how many there are, and how few there can be', async ({ page }) => {
    await openBlock(page, restless(8));
    await sheet(page).getByRole('radio', { name: 'fewest pieces' }).check({ timeout: 60_000 });
    const words = /^\d+ pieces(: proved least|; at least \d+ are needed; no way with fewer was found)$/;
    await eventually(() => sheet(page).locator('.standing').textContent()).toMatch(words);
  });

  test('ends when there is a newer drawing', async ({ page }) => {
    const said = await listen(page);
    await openBlock(page, restless(24));
    await page.locator('.standing[data-looking]').waitFor({ timeout: 60_000 });
    await openBlock(page, CALM);
    await sheetIsCurrent(page);
    await eventually(() => sheet(page).locator('.figures').textContent()).toContain('4 pieces');
    expect(await sheet(page).locator('.standing').textContent()).toBe('');
    expect((await said()).filter((words) => words.includes('the search is over'))).toEqual([]);
  });
});
