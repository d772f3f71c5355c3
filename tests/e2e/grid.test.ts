import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright';
import { describe } from 'vitest';
import { axe } from './axe.ts';
import { appAddress, expect, test, visit } from './browser.ts';
import { click, cutsOf, drawingInWords, eventually, openBlock, openFile, sheetIsCurrent, swatch, table } from './on-the-table.ts';

const panel = (page: Page): Locator => page.getByRole('dialog', { name: 'Size and grid' });
const opener = (page: Page): Locator => page.getByRole('button', { name: /^Size and grid:/ });
const field = (page: Page, name: string): Locator => panel(page).getByLabel(name, { exact: true });
const press = (page: Page, name: string): Promise<void> => panel(page).getByRole('button', { name, exact: true }).click();
const said = (page: Page): Locator => panel(page).getByRole('alert').filter({ hasText: /./ });
const head = (page: Page): Promise<string | null> => opener(page).locator(':scope > :last-child').textContent();

/** A chalk cell in the top left corner, a lamp one in the bottom right, a chalk bar right across the middle of a 3 by 3 block. */
const PATCHES = [
  { fabric: 'chalk', points: [[0, 0], [1, 0], [1, 1], [0, 1]] },
  { fabric: 'lamp', points: [[2, 2], [3, 2], [3, 3], [2, 3]] },
  { fabric: 'chalk', points: [[0, 1], [3, 1], [3, 2], [0, 2]] },
] as const;

async function openPanel(page: Page): Promise<void> {
  await openBlock(page, { patches: PATCHES });
  await opener(page).click();
  await panel(page).waitFor();
}

async function set(page: Page, name: string, text: string): Promise<void> {
  await field(page, name).fill(text);
  await field(page, name).press('Enter');
}

