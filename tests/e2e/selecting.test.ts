import type { Page } from 'playwright';
import { describe } from 'vitest';
import { axe } from './axe.ts';
import { appAddress, expect, test, visit } from './browser.ts';
import { click, drawingInWords, eventually, openBlock, placeOf, stroke, swatch, table, tool } from './on-the-table.ts';

/** A square of one cell. */
const square = (fabric: string, x: number, y: number) =>
  ({ fabric, points: [[x, y], [x + 1, y], [x + 1, y + 1], [x, y + 1]] }) as const;

/** Three squares and a half-square in one corner of a block of six by six cells. */
const CORNER = [
  square('chalk', 0, 0), square('lamp', 1, 0), square('chalk', 0, 1), { fabric: 'lamp', points: [[1, 1], [2, 1], [1, 2]] },
] as const;
const opened = (page: Page): Promise<void> => openBlock(page, { cells: 6, patches: CORNER });

const chosen = (page: Page): Promise<string | null> => table(page).getAttribute('data-chosen');
const bar = (page: Page) => page.getByRole('group', { name: 'Chosen patches' });
const act = (page: Page, name: string) => bar(page).getByRole('button', { name, exact: true });
const heard = (page: Page): Promise<string | null> => page.locator('.table [aria-live="polite"]').textContent();
const rows = (page: Page): Promise<string[]> => drawingInWords(page);

/** Takes up the tool, and waits until what it needs has come. */
async function choosing(page: Page): Promise<void> {
  await tool(page, 'Choose').click();
  await bar(page).waitFor();
}

const START = [
  'Column 1: Chalk. Column 2: Lamp. Columns 3 to 6: Marram.',
  'Column 1: Chalk. Column 2: Lamp top left, Marram bottom right. Columns 3 to 6: Marram.',
];

