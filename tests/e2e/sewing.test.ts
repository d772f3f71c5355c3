import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright';
import { describe } from 'vitest';
import { expect, test } from './browser.ts';
import { click, eventually, openBlock, placeOf, sheet, sheetIsCurrent, stroke, table } from './on-the-table.ts';

const sewing = (page: Page, name: string): Locator =>
  page.getByRole('group', { name: 'Sewing' }).getByRole('button', { name, exact: true });
const asked = (page: Page): Promise<string[]> => page.locator('.table .asked > li').allTextContents();
const heard = (page: Page): Promise<string | null> => page.locator('.table [aria-live="polite"]').textContent();
const pins = (page: Page): Promise<string[]> => sheet(page).locator('.pin-words').allTextContents();
const undo = (page: Page): Locator => page.getByRole('button', { name: 'Undo' });

const rectangle = (left: number, top: number, right: number, bottom: number) =>
  [[left, top], [right, top], [right, bottom], [left, bottom]] as const;

/** Two chalk rectangles side by side on 4 by 4 cells. */
const TWO = [
  { fabric: 'chalk', points: rectangle(0, 0, 2, 2) },
  { fabric: 'lamp', points: rectangle(2, 2, 4, 4) },
];

/** Patches 2, 3, 7 and 8 lie round the others so that no straight seam passes between them. */
const LOCKED = [
  [0, 0, 1, 2], [1, 0, 4, 1], [4, 0, 5, 3], [1, 1, 2, 2], [2, 1, 3, 5], [3, 1, 4, 3], [0, 2, 2, 5], [3, 3, 5, 5],
].map(([left, top, right, bottom], i) => ({
  fabric: ['marram', 'chalk', 'lamp'][i % 3]!,
  points: rectangle(left!, top!, right!, bottom!),
  ...([1, 2, 6, 7].includes(i) && { whole: true }),
}));

describe('what is asked of the sewing', () => {
  test('is set by pointer, taken away by the same again, and each is one thing to undo', async ({ page }) => {
    await openBlock(page, { cells: 4, patches: TWO });
    await sewing(page, 'Seam').click();
    await stroke(page, [0, 1], [2, 1]);
    await eventually(() => asked(page)).toEqual(['Seam from 0 across, 1 down to 2 across, 1 down.']);
    // From the other end, tapped at one and then at the other.
    await click(page, 2, 1);
    await click(page, 0, 1);
    await eventually(() => asked(page)).toEqual([]);
    await sewing(page, 'Keep whole').click();
    await click(page, 1, 1);
    await eventually(() => asked(page)).toEqual(['Patch 1, Chalk, kept whole.']);
    await sewing(page, 'One unit').click();
    await stroke(page, [2.5, 2.5], [3.5, 3.5]);
    await sewing(page, 'Sewn last').click();
    await click(page, 1.5, 1.9);
    const all = ['Patch 1, Chalk, kept whole.', 'Pin 1: one unit, columns 3 to 4, rows 3 to 4.', 'Pin 2: sewn last, between rows 2 and 3.'];
    await eventually(() => asked(page)).toEqual(all);
    await eventually(() => pins(page)).toEqual(['One unit columns 3 to 4, rows 3 to 4', 'Sewn last between rows 2 and 3']);
    await click(page, 2.5, 2.1);
    await sewing(page, 'One unit').click();
    await stroke(page, [3.5, 3.5], [2.5, 2.5]);
    await sewing(page, 'Keep whole').click();
    await click(page, 1, 1);
    await eventually(() => asked(page)).toEqual([]);
    for (const left of [all.slice(0, 1), all.slice(0, 2), all]) {
      await undo(page).click();
      if (left.length === 1) await eventually(() => asked(page)).toEqual(left);
    }
    await eventually(() => asked(page)).toEqual(all);
    expect(await page.getByRole('alert').allTextContents()).toEqual(['']);
  });

  test('is set by the keys alone, and said aloud', async ({ page }) => {
    await openBlock(page, { cells: 4, patches: TWO });
    await table(page).focus();
    const press = async (...keys: string[]): Promise<void> => {
      for (const key of keys) await page.keyboard.press(key);
    };
    await press('Home', 'PageUp', 'k', 'Space');
    await eventually(() => heard(page)).toBe('Patch 1 is kept whole.');
    await press('u', 'Space');
    await eventually(() => heard(page)).toBe('First corner of the unit; go to the other one and press Space.');
    await press('ArrowRight', 'ArrowDown', 'Space');
    await eventually(() => heard(page)).toBe('Pin 1 set: one unit.');
    await press('l', 't', 'Space');
    await eventually(() => heard(page)).toBe('Pin 2 set: sewn last.');
    await press('Home', 't', 't', 'Space');
    await eventually(() => heard(page)).toBe('The edge of the block is no seam; point at a grid line inside it.');
    await press('d', 'Home', 'PageUp', 'Space', 'ArrowDown', 'ArrowDown', 'ArrowRight', 'ArrowRight', 'Space');
    await eventually(() => heard(page)).toBe('Seam drawn.');
    await eventually(() => asked(page)).toEqual([
      'Seam from 0 across, 0 down to 1 across, 1 down.',
      'Patch 1, Chalk, kept whole.',
      'Pin 1: one unit, columns 1 to 2, rows 1 to 2.',
      'Pin 2: sewn last, between columns 2 and 3.',
    ]);
    // The seam runs through the patch that is to stay whole: the sheet says so.
    await eventually(() => sheet(page).getByRole('alert').textContent()).toContain('must stay whole, but a drawn seam runs through it');
    expect(await table(page).getAttribute('data-knot')).toBe('1');
  });

  test('the ground, which is no patch, cannot be kept whole', async ({ page }) => {
    await openBlock(page, { cells: 4, patches: TWO });
    await sewing(page, 'Keep whole').click();
    await click(page, 3, 1);
    await eventually(() => page.getByRole('alert').first().textContent()).toContain('The ground has no patch to keep whole');
    expect(await asked(page)).toEqual([]);
  });

  test('is drawn before it is done: the grid line under the pointer shows', async ({ page }) => {
    await openBlock(page, { cells: 4 });
    await sewing(page, 'Sewn last').click();
    const marked = (x: number, y: number): Promise<number> =>
      page.evaluate(
        ([px, py]) => {
          const marks = [...document.querySelectorAll<HTMLCanvasElement>('.table-cloth canvas')].at(-1)!;
          const box = marks.getBoundingClientRect();
          const ratio = marks.width / marks.clientWidth;
          return marks.getContext('2d')!.getImageData(Math.round((px - box.left) * ratio), Math.round((py - box.top) * ratio), 1, 1).data[3]!;
        },
        [x, y] as const,
      );
    const far = await placeOf(page, 3.5, 2);
    const hover = await placeOf(page, 1.4, 1.9);
    expect(await marked(far.x, far.y)).toBe(0);
    await page.mouse.move(hover.x, hover.y);
    await eventually(() => marked(far.x, far.y)).toBeGreaterThan(200);
  });

  test('is in the file, and comes back from it', async ({ page }) => {
    const asks = [{ pin: 'sewn last', from: [0, 2], to: [4, 2] }, { pin: 'one unit', from: [1, 0], to: [4, 2] }];
    await openBlock(page, { cells: 4, patches: TWO, pins: asks });
    await eventually(() => pins(page)).toHaveLength(2);
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save', exact: true }).click()]);
    expect(JSON.parse(await readFile(await download.path(), 'utf8'))).toMatchObject({ pins: asks });
  });
});

