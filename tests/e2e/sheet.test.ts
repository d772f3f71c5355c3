import type { Page } from 'playwright';
import { describe } from 'vitest';
import { axe } from './axe.ts';
import { expect, test } from './browser.ts';
import { click, cutsOf, eventually, openBlock, placeOf, sheet, sheetIsCurrent, swatch, table, tool, viewOf } from './on-the-table.ts';

/** Shoo Fly on the table: chalk corners, a lamp in the middle. */
async function shooFly(page: Page): Promise<void> {
  const corner = (x: number, y: number, dx: number, dy: number) => ({
    fabric: 'chalk',
    points: [[x, y], [x + dx, y], [x, y + dy]] as const,
  });
  await openBlock(page, {
    patches: [
      corner(0, 0, 1, 1), corner(3, 0, -1, 1), corner(3, 3, -1, -1), corner(0, 3, 1, -1),
      { fabric: 'lamp', points: [[1, 1], [2, 1], [2, 2], [1, 2]] },
    ],
  });
  await sheetIsCurrent(page);
}

/** @returns how much of the marks over a point of the drawing is opaque, 0 to 255: a veiled place more than 0, a lit one 0 */
async function veilAt(page: Page, x: number, y: number): Promise<number> {
  const [left, top, width, height] = await viewOf(page);
  return page.evaluate(
    ([px, py]) => {
      const marks = [...document.querySelectorAll<HTMLCanvasElement>('.table-cloth canvas')].at(-1)!;
      const ratio = marks.width / marks.clientWidth;
      return marks.getContext('2d')!.getImageData(Math.round(px * ratio), Math.round(py * ratio), 1, 1).data[3]!;
    },
    [left + (x * width) / 3, top + (y * height) / 3] as const,
  );
}

const lineOf = (page: Page, text: RegExp) => page.locator('[data-line]').filter({ hasText: text });

describe('a line of the sheet and its patches in the drawing', () => {
  test('light up together while the pointer is on the line', async ({ page }) => {
    await shooFly(page);
    const middle = lineOf(page, /^1square 4 1\/2 in\./);
    await middle.hover();
    await eventually(() => table(page).getAttribute('data-lit')).toBe('1');
    await eventually(() => veilAt(page, 1.5, 1.5)).toBe(0);
    expect(await veilAt(page, 0.2, 1.5)).toBeGreaterThan(100);
    await page.mouse.move(5, 5);
    await eventually(() => table(page).getAttribute('data-lit')).toBe('0');
    await eventually(() => veilAt(page, 0.2, 1.5)).toBe(0);
  });

  test('light up together while the line has the focus, and stay lit when it is pressed', async ({ page }) => {
    await shooFly(page);
    const lamp = page.getByRole('button', { name: 'Unit A: show it in the drawing' });
    await lamp.focus();
    await eventually(() => table(page).getAttribute('data-lit')).toBe('8');
    await page.keyboard.press('Enter');
    expect(await lamp.getAttribute('aria-pressed')).toBe('true');
    await lamp.blur();
    expect(await table(page).getAttribute('data-lit')).toBe('8');
    await lamp.press('Enter');
    await lamp.blur();
    await eventually(() => table(page).getAttribute('data-lit')).toBe('0');
  });

  test('are marked from the drawing, by pointer and by keys', async ({ page }) => {
    await shooFly(page);
    const middle = lineOf(page, /^1square 4 1\/2 in\./);
    expect(await middle.getAttribute('data-marked')).toBeNull();
    const at = await placeOf(page, 1.5, 1.5);
    await page.mouse.move(at.x, at.y);
    await eventually(() => middle.getAttribute('data-marked')).toBe('true');
    const unit = page.locator('[data-line="unit A"]');
    expect(await unit.getAttribute('data-marked')).toBeNull();
    await page.mouse.move(5, 5);
    await page.getByRole('group', { name: 'Sewing' }).getByRole('button').last().focus();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Home');
    await page.keyboard.press('PageUp');
    await eventually(() => unit.getAttribute('data-marked')).toBe('true');
    expect(await middle.getAttribute('data-marked')).toBeNull();
  });
});

