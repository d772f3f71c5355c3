import type { Page } from 'playwright';
import { describe } from 'vitest';
import { axe } from './axe.ts';
import { appAddress, expect, test, visit } from './browser.ts';
import { eventually, openBlock, sheet, sheetIsCurrent, swatch } from './on-the-table.ts';

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

const square = (x: number, y: number) => ({ fabric: 'lamp', points: [[x, y], [x + 1, y], [x + 1, y + 1], [x, y + 1]] as const });

/** Six squares of Lamp side by side. */
const SIX = { patches: [0, 1].flatMap((y) => [0, 1, 2].map((x) => square(x, y))) };

/** Takes Lamp up and opens what can be changed about it. */
async function changeLamp(page: Page): Promise<void> {
  await swatch(page, 'Lamp').click();
  await page.getByRole('button', { name: 'Change Lamp' }).click();
  await page.getByRole('dialog', { name: 'Change Lamp' }).waitFor();
}

/** Which piece is of which print, as the sheet's picture has them: row by row, from the left. */
const numbers = (page: Page): Promise<string[]> =>
  page.locator('.spread-number').evaluateAll((all) => {
    const at = (one: Element, name: string): number => Number(one.getAttribute(name));
    return all.sort((a, b) => at(a, 'y') - at(b, 'y') || at(a, 'x') - at(b, 'x')).map((one) => one.textContent);
  });

describe('a fabric of the tray', () => {
  test('stands for scraps of some prints: the sheet asks for squares of each, spreads them, and spreads them otherwise', async ({ visitor }) => {
    const { page } = visitor;
    await page.goto(appAddress());
    await openBlock(page, SIX);
    await sheetIsCurrent(page);
    await changeLamp(page);
    // By keys alone: the box, then how many.
    await page.getByLabel('Stands for scraps of many prints').press('Space');
    await page.getByLabel('How many prints').fill('3');
    await page.keyboard.press('Enter');
    await eventually(() => swatch(page, 'Lamp').textContent()).toContain('3 prints');
    await eventually(() => sheet(page).textContent()).toContain('scraps of 3 prints');
    await eventually(() => page.locator('.prints').textContent()).toMatch(/6 squares 4.1\/2.in\.: 2 of each of 3 prints/);
    const first = await numbers(page);
    expect([...first].sort()).toEqual(['1', '1', '2', '2', '3', '3']);
    // Side by side none is alike: three to a row, two rows.
    for (const [a, b] of [[0, 1], [1, 2], [3, 4], [4, 5], [0, 3], [1, 4], [2, 5]] as const) expect(first[a]).not.toBe(first[b]);
    await page.getByRole('button', { name: 'Another spread of Lamp' }).press('Enter');
    await eventually(async () => (await numbers(page)).join()).not.toBe(first.join());
    await page.getByRole('button', { name: 'Past' }).click();
    const past = page.getByRole('region', { name: 'What was done' });
    await eventually(() => past.textContent()).toContain('spread Lamp otherwise');
    expect(await past.textContent()).toContain('made Lamp scraps of 3 prints');
    await past.getByRole('button', { name: 'made Lamp scraps of 3 prints' }).click();
    await eventually(async () => (await numbers(page)).join()).toBe(first.join());

    // A piece that is pressed keeps its print: by mouse, then another by keys alone.
    const held = page.locator('.spread [aria-selected="true"]');
    const labels = (): Promise<(string | null)[]> => held.evaluateAll((all) => all.map((one) => one.getAttribute('aria-label')));
    await page.locator('.spread [role="option"]').first().click();
    await eventually(labels).toEqual([`Print ${first[0]}, held`]);
    await page.locator('.spread').focus();
    await page.keyboard.press('End');
    await page.keyboard.press('Enter');
    await eventually(async () => (await labels()).length).toBe(2);
    const kept = await numbers(page);
    await page.getByRole('button', { name: 'Another spread of Lamp' }).click();
    await eventually(async () => (await numbers(page)).join()).not.toBe(kept.join());
    expect([(await numbers(page))[0], (await numbers(page))[5]]).toEqual([kept[0], kept[5]]);
    expect((await axe(page).include('.scraps').withTags(RULES).analyze()).violations).toEqual([]);
    await page.getByRole('button', { name: 'Let 2 held prints go of Lamp' }).click();
    await eventually(() => held.count()).toBe(0);
    expect(visitor.complaints).toEqual([]);
  });

  test('has a print with an up and a down: an arrow on its swatch, words for those who listen, and what that means on the sheet', async ({ visitor }) => {
    const { page } = visitor;
    await page.goto(appAddress());
    await openBlock(page, SIX);
    await sheetIsCurrent(page);
    expect(await page.locator('.swatch-up').count()).toBe(0);
    await changeLamp(page);
    await page.getByLabel('Has an up and a down').check();
    await page.getByRole('button', { name: 'Done' }).click();
    await eventually(() => page.locator('.swatch-up').count()).toBe(1);
    expect(await swatch(page, 'Lamp').textContent()).toContain('runs one way');
    await eventually(() => page.locator('.directions').textContent()).toContain('no piece is turned on the cloth');
    expect(visitor.complaints).toEqual([]);
  });

  for (const colorScheme of ['light', 'dark'] as const) {
    for (const width of [360, 1280]) {
      test(`breaks no accessibility rule with scraps in ${colorScheme}, ${width} px wide`, async ({ browser }) => {
        const { context, page, complaints } = await visit(browser, { colorScheme, viewport: { width, height: 800 }, reducedMotion: 'reduce' });
        const broken = async (): Promise<string[]> => {
          const { violations } = await axe(page).withTags(RULES).analyze();
          return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
        };
        await page.goto(appAddress());
        await openBlock(page, SIX);
        await changeLamp(page);
        await page.getByLabel('Has an up and a down').check();
        await page.getByLabel('Stands for scraps of many prints').check();
        expect(await broken()).toEqual([]);
        await page.getByRole('button', { name: 'Done' }).click();
        await page.locator('.spread').waitFor();
        expect(await broken()).toEqual([]);
        expect(complaints).toEqual([]);
        await context.close();
      });
    }
  }
});