describe('pins on the sheet', () => {
  test('are honoured, or say why not, and are removed there', async ({ page }) => {
    await openBlock(page, {
      cells: 4,
      patches: TWO,
      pins: [{ pin: 'one unit', from: [1, 1], to: [3, 3] }, { pin: 'sewn last', from: [2, 0], to: [2, 4] }],
    });
    await sheetIsCurrent(page);
    await eventually(() => pins(page)).toEqual([
      'One unit columns 2 to 3, rows 2 to 3',
      expect.stringMatching(/^Sewn last between columns 2 and 3Not honoured: it cuts into the unit of an earlier pin/),
    ]);
    expect(await sheet(page).getByRole('heading', { name: 'Before you cut' }).count()).toBe(0);
    await eventually(() => table(page).getAttribute('data-refused')).toBe('2');
    await sheet(page).getByRole('button', { name: 'Remove pin 1' }).click();
    await eventually(() => table(page).getAttribute('data-refused')).toBe('');
    await eventually(() => pins(page)).toEqual(['Sewn last between columns 2 and 3']);
    await sheetIsCurrent(page);
    const last = sheet(page).locator('.steps > li').last();
    expect(await last.textContent()).toContain('The block');
    await undo(page).click();
    await eventually(() => pins(page)).toHaveLength(2);
  });
});