describe('what the sewer chooses', () => {
  test('a method changes the cutting list, as was told before it was chosen', async ({ page }) => {
    await shooFly(page);
    const asSewn = page.getByRole('button', { name: /^Unit A:.*at a time$/ });
    await asSewn.click();
    const eight = page.getByRole('button', { name: /^eight at a time/ });
    await eventually(() => eight.innerText()).toMatch(/pieces/);
    const told = Number(/(\d+) pieces/.exec(await eight.innerText())![1]);
    await eight.click();
    // Eight at a time: 2 (4 + 7/8), a spare unit for every one that is not needed.
    await eventually(() => cutsOf(page, 'Chalk')).toEqual([expect.stringMatching(/^1 square 9 3\/4 in\..*4 spare for A$/)]);
    const quantities = await page.locator('.cut .quantity').allInnerTexts();
    expect(quantities.reduce((sum, text) => sum + Number(text), 0)).toBe(told);
    await eventually(() => eight.getAttribute('aria-pressed')).toBe('true');
    await page.getByRole('button', { name: 'Undo' }).click();
    await eventually(() => cutsOf(page, 'Chalk')).toEqual(['2 squares 4 7/8 in. for A']);
  });

  test('a method for one unit goes before that of its kind, and back to it by the keyboard', async ({ page }) => {
    await shooFly(page);
    await page.getByRole('button', { name: /^Unit A:/ }).filter({ hasText: 'time' }).press('Enter');
    await page.getByRole('radio', { name: 'Unit A alone' }).press('Space');
    await page.getByRole('button', { name: /^triangles from strips/ }).press('Enter');
    await eventually(() => page.locator('[data-line="unit A"] .method').innerText()).toMatch(/triangles from strips[^]*chosen for this unit/);
    const { violations } = await axe(page).include('.unit').withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    await page.getByRole('button', { name: /^as others of its kind/ }).press('Enter');
    await eventually(() => page.locator('[data-line="unit A"] .method').innerText()).toMatch(/two at a time\s*$/);
    expect(await page.getByRole('radio', { name: 'Unit A alone' }).evaluate((radio) => radio === document.activeElement)).toBe(true);
  });

  test('any amount may be cut large by', async ({ page }) => {
    await shooFly(page);
    await page.getByRole('combobox', { name: 'Trim off' }).selectOption({ label: 'another amount …' });
    await page.getByRole('textbox', { name: 'Trim amount' }).fill('7/8');
    await page.getByRole('textbox', { name: 'Trim amount' }).press('Enter');
    // 4 + 0.854 + 7/8 on the eighths.
    await eventually(() => cutsOf(page, 'Chalk')).toEqual([expect.stringMatching(/^2 squares 5 3\/4 in\..* for A$/)]);
    await eventually(() => sheet(page).innerText()).toMatch(/Trim to\s+4/);
  });

  test('a seam allowance changes every size, and more blocks every count', async ({ page }) => {
    await shooFly(page);
    await page.getByRole('combobox', { name: 'Seams' }).selectOption({ label: '1/2 in.' });
    await eventually(() => cutsOf(page, 'Lamp')).toEqual([expect.stringMatching(/^1 square 5 in\./)]);
    await page.getByRole('spinbutton', { name: 'Blocks' }).fill('12');
    await eventually(() => cutsOf(page, 'Lamp')).toEqual([expect.stringMatching(/^12 squares 5 in\./)]);
  });
});

describe('the sheet follows the drawing', () => {
  test('stroke by stroke, and ends with the last one however fast they come', async ({ page }) => {
    await openBlock(page, { cells: 6 });
    await swatch(page, 'Chalk').click();
    await tool(page, 'Half-square').click();
    for (let i = 0; i < 6; i++) await click(page, i + 0.2, i + 0.2);
    await sheetIsCurrent(page);
    // Six half-square triangles of 2 in.: three squares of 2 7/8 make six, two at a time.
    expect(await cutsOf(page, 'Chalk')).toEqual(['3 squares 2 7/8 in. for A']);
    expect(await sheet(page).getByRole('heading', { level: 2 }).textContent()).toBe('Boat shed');
  });
});
