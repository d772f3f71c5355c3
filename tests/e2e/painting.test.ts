import { describe } from 'vitest';
import { appAddress, expect, test, visit } from './browser.ts';
import {
  click, cutsOf, drawingInWords, eventually, openBlock, placeOf, sheet, sheetIsCurrent, stroke, swatch, table, tool,
} from './on-the-table.ts';

/**
 * Shoo Fly, 12 in., three fabrics: American Patchwork & Quilting (allpeoplequilt.com), Shoo Fly quilt block, 2019-04-02:
 * white 2 squares 4 7/8; mustard 2 squares 4 7/8 and 4 squares 4 1/2; yellow 1 square 4 1/2; 13 patches.
 */
const SHOO_FLY = {
  Chalk: ['2 squares 4 7/8 in. for A'],
  Marram: ['2 squares 4 7/8 in. for A', '4 squares 4 1/2 in.'],
  Lamp: ['1 square 4 1/2 in.'],
};

/** @returns a cutting line without the units it is for, which depend on how rows are joined */
const withoutUnits = (line: string): string => line.replace(/ for .*$/, '');

describe('a block painted from empty', () => {
  const expectShooFly = async (page: Parameters<typeof cutsOf>[0]): Promise<void> => {
    for (const [fabric, lines] of Object.entries(SHOO_FLY)) {
      expect((await cutsOf(page, fabric)).map(withoutUnits).toSorted(), fabric).toEqual(lines.map(withoutUnits).toSorted());
    }
    expect(await sheet(page).textContent()).toMatch(/Sewn back in exact arithmetic: 12 seams, all straight, equal to the drawing/);
    expect(await sheet(page).textContent()).toContain('13 pieces');
  };

  test('with the mouse gives the published cutting list', async ({ page }) => {
    await openBlock(page);
    await tool(page, 'Half-square').click();
    await swatch(page, 'Chalk').click();
    await click(page, 0.2, 0.2);
    await click(page, 2.8, 0.2);
    await click(page, 2.8, 2.8);
    await click(page, 0.2, 2.8);
    await tool(page, 'Square').click();
    await swatch(page, 'Lamp').click();
    await click(page, 1.5, 1.5);
    await eventually(() => drawingInWords(page)).toEqual([
      'Column 1: Chalk top left, Marram bottom right. Column 2: Marram. Column 3: Chalk top right, Marram bottom left.',
      'Column 1: Marram. Column 2: Lamp. Column 3: Marram.',
      'Column 1: Marram top right, Chalk bottom left. Column 2: Marram. Column 3: Marram top left, Chalk bottom right.',
    ]);
    await expectShooFly(page);
  });

  test('with the keyboard alone gives the published cutting list', async ({ page }) => {
    await openBlock(page);
    const reached = (): Promise<boolean> => table(page).evaluate((element) => element === document.activeElement);
    for (let i = 0; i < 40 && !(await reached()); i++) await page.keyboard.press('Tab');
    expect(await reached()).toBe(true);
    const heard = page.locator('.table [aria-live="polite"]');
    await eventually(() => heard.textContent()).toBe('Row 1, column 1: Marram');
    const press = async (...keys: string[]): Promise<void> => {
      for (const key of keys) await page.keyboard.press(key);
    };
    await press('h', '2', 'Space');
    await eventually(() => heard.textContent()).toBe('Row 1, column 1: Chalk top left, Marram bottom right');
    await press('ArrowRight', 'ArrowRight', 't', 'Space');
    await press('ArrowDown', 'ArrowDown', 't', 'Space');
    await press('Home', 't', 'Space');
    await press('s', '3', 'ArrowRight', 'ArrowUp', 'Enter');
    await eventually(() => heard.textContent()).toBe('Row 2, column 2: Lamp');
    await expectShooFly(page);
  });

  test('is asked for by name, size and grid', async ({ page }) => {
    await openBlock(page);
    await page.getByRole('button', { name: 'New' }).click();
    const asked = page.getByRole('dialog', { name: 'A new block' });
    await asked.getByLabel('Name').fill('Slipway');
    await asked.getByLabel('Finished width').fill('10 1/2');
    await asked.getByLabel('Finished height').fill('no length');
    await asked.getByLabel('Columns').fill('7');
    await asked.getByLabel('Rows').fill('4');
    await asked.getByRole('button', { name: 'Lay it out' }).click();
    expect(await asked.getByRole('alert').textContent()).toMatch(/.no length. is not a length/);
    await asked.getByLabel('Finished height').fill('6');
    await asked.getByRole('button', { name: 'Lay it out' }).click();
    await eventually(() => table(page).getAttribute('aria-label')).toBe('Slipway, 7 by 4 cells');
    expect(await page.locator('.block-size').textContent()).toContain('10 1/2 × 6 in.');
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    await page.getByRole('button', { name: 'Back to Boat shed' }).click();
    await eventually(() => table(page).getAttribute('aria-label')).toBe('Boat shed, 3 by 3 cells');
  });
});

