import { describe } from 'vitest';
import { axe } from './axe.ts';
import { expect, test } from './browser.ts';
import { eventually, sheet, sheetIsCurrent } from './on-the-table.ts';

describe('the steps', () => {
  test('have pictures, the last of each with the size of what is made', async ({ page }) => {
    await sheetIsCurrent(page);
    const steps = sheet(page).locator('.step');
    const count = await steps.count();
    expect(count).toBeGreaterThan(5);
    for (let i = 0; i < count; i++) {
      await steps.nth(i).scrollIntoViewIfNeeded();
      await eventually(() => steps.nth(i).locator('.panel-measures').count()).toBe(1);
    }
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
    expect((await axe(page).include('dialog[open]').analyze()).violations).toEqual([]);
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

describe('what a seam error costs', () => {
  test('is told for the block and its points, and three strips tell the error', async ({ page }) => {
    await sheetIsCurrent(page);
    await sheet(page).getByRole('button', { name: 'What a seam error costs' }).click();
    const dialog = page.getByRole('dialog');
    const outcome = dialog.getByRole('region', { name: 'How the block comes out' });
    await eventually(() => outcome.textContent()).toMatch(/instead of 12 1\/2 by 12 1\/2 in\./);
    await eventually(() => outcome.textContent()).toMatch(/points are lost/);
    const seams = dialog.getByRole('slider', { name: 'Each seam' });
    await seams.press('ArrowLeft');
    await seams.press('ArrowLeft');
    await eventually(() => outcome.textContent()).toMatch(/All seams that should meet do/);
    // Three strips of 1 1/2 in. that come out 3 3/8: 1/32 in. too much on each side of two seams.
    await dialog.getByLabel('Yours measure').fill('3 3/8');
    await eventually(() => dialog.getByRole('region', { name: 'Three strips' }).textContent()).toMatch(/takes 1\/32 in\. too much on each side/);
    await dialog.getByLabel('Yours measure').fill('a lot');
    await eventually(() => dialog.getByRole('region', { name: 'Three strips' }).getByRole('status').textContent()).toMatch(/a lot/);
    expect((await axe(page).include('dialog[open]').analyze()).violations).toEqual([]);
  });
});

describe('pressing', () => {
  test('is shown on the back of the block, and a seam is pressed as the maker wants', async ({ page }) => {
    await sheetIsCurrent(page);
    await sheet(page).getByRole('button', { name: 'Pressing', exact: true }).click();
    const dialog = page.getByRole('dialog');
    const seam = dialog.getByRole('region', { name: 'One seam' });
    const says = seam.getByRole('status');
    await eventually(() => says.textContent()).toMatch(/^Step 15, the block: seam 2 of 2, pressed toward unit N\.$/);
    await seam.getByRole('button', { name: 'Press it open' }).click();
    await eventually(() => says.textContent()).toMatch(/pressed open\.$/);
    await eventually(() => seam.textContent()).toMatch(/You chose/);
    expect((await axe(page).include('dialog[open]').analyze()).violations).toEqual([]);
    await seam.getByRole('button', { name: 'Leave it to the plan' }).click();
    await eventually(() => says.textContent()).toMatch(/pressed toward unit N\.$/);
    await seam.getByRole('button', { name: 'Seam before' }).click();
    await eventually(() => says.textContent()).toMatch(/^Step 15, the block: seam 1 of 2/);
  });
});