describe('whole patches that lock each other', () => {
  const remedies = (page: Page): Locator => sheet(page).locator('.remedy');

  test('are named, shown on the sheet and on the table, and freed by the cheapest of what was tried', async ({ page }) => {
    await openBlock(page, { cells: 5, patches: LOCKED });
    const said = sheet(page).getByRole('alert');
    await eventually(() => said.textContent()).toContain('must all stay whole and lock each other');
    await eventually(() => table(page).getAttribute('data-knot')).toBe('2 3 7 8');
    expect(await sheet(page).locator('.knot-patch').count()).toBe(4);
    expect(await table(page).getAttribute('data-patches')).toBe('8');
    const offered = await remedies(page).allTextContents();
    expect(offered.length).toBeGreaterThan(2);
    // "… : 7 pieces, 6 seams …": the cheapest first, and set in by hand as the last resort.
    const prices = offered.slice(0, -1).map((text) => Number(/: (\d+) pieces, \d+ seams/.exec(text)![1]));
    expect(prices).toEqual(prices.toSorted((one, other) => one - other));
    expect(offered.at(-1)).toMatch(/^As a last resort, by hand: .*no steps for set-in seams\./);
    const act = remedies(page).first().getByRole('button');
    await act.focus();
    await eventually(() => sheet(page).locator('.knot-place').count()).toBeGreaterThan(0);
    await act.click();
    await eventually(() => page.locator('[data-proof]').getAttribute('data-proof')).toBe('holds');
    await sheetIsCurrent(page);
    expect(await said.count()).toBe(0);
    expect(await sheet(page).locator('.figures').textContent()).toContain(`${prices[0]} pieces`);
    expect(await table(page).getAttribute('data-knot')).toBe('');
    await undo(page).click();
    await eventually(() => table(page).getAttribute('data-knot')).toBe('2 3 7 8');
    await eventually(() => remedies(page).allTextContents()).toEqual(offered);
  });

  test('are divided in two where it says so, both parts whole', async ({ page }) => {
    await openBlock(page, { cells: 5, patches: LOCKED });
    await eventually(() => remedies(page).count()).toBeGreaterThan(2);
    await sheet(page).getByRole('button', { name: /^Divide patch 8 in two/ }).first().click();
    await eventually(() => page.locator('[data-proof]').getAttribute('data-proof')).toBe('holds');
    expect(await table(page).getAttribute('data-patches')).toBe('9');
    expect((await asked(page)).filter((words) => words.endsWith('kept whole.'))).toHaveLength(5);
  });
});

describe('seams through one fabric', () => {
  test('are listed with their price, and light up on the table', async ({ page }) => {
    await openBlock(page, { cells: 4, patches: [{ fabric: 'lamp', points: rectangle(1, 1, 3, 3) }] });
    await sheetIsCurrent(page);
    const divisions = sheet(page).getByRole('region', { name: 'Seams through one fabric' });
    await eventually(() => divisions.textContent()).toContain('3 pieces and as many seams more than there are areas drawn');
    const lines = divisions.locator('.division');
    if (!(await lines.first().isVisible())) await divisions.locator('summary').click();
    for (const text of await lines.allTextContents()) expect(text).toMatch(/^\+\dThe seam at \d+ in\. (across|down) runs through .+ from .+\.$/);
    expect(await table(page).getAttribute('data-lit')).toBe('0');
    await lines.first().getByRole('button').focus();
    await eventually(() => table(page).getAttribute('data-lit')).not.toBe('0');
    await eventually(() => table(page).getAttribute('data-places')).not.toBe('0');
    // All of them show while the list is unfolded.
    await eventually(() => table(page).getAttribute('data-divisions')).toBe('4');
    await divisions.locator('summary').click();
    await eventually(() => table(page).getAttribute('data-divisions')).toBe('0');
  });
});

describe('ways to sew it', () => {
  const ways = (page: Page): Locator => sheet(page).getByRole('group', { name: 'Ways to sew it' });

  test('come after the chosen one, each with its figures; another one is chosen, saved and undone', async ({ page }) => {
    await openBlock(page, {
      cells: 4,
      patches: [[0, 0], [1, 0], [2, 0], [3, 0], [0, 1], [2, 2], [3, 2]].map(([x, y]) => ({
        fabric: 'chalk',
        points: [[x!, y!], [x! + 1, y!], [x!, y! + 1]] as const,
      })),
    });
    await eventually(() => ways(page).getByRole('radio').count()).toBeGreaterThan(2);
    await eventually(() => ways(page).getByRole('status').textContent()).toBe('');
    expect(await ways(page).getByRole('radio', { checked: true }).getAttribute('value')).toBe('standard units');
    const lines = await ways(page).locator('.way-figures').allTextContents();
    for (const line of lines) expect(line).toMatch(/^\d+ pieces?( \((proved least|at least \d+)\))? · \d+ seams?/);
    await ways(page).getByRole('radio', { name: /^fewest pieces/ }).click();
    const figures = await ways(page).locator('.way:has(:checked) .way-figures').textContent();
    await sheetIsCurrent(page);
    await eventually(() => sheet(page).locator('.figures').textContent()).toContain(/^\d+ pieces?/.exec(figures!)![0]);
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save', exact: true }).click()]);
    expect(JSON.parse(await readFile(await download.path(), 'utf8'))).toMatchObject({ choices: { way: 'fewest pieces' } });
    await undo(page).click();
    await eventually(() => ways(page).getByRole('radio', { checked: true }).getAttribute('value')).toBe('standard units');
  });
});