describe('size and grid', () => {
  test('the finished size is typed as people type it, in either unit', async ({ page }) => {
    await openPanel(page);
    expect(await head(page)).toBe('12 × 12 in. · 3 × 3 cells');
    await field(page, 'Width').fill('6 1/2');
    await set(page, 'Height', '6.5');
    await eventually(() => head(page)).toBe('6 1/2 × 6 1/2 in. · 3 × 3 cells');
    await field(page, 'Width').fill('16,5 cm');
    await set(page, 'Height', '18');
    await eventually(() => head(page)).toBe('16,5 × 18 cm · 3 × 3 cells');
    await panel(page).getByRole('combobox').selectOption('inches');
    await field(page, 'Width').fill('12');
    await set(page, 'Height', '12');
    await eventually(() => head(page)).toBe('12 × 12 in. · 3 × 3 cells');
    // The other unit turns what stands there into it, exactly: 12 in. are 30,48 cm.
    await panel(page).getByRole('combobox').selectOption('centimetres');
    expect(await field(page, 'Width').inputValue()).toBe('30,48');
  });

  const bad: readonly (readonly [what: string, name: string, text: string, sentence: RegExp])[] = [
    ['a size in words', 'Width', 'twelve', /“twelve” is not a length/],
    ['a size of nothing', 'Height', '0', /finished height must be more than 0/],
    ['a fraction over 0', 'Width', '6 1/0', /denominator of 0/],
    ['a size in two units', 'Width', '6 in', /./],
    ['more columns than a grid has', 'Columns', '65', /65 columns; it must have a whole number of them from 1 to 64/],
    ['half a row', 'Rows', '2.5', /"2.5" rows/],
    ['no columns at all', 'Columns', '', /no columns/],
    ['a row in words', 'Rows', 'many', /"many" rows/],
  ];
  for (const [what, name, text, sentence] of bad) {
    test(`${what} is explained in one sentence, and what was typed stays`, async ({ page }) => {
      await openPanel(page);
      if (what === 'a size in two units') await field(page, 'Height').fill('15 cm');
      await set(page, name, text);
      await eventually(() => said(page).count()).toBe(1);
      const words = (await said(page).textContent())!;
      expect(words).toMatch(what === 'a size in two units' ? /two units/ : sentence);
      expect(words).toMatch(/^[^\n]{10,200}\.$/);
      expect(await field(page, name).inputValue()).toBe(text);
      expect(await head(page)).toBe('12 × 12 in. · 3 × 3 cells');
      const about = await field(page, name).getAttribute('aria-describedby');
      expect(await page.locator(`[id="${about}"]`).textContent()).toBe(words);
    });
  }

  test('what does not fit a smaller grid is said first, done when asked again, and undone', async ({ page }) => {
    await openPanel(page);
    const before = await drawingInWords(page);
    await press(page, 'Take a column at the right');
    await eventually(() => said(page).textContent()).toMatch(/1 patch would be left out and 1 patch would be cut off at the new edge; press again/);
    expect(await drawingInWords(page)).toEqual(before);
    // Another button is another question.
    await press(page, 'Take a row at the top');
    await eventually(() => said(page).textContent()).toMatch(/^1 patch would be left out; press again/);
    await press(page, 'Take a column at the right');
    await eventually(() => said(page).textContent()).toMatch(/left out and 1 patch/);
    await press(page, 'Take a column at the right');
    await eventually(() => head(page)).toBe('8 × 12 in. · 2 × 3 cells');
    await eventually(() => drawingInWords(page)).toEqual([
      'Column 1: Chalk. Column 2: Marram.', 'Columns 1 to 2: Chalk.', 'Columns 1 to 2: Marram.',
    ]);
    await press(page, 'Undo');
    await eventually(() => head(page)).toBe('12 × 12 in. · 3 × 3 cells');
    await eventually(() => drawingInWords(page)).toEqual(before);
  });

  test('as many columns as wanted, in each of the three senses', async ({ page }) => {
    await openPanel(page);
    const stays = (words: RegExp): Promise<void> => panel(page).getByRole('radio', { name: words }).check();
    await set(page, 'Columns', '4');
    await eventually(() => head(page)).toBe('12 × 12 in. · 4 × 3 cells');
    await eventually(async () => (await drawingInWords(page))[2]).toBe('Columns 1 to 2: Marram. Column 3: Lamp. Column 4: Marram.');
    await stays(/^Cells keep their size/);
    await set(page, 'Columns', '5');
    await eventually(() => head(page)).toBe('15 × 12 in. · 5 × 3 cells');
    await stays(/^The picture stays/);
    await set(page, 'Rows', '6');
    await eventually(() => head(page)).toBe('15 × 12 in. · 5 × 6 cells');
    await eventually(async () => (await drawingInWords(page)).slice(4)).toEqual(
      Array.from({ length: 2 }, () => 'Columns 1 to 2: Marram. Column 3: Lamp. Columns 4 to 5: Marram.'),
    );
  });

  test('cells are divided and joined, and where they do not come out even it says so', async ({ page }) => {
    await openPanel(page);
    const before = await drawingInWords(page);
    await press(page, 'Divide 2 × 2');
    await eventually(() => head(page)).toBe('12 × 12 in. · 6 × 6 cells');
    await press(page, 'Join 2 × 2');
    await eventually(() => head(page)).toBe('12 × 12 in. · 3 × 3 cells');
    await eventually(() => drawingInWords(page)).toEqual(before);
    await press(page, 'Join 2 × 2');
    await eventually(() => said(page).textContent()).toMatch(/3 columns and 3 rows cannot be joined 2 by 2/);
    await press(page, 'Join 3 × 3');
    await eventually(() => said(page).textContent()).toMatch(/corners would lie off the lines/);
    await press(page, 'Join 3 × 3');
    await eventually(() => head(page)).toBe('12 × 12 in. · 1 × 1 cells');
    await press(page, 'Divide 3 × 3');
    await eventually(() => drawingInWords(page)).toEqual(before);
  });

  test('a half-inch row in a 6-inch block, the drawing with it, and a line taken away again', async ({ page }) => {
    await openPanel(page);
    await field(page, 'Width').fill('6');
    await set(page, 'Height', '6');
    await eventually(() => head(page)).toBe('6 × 6 in. · 3 × 3 cells');
    await panel(page).getByText('Uneven columns and rows').click();
    await set(page, 'Height of row 1', '1/2');
    await eventually(() => field(page, 'Height of row 2').inputValue()).toBe('3 1/2');
    await eventually(() => panel(page).getByRole('status').textContent()).toContain('Height of row 1');
    // The bar in the middle row is as high as its row: cut 4 in. by 6 1/2.
    await sheetIsCurrent(page);
    const cuts = (await page.getByRole('region', { name: 'Chalk' }).textContent())!;
    expect(cuts.replace(/\s+/g, ' ')).toContain('4 × 6 1/2 in.');
    await set(page, 'A line in row 1, from its top', '1/4');
    await eventually(() => head(page)).toBe('6 × 6 in. · 3 × 4 cells');
    await press(page, 'Join rows 1 and 2');
    await eventually(() => head(page)).toBe('6 × 6 in. · 3 × 3 cells');
    await press(page, 'All rows equal');
    await eventually(() => field(page, 'Height of row 1').inputValue()).toBe('2');
    await set(page, 'Height of row 1', '9');
    await eventually(() => said(page).textContent()).toMatch(/height of row 1 must be more than 0 and less than 4 in\./);
    expect(await field(page, 'Height of row 1').inputValue()).toBe('9');
    await field(page, 'Height of row 1').press('Escape');
    expect(await field(page, 'Height of row 1').inputValue()).toBe('2');
    expect(await panel(page).count()).toBe(1);
  });

  test('a half-inch row is painted like any other, cut 1 by 6 1/2, and comes back from a file', async ({ page }) => {
    await openBlock(page, { side: '6' });
    await opener(page).click();
    await panel(page).getByText('Uneven columns and rows').click();
    await set(page, 'Height of row 1', '1/2');
    await eventually(() => field(page, 'Height of row 2').inputValue()).toBe('3 1/2');
    await page.keyboard.press('Escape');
    await swatch(page, 'Lamp').click();
    // Rows of 2 in. are what the place is reckoned in: a tenth of one is 1/5 in.
    for (const column of [0.5, 1.5, 2.5]) await click(page, column, 0.1);
    await eventually(async () => (await drawingInWords(page))[0]).toBe('Columns 1 to 3: Lamp.');
    expect((await drawingInWords(page))[1]).toBe('Columns 1 to 3: Marram.');
    await sheetIsCurrent(page);
    await eventually(async () => (await cutsOf(page, 'Lamp')).join()).toContain('1 × 6 1/2 in.');
    expect((await cutsOf(page, 'Marram')).join()).toContain('6 × 6 1/2 in.');
    const [download] = await Promise.all([
      page.waitForEvent('download'), page.getByRole('button', { name: 'Save a copy' }).click(),
    ]);
    const text = await readFile(await download.path(), 'utf8');
    expect(text).toContain('"grid": { "columns": 3, "rows": 3, "down": ["1/4", 2] }');
    await openBlock(page, { name: 'Something else' });
    await openFile(page, text);
    await eventually(() => head(page)).toBe('6 × 6 in. · 3 × 3 cells');
    await eventually(async () => (await drawingInWords(page))[0]).toBe('Columns 1 to 3: Lamp.');
  });

  test('says which sizes the ruler can cut, and takes the one that is wanted', async ({ page }) => {
    await openPanel(page);
    const note = panel(page).locator('.grid-ruler');
    await sheetIsCurrent(page);
    await eventually(() => note.textContent()).toContain('Each cell is 4 × 4 in.');
    expect(await note.textContent()).toContain('Every cell and every straight cut falls on a mark');
    await field(page, 'Width').fill('10');
    await set(page, 'Height', '10');
    // 10/3 in. lies between 3 1/4 and 3 3/8; three cells of these make 9 3/4 and 10 1/8.
    await eventually(() => note.textContent()).toContain('3 1/3 (3 1/4 … 3 3/8)');
    await press(page, '10 1/8 × 10 1/8 in.');
    await eventually(() => head(page)).toBe('10 1/8 × 10 1/8 in. · 3 × 3 cells');
    await eventually(() => note.textContent()).not.toContain('Not ruler-friendly');
  });

  test('turns and mirrors the whole block', async ({ page }) => {
    await openPanel(page);
    const before = await drawingInWords(page);
    await press(page, 'Turn right');
    await eventually(async () => (await drawingInWords(page))[0]).toBe('Column 1: Marram. Columns 2 to 3: Chalk.');
    await press(page, 'Turn left');
    await eventually(() => drawingInWords(page)).toEqual(before);
    await press(page, 'Mirror left and right');
    await eventually(async () => (await drawingInWords(page))[0]).toBe('Columns 1 to 2: Marram. Column 3: Chalk.');
    await press(page, 'Mirror top and bottom');
    await eventually(async () => (await drawingInWords(page))[0]).toBe('Column 1: Lamp. Columns 2 to 3: Marram.');
  });

  test('by keyboard alone, and the focus comes back to where it was', async ({ page }) => {
    await openBlock(page, { patches: PATCHES });
    await opener(page).focus();
    await page.keyboard.press('Enter');
    await panel(page).waitFor();
    await eventually(() => panel(page).evaluate((shown) => shown === document.activeElement)).toBe(true);
    const steps = ['Put away', 'Width'];
    for (const name of steps) {
      await page.keyboard.press('Tab');
      await eventually(() => page.evaluate(() => document.activeElement?.closest('label, button')?.textContent)).toContain(name);
    }
    await page.keyboard.press('Control+A');
    await page.keyboard.type('9');
    await page.keyboard.press('Enter');
    await eventually(() => head(page)).toBe('9 × 12 in. · 3 × 3 cells');
    await page.keyboard.press('Escape');
    await eventually(() => panel(page).count()).toBe(0);
    await eventually(() => opener(page).evaluate((button) => button === document.activeElement)).toBe(true);
    expect(await opener(page).getAttribute('aria-expanded')).toBe('false');
  });

  for (const colorScheme of ['light', 'dark'] as const) {
    for (const width of [360, 1280]) {
      test(`breaks no accessibility rule in ${colorScheme}, ${width} px wide, and fits`, async ({ browser }) => {
        const { context, page, complaints } = await visit(browser, { colorScheme, viewport: { width, height: 740 }, reducedMotion: 'reduce' });
        await page.goto(appAddress());
        await openPanel(page);
        await sheetIsCurrent(page);
        await panel(page).getByText('Uneven columns and rows').click();
        await set(page, 'Columns', 'x');
        await eventually(() => said(page).count()).toBe(1);
        const check = async (): Promise<void> => {
          const { violations } = await axe(page).analyze();
          expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)).toEqual([]);
        };
        await check();
        await press(page, 'Take a column at the right');
        await eventually(() => said(page).last().textContent()).toMatch(/press again/);
        // What is wrong with the columns stays beside them.
        expect(await said(page).first().textContent()).toContain('"x" columns');
        await field(page, 'Width').fill('10');
        await set(page, 'Height', '10');
        await eventually(() => panel(page).locator('.grid-ruler').textContent()).toContain('Not ruler-friendly');
        await check();
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
        const within = await panel(page).evaluate((shown) => {
          const box = shown.getBoundingClientRect();
          const parts = shown.querySelector('.grid-parts')!;
          return box.left >= 0 && box.right <= innerWidth && box.bottom <= innerHeight && parts.scrollWidth <= parts.clientWidth;
        });
        expect(within).toBe(true);
        const small = await panel(page).locator('button, input, select, summary').evaluateAll((all) =>
          all.map((one) => one.getBoundingClientRect()).filter((box) => box.width < 24 || box.height < 24).length,
        );
        expect(small).toBe(0);
        expect(await table(page).count()).toBe(1);
        expect(complaints).toEqual([]);
        await context.close();
      });
    }
  }
});
