import type { Locator, Page } from 'playwright';
import { describe } from 'vitest';
import { axe } from './axe.ts';
import { appAddress, expect, test, visit } from './browser.ts';
import { cutsOf, eventually, openBlock, placeOf, sheet, sheetIsCurrent, table } from './on-the-table.ts';

const CORNERS = [[0, 0, 1, 1], [3, 0, -1, 1], [3, 3, -1, -1], [0, 3, 1, -1]] as const;

/** Shoo Fly on the table: Chalk corners, a Lamp in the middle, the rest Marram. */
async function shooFly(page: Page): Promise<void> {
  await openBlock(page, {
    patches: [
      ...CORNERS.map(([x, y, dx, dy]) => ({ fabric: 'chalk', points: [[x, y], [x + dx, y], [x, y + dy]] as const })),
      { fabric: 'lamp', points: [[1, 1], [2, 1], [2, 2], [1, 2]] },
    ],
  });
  await sheetIsCurrent(page);
}

const card = (page: Page, fabric: string): Locator => page.getByRole('region', { name: fabric, exact: true });

/** What a fabric's card says is to be bought: "buy 1/8 yd". */
const toBuy = async (page: Page, fabric: string): Promise<string> => (await card(page, fabric).locator('.buy').textContent())!.trim();

/** Unfolds where a fabric is cut from. @returns what then can be chosen */
async function cutFrom(page: Page, fabric: string): Promise<Locator> {
  await card(page, fabric).getByRole('button', { name: 'Cut from' }).click();
  const choices = page.getByRole('group', { name: `Where ${fabric} is cut from` });
  await choices.waitFor();
  return choices;
}

async function blocks(page: Page, count: number): Promise<void> {
  await page.getByRole('spinbutton', { name: 'Blocks' }).fill(String(count));
  await page.keyboard.press('Enter');
  await eventually(() => cutsOf(page, 'Lamp')).toEqual([expect.stringContaining(`${count} square`)]);
}

/** @returns the pieces in a fabric's pictures, by line of the cutting list */
const drawnPieces = (page: Page, fabric: string): Promise<Record<string, number>> =>
  card(page, fabric)
    .locator('path[data-cut]')
    .evaluateAll((paths) => {
      const counts: Record<string, number> = {};
      for (const path of paths) counts[path.getAttribute('data-cut')!] = (counts[path.getAttribute('data-cut')!] ?? 0) + path.getAttribute('d')!.split('M').length - 1;
      return counts;
    });

describe('where a fabric is cut from', () => {
  test('a fat quarter instead of a length changes what to buy, and undoing brings the length back', async ({ page }) => {
    await shooFly(page);
    // One square of 4 1/2 in.: an eighth of a yard is 4 1/2 in.
    expect(await toBuy(page, 'Lamp')).toBe('buy 1/8 yd');
    const choices = await cutFrom(page, 'Lamp');
    await choices.getByRole('combobox', { name: 'Cut from' }).selectOption({ label: 'fat quarters' });
    await eventually(() => toBuy(page, 'Lamp')).toBe('buy 1 fat quarter');
    // Half of 42 in. by half a yard.
    expect(await choices.getByRole('textbox', { name: 'Each across' }).inputValue()).toBe('21 in.');
    await page.getByRole('button', { name: 'Undo' }).click();
    await eventually(() => toBuy(page, 'Lamp')).toBe('buy 1/8 yd');
  });

  test('what she has is used first, and what is not enough is bought', async ({ page }) => {
    await shooFly(page);
    await blocks(page, 12);
    // Twelve squares of 4 1/2: nine to a strip of 42 in., two strips, 9 in.
    await eventually(() => toBuy(page, 'Lamp')).toBe('buy 1/4 yd');
    const choices = await cutFrom(page, 'Lamp');
    const type = async (pieces: string, across: string, along: string): Promise<void> => {
      await choices.getByRole('textbox', { name: 'Pieces', exact: true }).fill(pieces);
      await choices.getByRole('textbox', { name: 'Across', exact: true }).fill(across);
      await choices.getByRole('textbox', { name: 'Along', exact: true }).fill(along);
      await choices.getByRole('button', { name: 'Add' }).click();
    };
    await type('1', '13 1/2', '4½ in');
    // Three of the twelve: the other nine are one strip.
    await eventually(() => toBuy(page, 'Lamp')).toBe('buy 1/8 yd');
    await type('3', '13.5', '4.5');
    await eventually(() => toBuy(page, 'Lamp')).toBe('buy nothing');
    await choices.getByRole('button', { name: /^Take 3 of 13 1\/2/ }).click();
    await eventually(() => toBuy(page, 'Lamp')).toBe('buy 1/8 yd');
  });

  test('a length that is none gets one sentence, and nothing is changed', async ({ page }) => {
    await shooFly(page);
    const choices = await cutFrom(page, 'Lamp');
    const width = choices.getByRole('textbox', { name: 'Usable width' });
    await width.fill('forty');
    await width.press('Enter');
    await eventually(() => choices.getByRole('alert').allTextContents()).toEqual(['“forty” is not a length: write it like 6 1/2, 6.5 or 16,5 cm.']);
    expect(await width.getAttribute('aria-invalid')).toBe('true');
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    await width.fill('0');
    await width.press('Enter');
    await eventually(() => choices.getByRole('alert').allTextContents()).toEqual([expect.stringContaining('must be more than 0')]);
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    await width.press('Escape');
    await eventually(() => choices.getByRole('alert').count()).toBe(0);
    expect(await width.inputValue()).toBe('42 in.');
  });
});

