import { readFileSync } from 'node:fs';
import { describe } from 'vitest';
import { axe } from './axe.ts';
import { expect, test } from './browser.ts';
import { eventually, openFile, sheet, sheetIsCurrent, table } from './on-the-table.ts';

const EDDY = readFileSync('demo-blocks/05-eddy.block.json', 'utf8');

describe('the order of assembly', () => {
  test('is chosen by keys from pictures; steps, history and file follow; foundations are printed for the way that has them', async ({ page }) => {
    await openFile(page, EDDY);
    await eventually(() => table(page).getAttribute('aria-label')).toContain('Eddy');
    await sheetIsCurrent(page);
    await sheet(page).getByRole('button', { name: 'Order of assembly' }).press('Enter');
    const dialog = page.getByRole('dialog');
    await eventually(() => dialog.getByRole('radio').count()).toBe(4);
    expect(await dialog.locator('.order-name').allTextContents()).toEqual(['As found: by quarters', 'By rows', 'By columns', 'As a web']);
    expect(await dialog.locator('.order svg').count()).toBe(4);
    expect((await axe(page).include('dialog[open]').analyze()).violations).toEqual([]);
    await dialog.getByRole('radio').nth(3).focus();
    await page.keyboard.press('Space');
    await eventually(() => dialog.getByRole('radio').nth(3).isChecked()).toBe(true);
    await page.keyboard.press('Escape');
    await eventually(() => sheet(page).locator('.step').last().locator('.step-text').first().textContent()).toContain('Do not cut the threads between the rows');
    await page.getByRole('button', { name: 'Undo' }).click();
    await eventually(() => sheet(page).locator('.step').last().locator('.step-text').first().textContent()).not.toContain('threads');
    await sheet(page).getByRole('radio', { name: /^foundation/ }).check();
    await sheet(page).getByRole('button', { name: 'Print foundations' }).press('Enter');
    await eventually(() => page.getByRole('dialog', { name: 'Foundations' }).getByRole('img').first().getAttribute('aria-label')).toMatch(/^Page 1: foundation /);
  });
});
