import { describe } from 'vitest';
import { axe } from './axe.ts';
import { appAddress, expect, test, visit } from './browser.ts';
import { eventually, openBlock, sheetIsCurrent, viewOf } from './on-the-table.ts';

/** The rules to keep: WCAG 2.2 to level AA, and axe's own good practice. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

const CORNERS = [[0, 0], [1, 0], [0, 1]] as const;

/** A shape that no straight seams leave in one piece. */
const HOOK = [[0, 0], [2, 0], [2, 1], [1, 1], [1, 2], [0, 2]] as const;

describe('the screen, for everyone', () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    for (const width of [360, 1280]) {
      test(`breaks no accessibility rule in ${colorScheme}, ${width} px wide`, async ({ browser }) => {
        const { context, page, complaints } = await visit(browser, {
          colorScheme,
          viewport: { width, height: 800 },
          reducedMotion: 'reduce',
        });
        await page.goto(appAddress());
        await openBlock(page, { patches: [{ fabric: 'chalk', points: CORNERS }] });
        await sheetIsCurrent(page);
        const broken = async (): Promise<string[]> => {
          const { violations } = await axe(page).withTags(RULES).analyze();
          return violations.map(({ id, impact, nodes }) => `${impact} ${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
        };
        expect(await broken()).toEqual([]);
        await openBlock(page, {
          name: 'Pinned',
          patches: [{ fabric: 'chalk', points: CORNERS, whole: true }],
          pins: [{ pin: 'one unit', from: [0, 0], to: [2, 2] }, { pin: 'sewn last', from: [1, 0], to: [1, 3] }],
        });
        await sheetIsCurrent(page);
        await eventually(() => page.locator('.pin-refused').count()).toBe(1);
        expect(await broken()).toEqual([]);
        await openBlock(page, { name: 'Knotted', patches: [{ fabric: 'chalk', points: HOOK, whole: true }] });
        await page.locator('.knot').waitFor();
        expect(await broken()).toEqual([]);
        await page.getByRole('button', { name: 'New' }).click();
        await page.getByRole('dialog').waitFor();
        expect(await broken()).toEqual([]);
        await page.keyboard.press('Escape');
        await page.getByRole('button', { name: 'Add fabric' }).click();
        await page.getByRole('dialog').waitFor();
        expect(await broken()).toEqual([]);
        expect(complaints).toEqual([]);
        await context.close();
      });
    }
  }

  // 200 % zoom of a 1280 × 800 window leaves 640 × 400; the others are a small phone and a very large screen.
  for (const [width, height] of [[360, 640], [390, 844], [640, 400], [900, 700], [1280, 800], [3840, 2160]] as const) {
    test(`fits ${width} × ${height} without scrolling sideways, every target at least 24 px`, async ({ browser }) => {
      const { context, page } = await visit(browser, { viewport: { width, height } });
      await page.goto(appAddress());
      await openBlock(page, { patches: [{ fabric: 'chalk', points: CORNERS }] });
      await sheetIsCurrent(page);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      const small = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('button, select, input:not([type=file])')]
          .filter((element) => element.checkVisibility())
          .map((element) => ({ name: element.textContent || element.ariaLabel || element.className, box: element.getBoundingClientRect() }))
          .filter(({ box }) => box.width < 24 || box.height < 24)
          .map(({ name, box }) => `${name} ${box.width} × ${box.height}`),
      );
      expect(small).toEqual([]);
      const [, , wide, high] = await viewOf(page);
      expect(Math.min(wide, high)).toBeGreaterThan(200);
      await context.close();
    });
  }
});
