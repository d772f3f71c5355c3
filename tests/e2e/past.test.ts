import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright';
import { describe } from 'vitest';
import { axe } from './axe.ts';
import { appAddress, expect, test, visit } from './browser.ts';
import { click, eventually, openBlock, stroke, swatch, table } from './on-the-table.ts';

const past = (page: Page) => page.getByRole('region', { name: 'What was done' });
const words = (page: Page) => past(page).locator('.past-line > span:nth-child(2)').allTextContents();
const here = (page: Page) => past(page).locator('[aria-current]').locator('span:nth-child(2)').textContent();
const patches = (page: Page) => table(page).getAttribute('data-patches');

/** @returns the file of the drawing as it stands now */
async function saved(page: Page): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save a copy' }).click()]);
  return readFile(await download.path(), 'utf8');
}

/** Three cells of Lamp in one stroke, one cell of Chalk, and a new name. */
async function draw(page: Page): Promise<void> {
  await openBlock(page);
  await swatch(page, 'Lamp').click();
  await stroke(page, [0.5, 0.5], [2.5, 0.5]);
  await swatch(page, 'Chalk').click();
  await click(page, 1.5, 1.5);
  await page.getByLabel('Name of the block').fill('Slipway');
  await page.keyboard.press('Enter');
  await eventually(() => table(page).getAttribute('aria-label')).toContain('Slipway');
}