describe('how many blocks', () => {
  test('is typed digit by digit and taken as a whole: undoing it once brings back the one before', async ({ page }) => {
    await shooFly(page);
    const field = page.getByRole('spinbutton', { name: 'Blocks' });
    await field.focus();
    await page.keyboard.type('120');
    await eventually(() => cutsOf(page, 'Lamp')).toEqual([expect.stringContaining('120 squares')]);
    await field.fill('0');
    await eventually(() => sheet(page).getByRole('alert').allTextContents()).toEqual(['1 to 10000 blocks']);
    await field.blur();
    await eventually(() => field.inputValue()).toBe('120');
    await page.getByRole('button', { name: 'Undo' }).click();
    await eventually(() => cutsOf(page, 'Lamp')).toEqual([expect.stringContaining('1 square')]);
  });
});

describe('the cloth of all fabrics', () => {
  test('a margin, squaring up and longer steps of the shop make what is bought more', async ({ page }) => {
    await shooFly(page);
    await page.getByRole('button', { name: 'Cloth and shop' }).click();
    const rules = page.getByRole('group', { name: 'For the cloth of all fabrics' });
    const spare = rules.getByRole('textbox', { name: 'To spare' });
    await spare.fill('10 %');
    await spare.press('Enter');
    await eventually(() => toBuy(page, 'Lamp')).toBe('buy 1/4 yd');
    expect(await card(page, 'Lamp').locator('.takes').textContent()).toContain('10 % to spare');
    await rules.getByRole('combobox', { name: 'Shops sell by' }).selectOption({ label: '1/2 yd' });
    await eventually(() => toBuy(page, 'Lamp')).toBe('buy 1/2 yd');
    const width = rules.getByRole('textbox', { name: 'Usable width' });
    await width.fill('100 cm');
    await width.press('Enter');
    // 100 / 2.54 in., exactly.
    await eventually(() => width.inputValue()).toBe('39 47/127 in.');
  });
});

