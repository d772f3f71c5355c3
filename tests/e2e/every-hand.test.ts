import type { CDPSession, Page } from 'playwright';
import { describe } from 'vitest';
import { axe } from './axe.ts';
import { appAddress, expect, test, visit } from './browser.ts';
import { click, drawingInWords, eventually, openBlock, placeOf, sheet, sheetIsCurrent, stroke, swatch, table, tool } from './on-the-table.ts';

const asked = (page: Page): Promise<string[]> => page.locator('.table .asked > li').allTextContents();
const heard = (page: Page): Promise<string | null> => page.locator('.table [aria-live="polite"]').textContent();
const symmetry = (page: Page) => page.getByRole('button', { name: /^Symmetry/ });

/** Four by four cells with one patch of chalk in the top-left quarter. */
const QUARTER = { cells: 4, patches: [{ fabric: 'chalk', points: [[0, 0], [2, 0], [2, 2], [0, 2]] as const }] };
const ROWS = [
  'Columns 1 to 2: Chalk. Columns 3 to 4: Marram.', 'Columns 1 to 2: Chalk. Columns 3 to 4: Marram.',
  'Columns 1 to 4: Marram.', 'Columns 1 to 4: Marram.',
];

type Place = readonly [number, number];

/** What a hand does with each tool, holding Lamp, and what the drawing is then: the rows that change, or what is asked of the sewing. */
interface Use {
  /** One stroke, or several taps. */
  readonly stroke?: readonly Place[];
  readonly taps?: readonly Place[];
  /** The same by keys, from the top-left cell on. */
  readonly keys: readonly string[];
  readonly rows?: Readonly<Record<number, string>>;
  readonly asked?: string;
}

const [L, R, U, D] = ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'] as const;
const USES: Readonly<Record<string, Use>> = {
  Square: { stroke: [[2.5, 0.5], [3.5, 0.5]], keys: [R, R, 's', 'Space', R, 'Space'], rows: { 0: 'Columns 1 to 2: Chalk. Columns 3 to 4: Lamp.' } },
  'Half-square': {
    taps: [[3.8, 3.8]], keys: ['End', 'PageDown', 'h', 't', 't', 'Space'],
    rows: { 3: 'Columns 1 to 3: Marram. Column 4: Marram top left, Lamp bottom right.' },
  },
  'Quarter-square': {
    taps: [[3.5, 3.1]], keys: ['End', 'PageDown', 'q', 't', 't', 'Space'],
    rows: { 3: 'Columns 1 to 3: Marram. Column 4: Lamp top, Marram right, Marram bottom, Marram left.' },
  },
  Rectangle: {
    stroke: [[2.5, 2.5], [3.5, 3.5]], keys: [R, R, D, D, 'r', 'Space', R, D, 'Space'],
    rows: { 2: 'Columns 1 to 2: Marram. Columns 3 to 4: Lamp.', 3: 'Columns 1 to 2: Marram. Columns 3 to 4: Lamp.' },
  },
  'Half-rectangle': {
    // Over two rows of one column each its diagonal passes one corner after the other.
    stroke: [[2.2, 2.2], [3.5, 3.5]], keys: [R, R, D, D, 'n', 'Space', R, D, 'Space'],
    rows: {
      2: 'Columns 1 to 2: Marram. Column 3: Lamp. Column 4: Lamp top left, Marram bottom right.',
      3: 'Columns 1 to 2: Marram. Column 3: Lamp top left, Marram bottom right. Column 4: Marram.',
    },
  },
  Peak: {
    stroke: [[2.5, 2.1], [3.5, 2.5]], keys: [R, R, D, D, 'a', 'Space', R, 'Space'],
    rows: { 2: 'Columns 1 to 2: Marram. Column 3: Lamp top right, Marram bottom left. Column 4: Lamp top left, Marram bottom right.' },
  },
  Outline: {
    taps: [[3, 2], [4, 2], [4, 4], [3, 2]], keys: [R, R, R, D, D, 'o', L, U, 'Space', R, R, 'Space', D, D, D, D, 'Space', 'Enter'],
    rows: {
      2: 'Columns 1 to 3: Marram. Column 4: Lamp top, Lamp right, Lamp bottom, Marram left.',
      3: 'Columns 1 to 3: Marram. Column 4: Marram top, Lamp right, Marram bottom, Marram left.',
    },
  },
  Fill: {
    taps: [[1.2, 0.5]], keys: ['f', 'Space'],
    rows: { 0: 'Columns 1 to 2: Lamp. Columns 3 to 4: Marram.', 1: 'Columns 1 to 2: Lamp. Columns 3 to 4: Marram.' },
  },
  Ground: { stroke: [[0.5, 0.5], [1.5, 0.5]], keys: ['g', 'Space', R, 'Space'], rows: { 0: 'Columns 1 to 4: Marram.' } },
  Seam: { stroke: [[0, 1], [2, 1]], keys: ['d', L, D, 'Space', R, R, R, R, 'Space'], asked: 'Seam from 0 across, 1 down to 2 across, 1 down.' },
  'Keep whole': { taps: [[1, 0.5]], keys: ['k', 'Space'], asked: 'Patch 1, Chalk, kept whole.' },
  'One unit': { stroke: [[0.5, 0.5], [1.5, 1.5]], keys: ['u', 'Space', R, D, 'Space'], asked: 'Pin 1: one unit, columns 1 to 2, rows 1 to 2.' },
  'Sewn last': { taps: [[1.5, 1.95]], keys: [D, 'l', 't', 't', 'Space'], asked: 'Pin 1: sewn last, between rows 2 and 3.' },
};

