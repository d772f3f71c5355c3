import type { Locator, Page } from 'playwright';
import { describe } from 'vitest';
import { axe } from './axe.ts';
import { appAddress, expect, test, visit } from './browser.ts';
import { eventually, sheet, sheetIsCurrent } from './on-the-table.ts';

const line = (page: Page): Locator => sheet(page).locator('.sheet-time > span');

async function opened(page: Page): Promise<Locator> {
  await sheet(page).getByRole('button', { name: 'Figures and time' }).click();
  const dialog = page.getByRole('dialog', { name: 'Figures and time' });
  await eventually(() => dialog.getByRole('status').count()).toBe(1);
  return dialog;
}

/** @returns the seconds of a time as the dialog says it: "14 min 35 s" */
const seconds = (said: string): number =>
  [...said.matchAll(/(\d+) (h|min|s)/g)].reduce((sum, [, n, unit]) => sum + Number(n) * { h: 3600, min: 60, s: 1 }[unit as 'h' | 'min' | 's'], 0);

describe('figures and time', () => {
  test('are told on the sheet in a line, and in full when they are asked for', async ({ page }) => {
    await sheetIsCurrent(page);
    await eventually(() => line(page).textContent()).toMatch(/^About \d+ (h|min).* of work$/);
    const dialog = await opened(page);
    // The block has 89 pieces and 88 seams, as the sheet says.
    const figures = await dialog.getByRole('row').allTextContents();
    expect(figures.join('\n')).toMatch(/^Pieces89.*\nSeams88.*\nPoints to match28/m);
    const stages = await dialog.locator('.work-stage > h4 > .work-takes').allTextContents();
    const acts = await dialog.locator('.work-act .work-takes').allTextContents();
    const sum = (times: readonly string[]): number => times.map(seconds).reduce((a, b) => a + b, 0);
    expect(Math.abs(sum(stages) - sum(acts))).toBeLessThanOrEqual(4);
    await page.keyboard.press('Escape');
    await eventually(() => page.getByRole('dialog').count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Figures and time');
  });

  test('follow times that are typed, which this browser remembers, and go back to the usual', async ({ page }) => {
    await sheetIsCurrent(page);
    await eventually(() => line(page).textContent()).toMatch(/^About/);
    const usual = await line(page).textContent();
    const dialog = await opened(page);
    const pressed = dialog.locator('[data-act="press"]');
    const field = dialog.getByLabel('For each seam pressed');
    await field.fill('soon');
    await field.press('Enter');
    await eventually(() => dialog.getByRole('alert').textContent()).toBe('“soon” is no time for this: type seconds from 0 to 3600, such as 15, 7.5 or 1 min 30 s.');
    await field.fill('1 min 30 s');
    await field.press('Enter');
    await eventually(() => field.inputValue()).toBe('90 s');
    expect(await dialog.getByRole('alert').count()).toBe(0);
    const [, times] = /^(\d+) seams pressed/.exec((await pressed.locator('p').textContent())!)!;
    expect(seconds((await pressed.locator('.work-takes').textContent())!)).toBe(Number(times) * 90);
    expect(await dialog.getByRole('status').textContent()).toContain('with times of your own');
    await page.keyboard.press('Escape');
    await eventually(() => line(page).textContent()).not.toBe(usual);
    const own = await line(page).textContent();
    await page.reload();
    await eventually(() => line(page).textContent()).toBe(own);
    const again = await opened(page);
    await again.getByRole('button', { name: 'Back to the usual times' }).click();
    await eventually(() => again.getByLabel('For each seam pressed').inputValue()).toBe('15 s');
    await eventually(() => line(page).textContent()).toBe(usual);
  });

  for (const colorScheme of ['light', 'dark'] as const) {
    for (const width of [360, 1280]) {
      test(`break no accessibility rule in ${colorScheme}, ${width} px wide, and nothing stands out sideways`, async ({ browser }) => {
        const { context, page, complaints } = await visit(browser, { colorScheme, viewport: { width, height: 800 }, reducedMotion: 'reduce' });
        await page.goto(appAddress());
        await sheetIsCurrent(page);
        await eventually(() => line(page).textContent()).toMatch(/^About/);
        const dialog = await opened(page);
        const field = dialog.getByLabel('For each straight cut');
        await field.fill('a while');
        await field.press('Enter');
        await eventually(() => dialog.getByRole('alert').count()).toBe(1);
        expect((await axe(page).include('dialog[open]').analyze()).violations).toEqual([]);
        expect(await page.evaluate(() => { const open = document.querySelector('dialog[open]')!; return open.scrollWidth - open.clientWidth; })).toBe(0);
        expect(complaints).toEqual([]);
        await context.close();
      });
    }
  }
});