describe('patches are chosen and arranged', () => {
  test('by mouse: clicked, framed, dragged to half lines, dropped by Escape, cut off at the edge', async ({ page }) => {
    await opened(page);
    await choosing(page);
    await click(page, 0.5, 0.5);
    await eventually(() => chosen(page)).toBe('1');
    expect(await bar(page).textContent()).toContain('1 patch: Chalk');
    await page.keyboard.down('Shift');
    await click(page, 1.5, 0.5);
    await eventually(() => chosen(page)).toBe('2');
    await click(page, 1.5, 0.5);
    await page.keyboard.up('Shift');
    await eventually(() => chosen(page)).toBe('1');
    await stroke(page, [3, 3], [-0.2, -0.2]);
    await eventually(() => chosen(page)).toBe('4');
    await stroke(page, [2.6, 1.05], [0.95, -0.1]);
    await eventually(() => chosen(page)).toBe('1');
    expect(await heard(page)).toBe('1 patch chosen.');

    // A drag that is dropped does nothing.
    await stroke(page, [3, 3], [-0.2, -0.2]);
    await eventually(() => chosen(page)).toBe('4');
    const [from, to] = [await placeOf(page, 0.5, 0.5), await placeOf(page, 2.6, 3.4)];
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y, { steps: 4 });
    await page.keyboard.press('Escape');
    await page.mouse.up();
    expect((await rows(page)).slice(0, 2)).toEqual(START);
    expect(await chosen(page)).toBe('4');

    await stroke(page, [0.5, 0.5], [2.6, 3.4]);
    await eventually(() => heard(page)).toBe('Moved 2 to the right and 3 down.');
    await eventually(() => rows(page)).toEqual([
      ...Array<string>(3).fill('Columns 1 to 6: Marram.'),
      'Columns 1 to 2: Marram. Column 3: Chalk. Column 4: Lamp. Columns 5 to 6: Marram.',
      'Columns 1 to 2: Marram. Column 3: Chalk. Column 4: Lamp top left, Marram bottom right. Columns 5 to 6: Marram.',
      'Columns 1 to 6: Marram.',
    ]);
    expect(await chosen(page)).toBe('4');
    await stroke(page, [2.5, 3.5], [1.05, 3.5]);
    await eventually(() => heard(page)).toBe('Moved 1.5 to the left.');
    await stroke(page, [1, 3.5], [-0.5, 3.5]);
    await eventually(() => heard(page)).toBe('Moved 1.5 to the left. What lay beyond the edge of the block is cut off.');
    for (let i = 0; i < 3; i++) await page.keyboard.press('Control+z');
    await eventually(async () => (await rows(page)).slice(0, 2)).toEqual(START);
    // What comes back is chosen still.
    expect(await chosen(page)).toBe('4');
  });

  test('with the bar: turned, mirrored, doubled, recoloured, taken up, each one thing to undo', async ({ page }) => {
    await opened(page);
    await choosing(page);
    await stroke(page, [3, 3], [-0.2, -0.2]);
    await eventually(() => chosen(page)).toBe('4');
    await act(page, 'Turn').click();
    await eventually(async () => (await rows(page)).slice(0, 2)).toEqual([
      'Columns 1 to 2: Chalk. Columns 3 to 6: Marram.',
      'Column 1: Lamp top right, Marram bottom left. Column 2: Lamp. Columns 3 to 6: Marram.',
    ]);
    await act(page, 'Mirror down').click();
    await eventually(async () => (await rows(page)).slice(0, 2)).toEqual([
      'Column 1: Marram top left, Lamp bottom right. Column 2: Lamp. Columns 3 to 6: Marram.',
      'Columns 1 to 2: Chalk. Columns 3 to 6: Marram.',
    ]);
    await act(page, 'Mirror down').click();
    await act(page, 'Turn back').click();
    await eventually(async () => (await rows(page)).slice(0, 2)).toEqual(START);
    await page.keyboard.press('Control+d');
    await eventually(async () => (await rows(page))[0]).toBe(
      'Column 1: Chalk. Column 2: Lamp. Column 3: Chalk. Column 4: Lamp. Columns 5 to 6: Marram.',
    );
    expect(await chosen(page)).toBe('4');
    await swatch(page, 'Lamp').click();
    await eventually(async () => (await rows(page))[0]).toBe('Column 1: Chalk. Columns 2 to 4: Lamp. Columns 5 to 6: Marram.');
    await act(page, 'Take up').click();
    await eventually(async () => (await rows(page)).slice(0, 2)).toEqual(START);
    expect(await chosen(page)).toBe('0');
    await act(page, 'All Lamp').click();
    await eventually(() => chosen(page)).toBe('2');
    await act(page, 'All').click();
    await eventually(() => chosen(page)).toBe('4');
    // Of what is chosen one fabric alone is replaced.
    await bar(page).getByRole('combobox').selectOption({ label: 'Only Lamp' });
    await eventually(() => chosen(page)).toBe('2');
    await swatch(page, 'Chalk').click();
    await eventually(async () => (await rows(page))[0]).toBe('Columns 1 to 2: Chalk. Columns 3 to 6: Marram.');
    await act(page, 'None').click();
    await eventually(() => chosen(page)).toBe('0');
    for (let i = 0; i < 8; i++) await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await eventually(() => page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
    expect((await rows(page)).slice(0, 2)).toEqual(START);
  });

  test('with the keyboard alone: taken with Space, carried by arrow keys over others without harm, cut and pasted', async ({ page }) => {
    await opened(page);
    const reached = (): Promise<boolean> => table(page).evaluate((element) => element === document.activeElement);
    for (let i = 0; i < 60 && !(await reached()); i++) await page.keyboard.press('Tab');
    expect(await reached()).toBe(true);
    const press = async (...keys: string[]): Promise<void> => {
      for (const key of keys) await page.keyboard.press(key);
    };
    await press('c');
    await bar(page).waitFor();
    await press('Space');
    await eventually(() => heard(page)).toBe('Chalk taken, 1 patch chosen.');
    await press('ArrowDown', 'Space');
    await eventually(() => heard(page)).toBe('Chalk taken, 2 patches chosen.');
    await press('Space');
    await eventually(() => heard(page)).toBe('Chalk left out, 1 patch chosen.');
    await press('Enter');
    expect(await heard(page)).toContain('arrow keys move the patches');
    await press('ArrowRight');
    await eventually(() => heard(page)).toBe('Moved 1 to the right.');
    await eventually(async () => (await rows(page))[0]).toBe('Column 1: Marram. Column 2: Chalk. Columns 3 to 6: Marram.');
    await press('ArrowRight', 'Shift+ArrowRight', 'Shift+ArrowRight');
    // The square it passed over is there again.
    await eventually(async () => (await rows(page))[0]).toBe(
      'Column 1: Marram. Column 2: Lamp. Column 3: Marram. Column 4: Chalk. Columns 5 to 6: Marram.',
    );
    await press('End');
    await eventually(async () => (await rows(page))[0]).toBe('Column 1: Marram. Column 2: Lamp. Columns 3 to 5: Marram. Column 6: Chalk.');
    await press('ArrowRight');
    await eventually(() => heard(page)).toBe('They lie at the edge of the block.');
    await press('3');
    await eventually(async () => (await rows(page))[0]).toBe('Column 1: Marram. Column 2: Lamp. Columns 3 to 5: Marram. Column 6: Lamp.');
    await press('Control+a');
    await eventually(() => chosen(page)).toBe('4');
    await press('Control+x');
    await eventually(() => table(page).getAttribute('data-patches')).toBe('0');
    await press('Control+v');
    await eventually(() => heard(page)).toBe('4 patches pasted.');
    await eventually(async () => (await rows(page))[0]).toBe('Column 1: Marram. Column 2: Lamp. Columns 3 to 5: Marram. Column 6: Lamp.');
    await press('Escape');
    await eventually(() => chosen(page)).toBe('0');
    await press('Delete');
    await eventually(() => heard(page)).toBe('Nothing is chosen.');
    expect(await table(page).getAttribute('data-patches')).toBe('4');
  });

  test('by finger: tapped one after another, framed, dragged', async ({ browser }) => {
    const { context, page, complaints } = await visit(browser, { hasTouch: true, viewport: { width: 820, height: 1180 } });
    await page.goto(appAddress());
    await opened(page);
    await tool(page, 'Choose').tap();
    await bar(page).waitFor();
    const tap = async (x: number, y: number): Promise<void> => {
      const at = await placeOf(page, x, y);
      await page.touchscreen.tap(at.x, at.y);
    };
    const session = await context.newCDPSession(page);
    const drag = async (...points: readonly (readonly [number, number])[]): Promise<void> => {
      const places = await Promise.all(points.map(([x, y]) => placeOf(page, x, y)));
      await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [places[0]!] });
      for (const place of places.slice(1)) await session.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [place] });
      await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    };
    await tap(0.5, 0.5);
    await eventually(() => chosen(page)).toBe('1');
    await act(page, 'Several').tap();
    await tap(1.5, 0.5);
    await tap(0.5, 1.5);
    await eventually(() => chosen(page)).toBe('3');
    await tap(0.5, 1.5);
    await eventually(() => chosen(page)).toBe('2');
    await act(page, 'None').tap();
    await drag([3, 3], [1.5, 1.5], [-0.1, -0.1]);
    await eventually(() => chosen(page)).toBe('4');
    await drag([0.5, 0.5], [1.5, 1], [2.5, 0.5]);
    await eventually(async () => (await rows(page))[0]).toBe(
      'Columns 1 to 2: Marram. Column 3: Chalk. Column 4: Lamp. Columns 5 to 6: Marram.',
    );
    expect(complaints).toEqual([]);
    await context.close();
  });

  test('are carried into another block, and to another window, with the fabrics they need', async ({ page, visitor }) => {
    await opened(page);
    await choosing(page);
    await act(page, 'All').click();
    await eventually(() => chosen(page)).toBe('4');
    await table(page).focus();
    await page.keyboard.press('Control+c');
    await eventually(() => heard(page)).toBe('4 patches copied.');
    await openBlock(page, { name: 'Slipway', cells: 3, fabrics: [['Tar', '#20262b'], ['Lamp', '#f2c230']] });
    await table(page).focus();
    await page.keyboard.press('Control+v');
    await eventually(() => heard(page)).toBe('4 patches pasted; Chalk added to the swatch tray.');
    await eventually(async () => (await rows(page))[0]).toBe('Column 1: Chalk. Column 2: Lamp. Column 3: Tar.');
    expect(await swatch(page, 'Chalk').count()).toBe(1);

    const other = await visitor.context.newPage();
    await other.goto(appAddress());
    await openBlock(other, { name: 'Mole', cells: 4 });
    await tool(other, 'Half-square').click();
    await table(other).focus();
    await other.keyboard.press('Control+v');
    await eventually(() => heard(other)).toBe('4 patches pasted.');
    await eventually(async () => (await rows(other))[0]).toBe('Column 1: Chalk. Column 2: Lamp. Columns 3 to 4: Marram.');
    expect(await tool(other, 'Choose').getAttribute('aria-pressed')).toBe('true');
  });
});

describe('the bar of what can be done with chosen patches', () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    for (const width of [360, 1280]) {
      test(`breaks no accessibility rule in ${colorScheme}, ${width} px wide, and fits`, async ({ browser }) => {
        const { context, page } = await visit(browser, { colorScheme, viewport: { width, height: 800 }, reducedMotion: 'reduce' });
        await page.goto(appAddress());
        await opened(page);
        await choosing(page);
        const broken = async (): Promise<string[]> => {
          const { violations } = await axe(page).analyze();
          return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
        };
        expect(await broken()).toEqual([]);
        await act(page, 'All').click();
        await eventually(() => chosen(page)).toBe('4');
        expect(await broken()).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
        const small = await bar(page).getByRole('button').evaluateAll((buttons) =>
          buttons.map((button) => button.getBoundingClientRect()).filter((box) => box.width < 24 || box.height < 24).length,
        );
        expect(small).toBe(0);
        await context.close();
      });
    }
  }
});