/** Uses every tool, each turned as the one before was left, looks at what came of it, and takes it back. */
async function useAll(page: Page, use: (name: string, how: Use) => Promise<void>): Promise<void> {
  await openBlock(page, QUARTER);
  await swatch(page, 'Lamp').click();
  for (const [name, how] of Object.entries(USES)) {
    await use(name, how);
    await eventually(() => drawingInWords(page)).toEqual(ROWS.map((row, i) => how.rows?.[i] ?? row));
    await eventually(() => asked(page)).toEqual(how.asked ? [how.asked] : []);
    // A stroke of the hand is one thing to undo; of two cells laid by keys each is one.
    for (let i = 0; i < 3 && (await page.getByRole('button', { name: 'Undo' }).isEnabled()); i++) {
      if ((await drawingInWords(page)).join() === ROWS.join() && (await asked(page)).length === 0) break;
      await page.keyboard.press('Control+z');
      if (!how.keys.includes('s') && !how.keys.includes('g')) break;
    }
    await eventually(async () => [...(await drawingInWords(page)), ...(await asked(page))]).toEqual(ROWS);
  }
  expect(await page.getByRole('alert').allTextContents()).toEqual(['']);
}

describe('every tool', () => {
  test('by mouse', async ({ page }) => {
    await useAll(page, async (name, { stroke: way, taps = [] }) => {
      await tool(page, name).click();
      if (way) await stroke(page, ...way);
      for (const at of taps) await click(page, ...at);
    });
    await tool(page, 'Pick up').click();
    await click(page, 1.5, 0.5);
    await eventually(() => swatch(page, 'Chalk').getAttribute('aria-pressed')).toBe('true');
  });

  test('by finger', async ({ browser }) => {
    const { context, page, complaints } = await visit(browser, { viewport: { width: 900, height: 1200 }, hasTouch: true });
    await page.goto(appAddress());
    const fingers: CDPSession = await context.newCDPSession(page);
    const touch = async (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: { x: number; y: number }): Promise<void> => {
      await fingers.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [at] : [] });
    };
    await useAll(page, async (name, { stroke: way, taps = [] }) => {
      await tool(page, name).tap();
      for (const places of way ? [way] : taps.map((at) => [at])) {
        const pixels = await Promise.all(places.map((at) => placeOf(page, ...at)));
        await touch('touchStart', pixels[0]);
        for (const [i, to] of pixels.slice(1).entries()) {
          const from = pixels[i]!;
          for (const share of [0.25, 0.5, 0.75, 1]) await touch('touchMove', { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share });
        }
        await touch('touchEnd');
      }
    });
    await tool(page, 'Pick up').tap();
    const at = await placeOf(page, 1.5, 0.5);
    await touch('touchStart', at);
    await touch('touchEnd');
    await eventually(() => swatch(page, 'Chalk').getAttribute('aria-pressed')).toBe('true');
    await symmetry(page).tap();
    await page.locator('.symmetry', { hasText: 'Both ways' }).tap();
    await eventually(() => symmetry(page).textContent()).toBe('Symmetry: Both ways');
    expect(complaints).toEqual([]);
    await context.close();
  });

  test('by keys', async ({ page }) => {
    await useAll(page, async (_, { keys }) => {
      await table(page).focus();
      for (const key of ['Escape', 'Home', 'PageUp', 's', ...keys]) await page.keyboard.press(key);
    });
    for (const key of ['Home', 'PageUp', 'p', 'Space']) await page.keyboard.press(key);
    await eventually(() => swatch(page, 'Chalk').getAttribute('aria-pressed')).toBe('true');
    await page.keyboard.press('m');
    await eventually(() => heard(page)).toBe('Symmetry: left and right.');
  });
});