describe('the tools', () => {
  test('one stroke lays patch after patch and is one thing to undo', async ({ page }) => {
    await openBlock(page, { cells: 8 });
    await swatch(page, 'Chalk').click();
    await tool(page, 'Half-square').click();
    await stroke(page, [0.2, 0.2], [7.5, 0.2], [7.5, 7.5]);
    expect(await table(page).getAttribute('data-patches')).toBe('15');
    await eventually(async () => (await drawingInWords(page))[0]).toBe('Columns 1 to 8: Chalk top left, Marram bottom right.');
    await page.keyboard.press('Control+z');
    expect(await table(page).getAttribute('data-patches')).toBe('0');
    await page.keyboard.press('Control+Shift+z');
    expect(await table(page).getAttribute('data-patches')).toBe('15');
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+y');
    expect(await table(page).getAttribute('data-patches')).toBe('15');
  });

  test('a quarter-square, a rectangle, an outline, the ground, a fill and a pick-up do what they say', async ({ page }) => {
    await openBlock(page, { cells: 4 });
    await swatch(page, 'Chalk').click();
    await tool(page, 'Quarter-square').click();
    await click(page, 0.9, 0.5);
    await tool(page, 'Rectangle').click();
    await stroke(page, [1.5, 1.5], [2.5, 3.5]);
    await eventually(() => drawingInWords(page)).toEqual([
      'Column 1: Marram top, Chalk right, Marram bottom, Marram left. Columns 2 to 4: Marram.',
      'Column 1: Marram. Columns 2 to 3: Chalk. Column 4: Marram.',
      'Column 1: Marram. Columns 2 to 3: Chalk. Column 4: Marram.',
      'Column 1: Marram. Columns 2 to 3: Chalk. Column 4: Marram.',
    ]);
    await tool(page, 'Pick up').click();
    await click(page, 2.5, 2.5);
    expect(await swatch(page, 'Chalk').getAttribute('aria-pressed')).toBe('true');
    await swatch(page, 'Lamp').click();
    await tool(page, 'Fill').click();
    await click(page, 2.5, 2.5);
    await tool(page, 'Ground').click();
    await stroke(page, [1.5, 1.5], [1.5, 3.5]);
    await eventually(async () => (await drawingInWords(page))[3]).toBe('Columns 1 to 2: Marram. Column 3: Lamp. Column 4: Marram.');
    await swatch(page, 'Chalk').click();
    await tool(page, 'Outline').click();
    for (const [x, y] of [[3, 2], [4, 2], [4, 3]] as const) await click(page, x, y);
    await table(page).focus();
    await page.keyboard.press('Enter');
    await eventually(async () => (await drawingInWords(page))[2]).toBe(
      'Columns 1 to 2: Marram. Column 3: Lamp. Column 4: Chalk top right, Marram bottom left.',
    );
    await sheetIsCurrent(page);
  });

  test('an outline that crosses itself is refused in one sentence, and nothing changes', async ({ page }) => {
    await openBlock(page);
    await tool(page, 'Outline').click();
    for (const [x, y] of [[0, 0], [2, 2], [2, 0], [0, 2]] as const) await click(page, x, y);
    await table(page).focus();
    await page.keyboard.press('Enter');
    expect(await page.getByRole('alert').first().textContent()).toContain('crosses or touches itself');
    expect(await table(page).getAttribute('data-patches')).toBe('0');
  });

  test('an outline begun is dropped by Escape', async ({ page }) => {
    await openBlock(page);
    await tool(page, 'Outline').click();
    for (const [x, y] of [[0, 0], [2, 0], [0, 2]] as const) await click(page, x, y);
    await table(page).focus();
    await page.keyboard.press('Escape');
    await page.keyboard.press('Enter');
    expect(await table(page).getAttribute('data-patches')).toBe('0');
  });

  test('work by finger on a small tablet', async ({ browser }) => {
    const { context, page, complaints } = await visit(browser, { viewport: { width: 600, height: 960 }, hasTouch: true });
    await page.goto(appAddress());
    await openBlock(page);
    await tool(page, 'Half-square').tap();
    await swatch(page, 'Lamp').tap();
    const at = await placeOf(page, 1.8, 1.8);
    await page.touchscreen.tap(at.x, at.y);
    await eventually(async () => (await drawingInWords(page))[1]).toBe(
      'Column 1: Marram. Column 2: Marram top left, Lamp bottom right. Column 3: Marram.',
    );
    expect(complaints).toEqual([]);
    await context.close();
  });

  test('fabrics are added, renamed and recoloured, and keep a letter of their own', async ({ page }) => {
    await openBlock(page);
    await page.getByRole('button', { name: 'Add fabric' }).click();
    const asked = page.getByRole('dialog', { name: 'Add a fabric' });
    await asked.getByLabel('Name').fill('Mast');
    await asked.getByLabel('Colour', { exact: true }).fill('#885533');
    await asked.getByRole('button', { name: 'Done' }).click();
    await eventually(() => swatch(page, 'Mast').getAttribute('aria-pressed')).toBe('true');
    const letters = await page.locator('.swatch-letter').allTextContents();
    expect(letters).toEqual(['M', 'C', 'L', 'A']);
    await page.getByRole('button', { name: 'Change Mast' }).click();
    await page.getByRole('dialog').getByLabel('Name').fill('Spar');
    await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
    await eventually(() => page.locator('.swatch-letter').allTextContents()).toEqual(['M', 'C', 'L', 'S']);
  });
});