describe('the picture of a cloth', () => {
  test('has every piece of the cutting list', async ({ page }) => {
    await shooFly(page);
    await blocks(page, 5);
    await page.getByRole('button', { name: 'All layouts' }).click();
    for (const fabric of ['Marram', 'Chalk', 'Lamp']) {
      await card(page, fabric).getByRole('img').waitFor();
      const listed: Record<string, number> = {};
      for (const line of await card(page, fabric).locator('.cuts > li').all()) {
        const id = (await line.getAttribute('data-line'))!.replace('cut ', '');
        listed[id] = Number(await line.locator('.quantity').textContent());
      }
      expect(Object.keys(listed).length).toBeGreaterThan(0);
      expect(await drawnPieces(page, fabric)).toEqual(listed);
    }
  });

  test('draws strips that come often once, and says how many there are', async ({ page }) => {
    await shooFly(page);
    await blocks(page, 90);
    await card(page, 'Lamp').getByRole('button', { name: 'Layout' }).click();
    // Nine squares to a strip: ten strips, one of them drawn.
    await eventually(() => drawnPieces(page, 'Lamp')).toEqual({ 4: 9 });
    expect(await card(page, 'Lamp').locator('.more').textContent()).toBe('9 more strips like it');
    expect(await card(page, 'Lamp').locator('.cutting-order > li').allTextContents()).toEqual([expect.stringMatching(/^110 strips 4 1\/2 in\. wide, from each: 9 squares 4 1\/2 in\./)]);
  });

  test('lights up the patches that its pieces become, by pointer and back from the drawing', async ({ page }) => {
    await shooFly(page);
    await card(page, 'Chalk').getByRole('button', { name: 'Layout' }).click();
    const piece = card(page, 'Chalk').locator('path[data-cut]').first();
    await piece.hover();
    // The four corners.
    await eventually(() => table(page).getAttribute('data-lit')).toBe('4');
    await eventually(() => card(page, 'Chalk').locator('.cuts > li').first().getAttribute('data-lit')).toBe('true');
    await piece.click();
    await page.mouse.move(5, 5);
    expect(await table(page).getAttribute('data-lit')).toBe('4');
    await piece.click();
    await page.mouse.move(5, 5);
    await eventually(() => table(page).getAttribute('data-lit')).toBe('0');
    const at = await placeOf(page, 0.3, 0.3);
    await page.mouse.move(at.x, at.y);
    await eventually(() => piece.getAttribute('data-marked')).toBe('true');
  });

  test('is one stop for the Tab key; arrow keys go from piece to piece, and Enter keeps one lit', async ({ page }) => {
    await shooFly(page);
    await card(page, 'Marram').getByRole('button', { name: 'Layout' }).click();
    const lamps = card(page, 'Marram').locator('.cutting-order .lamp');
    await eventually(() => lamps.count()).toBeGreaterThan(1);
    await lamps.first().focus();
    const first = Number(await table(page).getAttribute('data-lit'));
    expect(first).toBeGreaterThan(0);
    await page.keyboard.press('End');
    expect(await lamps.last().evaluate((lamp) => lamp === document.activeElement)).toBe(true);
    expect(await lamps.evaluateAll((all) => all.filter((lamp) => (lamp as HTMLElement).tabIndex === 0).length)).toBe(1);
    await page.keyboard.press('Enter');
    expect(await lamps.last().getAttribute('aria-pressed')).toBe('true');
    await page.keyboard.press('Tab');
    expect(await card(page, 'Marram').locator('.cutting-order :focus').count()).toBe(0);
    expect(Number(await table(page).getAttribute('data-lit'))).toBeGreaterThan(0);
  });
});

describe('the cutting room, for everyone', () => {
  const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
  for (const [width, colorScheme] of [[360, 'light'], [1280, 'dark']] as const) {
    test(`breaks no accessibility rule unfolded, ${width} px wide in ${colorScheme}, and nothing lies beside the page`, async ({ browser }) => {
      const { context, page, complaints } = await visit(browser, { colorScheme, viewport: { width, height: 800 }, reducedMotion: 'reduce' });
      await page.goto(appAddress());
      await shooFly(page);
      await page.getByRole('button', { name: 'Cloth and shop' }).click();
      await page.getByRole('button', { name: 'All layouts' }).click();
      const choices = await cutFrom(page, 'Lamp');
      await choices.getByRole('textbox', { name: 'Across', exact: true }).fill('ten');
      await choices.getByRole('button', { name: 'Add' }).click();
      await choices.getByRole('alert').waitFor();
      await eventually(() => sheet(page).getByRole('img').count()).toBeGreaterThan(2);
      const { violations } = await axe(page).withTags(RULES).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      expect(complaints).toEqual([]);
      await context.close();
    });
  }
});
