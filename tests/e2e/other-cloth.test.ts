import type { Locator, Page } from 'playwright';
import { describe } from 'vitest';
import { axe } from './axe.ts';
import { expect, test } from './browser.ts';
import { eventually, openBlock, sheetIsCurrent, swatch } from './on-the-table.ts';

/** A pinwheel of three fabrics; turned half round each corner, chalk and the ground lie where the other was. */
const PINWHEEL = [[0, 0], [2, 0], [2, 2], [0, 2]].flatMap(([x, y]) => [
  { fabric: 'chalk', points: [[x!, y!], [x! + 2, y!], [x! + 2, y! + 2]] },
  { fabric: 'lamp', points: [[x!, y!], [x! + 1, y!], [x!, y! + 1]] },
] as const);

async function room(page: Page): Promise<Locator> {
  await openBlock(page, { cells: 4, patches: PINWHEEL as never });
  await sheetIsCurrent(page);
  await page.getByRole('button', { name: 'Other cloth' }).click();
  const dialog = page.getByRole('dialog', { name: 'Other cloth' });
  await eventually(() => dialog.locator('.thumbnail').count()).toBe(3);
  return dialog;
}

const colours = (page: Page): Promise<readonly string[]> =>
  page.locator('.swatch-cloth').evaluateAll((all) => all.map((each) => (each as HTMLElement).style.getPropertyValue('--cloth')));

describe('the block in other cloth', () => {
  test('is shown in every way, and taken by a press that can be undone', async ({ page }) => {
    const dialog = await room(page);
    expect(await dialog.locator('.cloth-room-said').textContent()).toContain('3 different ways');
    const before = await colours(page);
    const seen = new Set<string>();
    for (const thumbnail of await dialog.locator('.thumbnail').all()) {
      await thumbnail.click();
      await eventually(() => thumbnail.getAttribute('aria-pressed')).toBe('true');
      const now = await colours(page);
      expect([...now].sort()).toEqual([...before].sort());
      seen.add(now.join());
    }
    expect(seen.size).toBe(3);
    await dialog.getByLabel('And with').selectOption('Harbour');
    await dialog.getByLabel('Any cloth anywhere').check();
    // Three roles, eight cloths: (8³ + 8²) / 2, by Burnside's lemma, for the one symmetry that exchanges two roles.
    await eventually(() => dialog.locator('.cloth-room-said').textContent()).toContain('288 different ways');
    expect((await axe(page).include('dialog').analyze()).violations).toEqual([]);
    await page.keyboard.press('Escape');
    const undo = page.getByRole('button', { name: 'Undo' });
    while (await undo.isEnabled()) await undo.click();
    await eventually(() => colours(page)).toEqual(before);
  });

  test('is kept as a colourway and taken again', async ({ page }) => {
    const dialog = await room(page);
    await dialog.getByLabel('Keep the block as it is now under').fill('Noon');
    await dialog.getByRole('button', { name: 'Keep', exact: true }).click();
    await eventually(() => dialog.getByText('as it is now', { exact: true }).count()).toBe(1);
    await dialog.getByRole('button', { name: 'Shuffle' }).click();
    await eventually(() => dialog.getByText('as it is now', { exact: true }).count()).toBe(0);
    await dialog.getByRole('button', { name: 'Take Noon' }).click();
    await eventually(() => dialog.getByText('as it is now', { exact: true }).count()).toBe(1);
    await dialog.getByRole('button', { name: 'Cloth and cuts of Noon' }).click();
    const lists = dialog.locator('.cut-list');
    // Two triangles of each size to a square: the pinwheel's own four pairs.
    await eventually(() => lists.getByRole('region', { name: 'Lamp' }).textContent()).toMatch(/buy .* yd.*2 squares .* cut once on the diagonal/);
    await dialog.getByRole('button', { name: 'Rename Noon' }).click();
    await dialog.getByLabel('Another name for Noon').fill('Ebb');
    await page.keyboard.press('Enter');
    await eventually(() => dialog.getByRole('button', { name: 'Take Ebb' }).count()).toBe(1);
    await eventually(() => lists.count()).toBe(1);
    await eventually(() => dialog.getByRole('button', { name: 'Rename Ebb' }).evaluate((button) => button === document.activeElement)).toBe(true);
    expect((await axe(page).include('dialog').analyze()).violations).toEqual([]);
    await page.keyboard.press('Escape');
    await eventually(() => swatch(page, 'Lamp').count()).toBe(1);
  });

  test('takes a colour in any way that CSS knows, and says what is none', async ({ page }) => {
    await openBlock(page, { patches: [{ fabric: 'lamp', points: [[0, 0], [1, 0], [1, 1]] }] });
    await swatch(page, 'Lamp').click();
    await page.getByRole('button', { name: 'Change Lamp' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('or typed').fill('lampish');
    await eventually(() => dialog.getByRole('alert').textContent()).toContain('“lampish” is no colour: write a name like teal');
    await dialog.getByLabel('or typed').fill('rgb(10% 20% 30%)');
    await dialog.getByRole('button', { name: 'Done' }).click();
    await eventually(() => colours(page)).toContain('#1a334d');
  });
});