describe('a block drawn with symmetry', () => {
  test('has its 24 patches in far fewer than 40 actions, and a proven pattern', async ({ page }) => {
    await openBlock(page, { cells: 6 });
    let actions = 0;
    const act = async (done: Promise<unknown>): Promise<void> => {
      actions++;
      await done;
    };
    await act(symmetry(page).click());
    await act(page.locator('.symmetry', { hasText: 'Every way' }).click());
    await act(tool(page, 'Half-square').click());
    await act(swatch(page, 'Chalk').click());
    await act(click(page, 1.2, 0.2));
    await act(click(page, 2.8, 1.8));
    await act(tool(page, 'Square').click());
    await act(swatch(page, 'Lamp').click());
    await act(click(page, 0.5, 0.5));
    await act(click(page, 2.5, 2.5));
    await eventually(() => table(page).getAttribute('data-patches')).toBe('24');
    expect(actions).toBeLessThan(40);
    const rows = await drawingInWords(page);
    expect(rows[0]).toBe('Column 1: Lamp. Column 2: Chalk top left, Marram bottom right. Columns 3 to 4: Marram. Column 5: Chalk top right, Marram bottom left. Column 6: Lamp.');
    expect(rows[5]).toBe('Column 1: Lamp. Column 2: Marram top right, Chalk bottom left. Columns 3 to 4: Marram. Column 5: Marram top left, Chalk bottom right. Column 6: Lamp.');
    await sheetIsCurrent(page);
    expect(await sheet(page).textContent()).toMatch(/Sewn back in exact arithmetic: \d+ seams, all straight, equal to the drawing/);
    // Two clicks of the hand, two things to undo.
    await page.keyboard.press('Control+z');
    await eventually(() => table(page).getAttribute('data-patches')).toBe('20');
  });

  test('is chosen from pictures that everybody can read', async ({ page }) => {
    const broken = async (): Promise<string[]> =>
      (await axe(page).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze()).violations.map(({ id, nodes }) =>
        `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
      );
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      await openBlock(page);
      await symmetry(page).click();
      await eventually(() => page.getByRole('radio', { name: 'None' }).evaluate((radio) => radio === document.activeElement)).toBe(true);
      // By the arrow keys one goes on choosing; the panel stays.
      await page.keyboard.press('ArrowDown');
      await eventually(() => page.getByRole('radio', { name: 'Left and right' }).isChecked()).toBe(true);
      expect(await broken()).toEqual([]);
      await page.keyboard.press('ArrowUp');
      await page.keyboard.press('Escape');
      await eventually(() => symmetry(page).textContent()).toBe('Symmetry');
      await page.getByRole('button', { name: 'Swap Chalk' }).click();
      await page.getByRole('dialog').waitFor();
      expect(await broken()).toEqual([]);
      await page.keyboard.press('Escape');
    }
  });

  test('says why a symmetry cannot be had', async ({ page }) => {
    await openBlock(page);
    await page.getByRole('button', { name: 'New' }).click();
    const dialog = page.getByRole('dialog', { name: 'A new block' });
    await dialog.getByLabel('Columns').fill('5');
    await dialog.getByRole('button', { name: 'Lay it out' }).click();
    await eventually(() => table(page).getAttribute('data-grid')).toMatch(/^5 /);
    await symmetry(page).click();
    const panel = page.getByRole('group', { name: /Symmetry: done here/ });
    await eventually(() => panel.textContent()).toContain('need a square block with the same lines across and down');
    expect(await panel.getByRole('radio', { name: 'Quarter turns' }).isDisabled()).toBe(true);
    expect(await panel.getByRole('radio', { name: 'Half turn' }).isDisabled()).toBe(false);
  });
});

describe('cloth that lies there', () => {
  test('is filled as far as its seams; with Shift, one patch of it; and picked up with Alt or the right button', async ({ page }) => {
    await openBlock(page, QUARTER);
    await swatch(page, 'Lamp').click();
    await tool(page, 'Seam').click();
    await stroke(page, [0, 1], [2, 1]);
    await eventually(() => table(page).getAttribute('data-patches')).toBe('2');
    await tool(page, 'Fill').click();
    await click(page, 0.5, 0.5);
    await eventually(() => drawingInWords(page)).toEqual(['Columns 1 to 2: Lamp. Columns 3 to 4: Marram.', ...ROWS.slice(1)]);
    await swatch(page, 'Marram').click();
    await page.keyboard.down('Shift');
    await click(page, 0.5, 1.5);
    await page.keyboard.up('Shift');
    await eventually(async () => (await drawingInWords(page))[1]).toBe('Columns 1 to 4: Marram.');
    const at = await placeOf(page, 0.5, 0.5);
    await page.mouse.click(at.x, at.y, { button: 'right' });
    await eventually(() => swatch(page, 'Lamp').getAttribute('aria-pressed')).toBe('true');
    await page.keyboard.down('Alt');
    await click(page, 3.5, 3.5);
    await page.keyboard.up('Alt');
    await eventually(() => swatch(page, 'Marram').getAttribute('aria-pressed')).toBe('true');
  });

  test('takes another fabric throughout: two change places, or one replaces the other', async ({ page }) => {
    await openBlock(page, QUARTER);
    await swatch(page, 'Chalk').click();
    const swap = page.getByRole('dialog', { name: 'Swap Chalk throughout' });
    await page.getByRole('button', { name: 'Swap Chalk' }).click();
    await swap.getByRole('radio', { name: 'Marram', exact: true }).check();
    await swap.getByRole('button', { name: 'Swap' }).click();
    await eventually(async () => (await drawingInWords(page))[0]).toBe('Columns 1 to 2: Marram. Columns 3 to 4: Chalk.');
    await page.getByRole('button', { name: 'Swap Chalk' }).click();
    await swap.getByRole('radio', { name: 'Lamp', exact: true }).check();
    await swap.getByRole('radio', { name: 'Lamp takes the place of Chalk, and keeps its own' }).check();
    await swap.getByRole('button', { name: 'Swap' }).click();
    await eventually(async () => (await drawingInWords(page))[0]).toBe('Columns 1 to 2: Marram. Columns 3 to 4: Lamp.');
  });
});