describe('what was done', () => {
  test('stands in a list, and a click on a line goes there and back', async ({ page }) => {
    await draw(page);
    await page.getByRole('button', { name: 'Past' }).click();
    await eventually(() => words(page)).toEqual([expect.stringMatching(/^rename/), 'laid a square of Chalk', 'laid 3 squares of Lamp', 'the beginning']);
    expect(await here(page)).toMatch(/^rename/);
    await past(page).getByRole('button', { name: 'laid 3 squares of Lamp' }).click();
    await eventually(() => patches(page)).toBe('3');
    await eventually(() => here(page)).toBe('laid 3 squares of Lamp');
    expect(await past(page).locator('[data-undone]').count()).toBe(2);
    await past(page).getByRole('button', { name: /^rename/ }).click();
    await eventually(() => table(page).getAttribute('aria-label')).toContain('Slipway');
    // Undo and the list are one thing.
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await eventually(() => here(page)).toBe('laid a square of Chalk');
    // A new gesture takes the place of what was undone.
    await click(page, 2.5, 2.5);
    await eventually(() => words(page)).toEqual(['laid a square of Chalk', 'laid a square of Chalk', 'laid 3 squares of Lamp', 'the beginning']);
  });

  test('is walked through by keys, and gives the focus back', async ({ page }) => {
    await draw(page);
    const button = page.getByRole('button', { name: 'Past' });
    await button.focus();
    await page.keyboard.press('Enter');
    await eventually(() => page.evaluate(() => document.activeElement?.textContent)).toMatch(/^rename/);
    await page.keyboard.press('End');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Enter');
    await eventually(() => patches(page)).toBe('3');
    await page.keyboard.press('End');
    await page.keyboard.press('Enter');
    await eventually(() => patches(page)).toBe('0');
    await page.keyboard.press('Control+Shift+z');
    await eventually(() => patches(page)).toBe('3');
    await page.keyboard.press('Escape');
    await eventually(() => past(page).count()).toBe(0);
    expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
  });

  test('undone to the beginning and done again to the end gives the same files byte for byte', async ({ page }) => {
    await page.addInitScript(() => Object.assign(window, { showSaveFilePicker: undefined }));
    await page.reload();
    await openBlock(page);
    const first = await saved(page);
    await swatch(page, 'Lamp').click();
    await stroke(page, [0.5, 0.5], [2.5, 2.5]);
    await page.keyboard.press('h');
    await click(page, 0.2, 0.2);
    await click(page, 2.8, 0.2);
    await swatch(page, 'Chalk').click();
    await page.keyboard.press('f');
    await click(page, 2.5, 2.5);
    await page.getByLabel('Name of the block').fill('Slipway');
    await page.keyboard.press('Enter');
    await eventually(() => table(page).getAttribute('aria-label')).toContain('Slipway');
    const last = await saved(page);
    expect(last).not.toBe(first);
    await page.getByRole('button', { name: 'Past' }).click();
    await past(page).getByRole('button', { name: 'the beginning' }).click();
    await eventually(() => page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
    expect(await saved(page)).toBe(first);
    await past(page).getByRole('button', { name: /^rename/ }).click();
    await eventually(() => page.getByRole('button', { name: 'Redo', exact: true }).isDisabled()).toBe(true);
    expect(await saved(page)).toBe(last);
  });
});

describe('the sheet of keys', () => {
  test('comes with "?" and goes with Escape, and says what each key does', async ({ page }) => {
    await openBlock(page);
    await table(page).focus();
    await page.keyboard.press('?');
    const keys = page.getByRole('dialog', { name: 'Keys' });
    await keys.waitFor();
    const line = (does: string) => keys.locator('.key-line').filter({ hasText: does }).locator('kbd').allTextContents();
    expect(await line('Half-square.')).toEqual(['H']);
    expect(await line('Save to the file')).toEqual(['Ctrl+S']);
    await page.keyboard.press('Escape');
    await eventually(() => keys.count()).toBe(0);
    expect(await table(page).evaluate((element) => element === document.activeElement)).toBe(true);
    await page.getByRole('button', { name: 'Keys' }).click();
    await keys.getByRole('button', { name: 'Close' }).click();
    await eventually(() => page.evaluate(() => document.activeElement?.textContent)).toContain('Keys');
  });
});

describe('by keys alone', () => {
  test('a block is painted, saved, put on the shelf and opened again', async ({ browser }) => {
    const { context, page, complaints } = await visit(browser);
    await page.addInitScript(() => Object.assign(window, { showSaveFilePicker: undefined }));
    await page.goto(appAddress());
    await table(page).waitFor();
    /** Goes on with Tab until something has the focus. */
    const tabTo = async (name: RegExp): Promise<void> => {
      for (let i = 0; i < 200; i++) {
        await page.keyboard.press('Tab');
        const focused = await page.evaluate(() => document.activeElement?.ariaLabel || document.activeElement?.textContent?.trim() || '');
        if (name.test(focused)) return;
      }
      throw new Error(`Tab never came to ${name}`);
    };
    await tabTo(/^New$/);
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').waitFor();
    await page.getByLabel('Name', { exact: true }).focus();
    await page.keyboard.press('Control+a');
    await page.keyboard.type('Night watch');
    await page.keyboard.press('Enter');
    await eventually(() => table(page).getAttribute('aria-label')).toContain('Night watch');
    await tabTo(/^Night watch, \d+ by \d+ cells$/);
    for (const key of ['1', 's', 'Home', 'PageUp', 'Space', 'ArrowRight', 'ArrowDown', '2', 'h', 'Space']) await page.keyboard.press(key);
    await eventually(async () => Number(await patches(page))).toBeGreaterThan(0);
    const painted = await patches(page);
    const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
    expect(download.suggestedFilename()).toBe('night-watch.block.json');
    await tabTo(/^Shelf$/);
    await page.keyboard.press('Enter');
    await page.locator('.gallery .block-picture').first().waitFor();
    await tabTo(/^Harbour Steps$/);
    await page.keyboard.press('Enter');
    await eventually(() => table(page).getAttribute('aria-label')).toContain('Harbour Steps');
    await tabTo(/^Shelf$/);
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').getByRole('button', { name: 'Night watch', exact: true }).waitFor();
    await tabTo(/^Night watch$/);
    await page.keyboard.press('Enter');
    await eventually(() => table(page).getAttribute('aria-label')).toContain('Night watch');
    expect(await patches(page)).toBe(painted);
    expect(complaints).toEqual([]);
    await context.close();
  });
});

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

describe('sheets over the page, for everyone', () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    for (const width of [360, 1280]) {
      test(`break no accessibility rule and fit in ${colorScheme}, ${width} px wide`, async ({ browser }) => {
        const { context, page, complaints } = await visit(browser, { colorScheme, viewport: { width, height: 800 }, reducedMotion: 'reduce' });
        await page.goto(appAddress());
        await draw(page);
        await openBlock(page, { name: 'Sail loft' });
        const broken = async (): Promise<string[]> => {
          expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
          const { violations } = await axe(page).withTags(RULES).analyze();
          return violations.map(({ id, impact, nodes }) => `${impact} ${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
        };
        await page.getByRole('button', { name: 'Shelf' }).click();
        await eventually(() => page.locator('.shelf-line img').count()).toBe(2);
        await page.getByRole('button', { name: 'Put away Slipway' }).click();
        await page.getByText('Put away (1)').click();
        await page.getByRole('button', { name: 'Rename Sail loft' }).click();
        expect(await broken()).toEqual([]);
        const wide = await page.getByRole('dialog').evaluate((sheet) => [sheet.scrollWidth, sheet.clientWidth] as const);
        expect(wide[0]).toBeLessThanOrEqual(wide[1]);
        await page.keyboard.press('Escape');
        await page.keyboard.press('Escape');
        await eventually(() => page.getByRole('dialog').count()).toBe(0);
        await click(page, 0.5, 0.5);
        await page.getByRole('button', { name: 'Undo', exact: true }).click();
        await page.getByRole('button', { name: 'Past' }).click();
        await past(page).waitFor();
        expect(await broken()).toEqual([]);
        await page.keyboard.press('Escape');
        await page.getByRole('button', { name: 'Picture' }).click();
        await page.getByLabel('dots (PNG)').check();
        expect(await broken()).toEqual([]);
        await page.keyboard.press('Escape');
        await eventually(() => page.getByRole('dialog').count()).toBe(0);
        await page.getByRole('button', { name: 'Keys' }).click();
        await page.getByRole('dialog', { name: 'Keys' }).waitFor();
        expect(await broken()).toEqual([]);
        expect(complaints).toEqual([]);
        await context.close();
      });
    }
  }
});
