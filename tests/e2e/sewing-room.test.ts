import { AxeBuilder } from '@axe-core/playwright';
import { describe } from 'vitest';
import { expect, test } from './browser.ts';
import { eventually, sheet, sheetIsCurrent } from './on-the-table.ts';

describe('the steps', () => {
  test('have pictures, the last of each with the size of what is made', async ({ page }) => {
    await sheetIsCurrent(page);
    const steps = sheet(page).locator('.step');
    const count = await steps.count();
    expect(count).toBeGreaterThan(5);
    await eventually(() => sheet(page).locator('.step .panel-measures').count()).toBe(count);
    const [first] = await sheet(page).locator('.step').first().locator('.panel').allTextContents();
    expect(first).toBe('Right sides together');
  });
});

describe('a block sewn on the screen', () => {
  test('is sewn and unpicked by keys, and ends equal to the drawing', async ({ page }) => {
    await sheetIsCurrent(page);
    await sheet(page).getByRole('button', { name: 'Watch it sewn' }).click();
    const watch = page.getByRole('dialog');
    const says = watch.getByRole('status');
    await eventually(() => says.textContent()).toMatch(/^\d+ pieces, cut and laid out\.$/);
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await eventually(() => says.textContent()).toMatch(/^Step 2: unit B/);
    await page.keyboard.press('ArrowLeft');
    await eventually(() => says.textContent()).toMatch(/^Step 1: unit A/);
    await page.keyboard.press('End');
    await eventually(() => says.textContent()).toMatch(/all straight: .* equal to the drawing\.$/);
    expect((await new AxeBuilder({ page }).include('dialog[open]').analyze()).violations).toEqual([]);
    await page.keyboard.press('Escape');
    await eventually(() => page.getByRole('dialog').count()).toBe(0);
  });

  test('plays by itself, and without gliding where less motion is wanted', async ({ page }) => {
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await sheetIsCurrent(page);
    await sheet(page).getByRole('button', { name: 'Watch it sewn' }).click();
    const watch = page.getByRole('dialog');
    await watch.getByRole('slider', { name: 'Speed' }).press('End');
    await watch.getByRole('button', { name: 'Sew', exact: true }).click();
    await eventually(() => watch.getByRole('status').textContent()).toMatch(/^Step [3-9]/);
    await watch.getByRole('button', { name: 'Pause' }).click();
    await eventually(() => watch.getByRole('button', { name: 'Sew', exact: true }).count()).toBe(1);
  });
});
