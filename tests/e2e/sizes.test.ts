import type { Locator, Page } from 'playwright';
import { describe } from 'vitest';
import { axe } from './axe.ts';
import { appAddress, expect, test, visit } from './browser.ts';
import { eventually, openBlock, sheet, sheetIsCurrent, table } from './on-the-table.ts';

const dialog = (page: Page): Locator => page.getByRole('dialog', { name: /at other sizes$/ });
const field = (page: Page, name: string): Locator => dialog(page).getByLabel(name, { exact: true });
const rows = (page: Page): Promise<readonly string[]> => dialog(page).locator('tbody > tr:not(.size-list) > th').allTextContents();
const row = (page: Page, size: string): Locator => dialog(page).getByRole('row').filter({ hasText: size });

/** Shoo Fly, 12 in. on 3 by 3 cells: chalk corners, a lamp in the middle. */
async function shooFly(page: Page): Promise<void> {
  const corner = (x: number, y: number, dx: number, dy: number) => ({ fabric: 'chalk', points: [[x, y], [x + dx, y], [x, y + dy]] as const });
  await openBlock(page, {
    patches: [corner(0, 0, 1, 1), corner(3, 0, -1, 1), corner(3, 3, -1, -1), corner(0, 3, 1, -1), { fabric: 'lamp', points: [[1, 1], [2, 1], [2, 2], [1, 2]] }],
  });
  await sheetIsCurrent(page);
}

async function openSizes(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Other sizes' }).click();
  await dialog(page).waitFor();
}

describe('the block at other sizes', () => {
  test('is listed with its marks, in words too; a row unfolds to its cutting list', async ({ page }) => {
    await shooFly(page);
    await openSizes(page);
    await field(page, 'From').fill('9');
    await field(page, 'To').fill('10 1/2');
    await field(page, 'In steps of').fill('1/2');
    expect(await rows(page)).toEqual(['9 × 9', '9 1/2 × 9 1/2', '10 × 10', '10 1/2 × 10 1/2'].map((size) => `${size} in.: what to cut`));
    expect(await dialog(page).locator('.ruler-mark').allTextContents()).toEqual([' on the ruler', ' rounded up 3 2/3 in.', ' rounded up 3 5/6 in.', ' on the ruler'].map((words) => expect.stringContaining(words.trim())));
    // 3 in. finished: squares of 3 1/2, and of 3 7/8 for the triangles.
    await row(page, '9 × 9 in.').getByRole('button', { name: /what to cut$/ }).click();
    const list = dialog(page).locator('.size-list');
    await eventually(() => list.locator('li').allTextContents()).toEqual(expect.arrayContaining([expect.stringMatching(/^1 square 3 1\/2 in\. for /), '2 squares 3 7/8 in. for A']));
    // The layout follows by itself.
    await eventually(() => dialog(page).getByRole('row').locator('td:nth-of-type(3)').first().textContent()).toMatch(/yd$/);
    await dialog(page).getByLabel('Only those on the ruler').check();
    expect(await rows(page)).toHaveLength(2);
  });

  test('what is typed wrong is said in a sentence, and nothing is listed', async ({ page }) => {
    await shooFly(page);
    await openSizes(page);
    await field(page, 'From').fill('20');
    await field(page, 'To').fill('10');
    await eventually(() => dialog(page).getByRole('alert').textContent()).toBe('From 20 in. to 10 in. there are no sizes: begin with the smaller one.');
    expect(await rows(page)).toEqual([]);
    await field(page, 'To').fill('a yard');
    await eventually(() => dialog(page).getByRole('alert').textContent()).toMatch(/^To: “a yard” is not a length/);
  });

  test('the block is made one of them, in one step that can be undone', async ({ page }) => {
    await shooFly(page);
    await openSizes(page);
    await dialog(page).getByRole('button', { name: 'Make the block 9 by 9' }).click();
    await eventually(() => dialog(page).count()).toBe(0);
    await eventually(() => sheet(page).locator('.sheet-size').textContent()).toContain('9 × 9 in. finished');
    await page.getByRole('button', { name: 'Undo' }).click();
    await eventually(() => sheet(page).locator('.sheet-size').textContent()).toContain('12 × 12 in. finished');
  });
});

describe('a warning on the sheet', () => {
  test('stands before the cutting list and lights the pieces that it is about; what is rounded up unfolds', async ({ page }) => {
    await shooFly(page);
    await openSizes(page);
    await field(page, 'From').fill('1');
    await dialog(page).getByRole('button', { name: 'Make the block 1 1/4 by 1 1/4' }).click();
    const warning = sheet(page).locator('.warning').filter({ hasText: 'finish under 1/2 in.' });
    await eventually(() => warning.count()).toBe(1);
    await sheetIsCurrent(page);
    await warning.getByRole('button').press('Enter');
    await eventually(() => table(page).getAttribute('data-lit')).toBe('13');
    await sheet(page).getByRole('button', { name: 'Rounded up to the ruler' }).click();
    await eventually(() => sheet(page).locator('.rounded-up li').allTextContents()).toEqual(expect.arrayContaining([expect.stringMatching(/no step trims it\.$/)]));
  });

  for (const colorScheme of ['light', 'dark'] as const) {
    test(`and the table of sizes are within the rules of accessibility (${colorScheme})`, async ({ browser }) => {
      const visitor = await visit(browser, { colorScheme, viewport: { width: 390, height: 844 } });
      const { page } = visitor;
      await page.goto(appAddress());
      await shooFly(page);
      await openSizes(page);
      await row(page, '6 × 6 in.').getByRole('button', { name: /what to cut$/ }).click();
      await dialog(page).locator('.size-list').waitFor();
      const { violations } = await axe(page).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)).toEqual([]);
      expect(await page.evaluate(() => document.querySelector('dialog')!.scrollWidth <= document.querySelector('dialog')!.clientWidth)).toBe(true);
      expect(visitor.complaints).toEqual([]);
      await visitor.context.close();
    });
  }
});
