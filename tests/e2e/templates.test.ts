import { readFileSync } from 'node:fs';
import type { Page } from 'playwright';
import { describe } from 'vitest';
import { readFaces } from '../../src/cli/faces.ts';
import { parseBlock } from '../../src/files/block-file.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import { settingIn } from '../../src/pattern/pages/face.ts';
import { pagesPdf } from '../../src/pattern/pages/page-pdf.ts';
import type { Paper } from '../../src/pattern/pages/paper.ts';
import { templatePages } from '../../src/pattern/pages/template-pages.ts';
import { axe } from './axe.ts';
import { appAddress, expect, test, visit } from './browser.ts';
import { eventually, openFile, sheetIsCurrent, table } from './on-the-table.ts';

const FILE = readFileSync('demo-blocks/13-kittiwake-point.block.json', 'utf8');
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** The same pages as the terminal writes them. */
async function writtenHere(paper: Paper): Promise<Buffer> {
  const block = parseBlock(FILE);
  if (!block.ok) throw new Error(block.problem.sentence);
  const pattern = makePattern(block.value);
  if (!pattern.ok) throw new Error(pattern.problem.sentence);
  const faces = await readFaces();
  return Buffer.from(await pagesPdf(templatePages(pattern.value, paper, settingIn(faces)), faces));
}

const sheetOfTemplates = (page: Page) => page.getByRole('dialog', { name: 'Templates' });

async function askForTemplates(page: Page): Promise<void> {
  await openFile(page, FILE);
  await eventually(() => table(page).getAttribute('aria-label')).toContain('Kittiwake Point');
  await sheetIsCurrent(page);
  await page.getByRole('button', { name: 'Print templates' }).press('Enter');
  await sheetOfTemplates(page).getByRole('img').first().waitFor();
}

async function saved(page: Page, button: string): Promise<{ name: string; content: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent('download'), sheetOfTemplates(page).getByRole('button', { name: button }).press('Enter')]);
  return { name: download.suggestedFilename(), content: readFileSync(await download.path()) };
}

describe('templates on the screen', () => {
  test('are shown page by page, and saved as the same bytes that the terminal writes', async ({ browser }) => {
    const { context, page, complaints } = await visit(browser, { acceptDownloads: true });
    await page.goto(appAddress());
    await askForTemplates(page);
    await eventually(() => sheetOfTemplates(page).getByRole('img').count()).toBe(2);
    expect(await sheetOfTemplates(page).getByRole('img').first().getAttribute('aria-label')).toMatch(/^Page 1: templates T1, /);
    const letter = await saved(page, 'Save PDF');
    expect(letter.name).toBe('kittiwake-point-templates.pdf');
    expect(letter.content.equals(await writtenHere('letter'))).toBe(true);
    await eventually(() => sheetOfTemplates(page).getByRole('status').textContent()).toContain('among your downloads');
    await sheetOfTemplates(page).getByLabel('Paper').selectOption('a4');
    await eventually(() => sheetOfTemplates(page).getByRole('img').first().getAttribute('viewBox')).toMatch(/595\.27559|841\.88976/);
    expect((await saved(page, 'Save PDF')).content.equals(await writtenHere('a4'))).toBe(true);
    const drawing = await saved(page, 'Save page 1 as drawing (SVG)');
    expect(drawing.name).toBe('kittiwake-point-templates-1.svg');
    expect(drawing.content.toString()).toContain('cut line T1');
    await page.keyboard.press('Escape');
    await eventually(() => page.getByRole('dialog').count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Print templates');
    expect(complaints).toEqual([]);
    await context.close();
  });

  test('break no accessibility rule on a phone in the dark', async ({ browser }) => {
    const { context, page, complaints } = await visit(browser, { colorScheme: 'dark', viewport: { width: 360, height: 800 }, reducedMotion: 'reduce' });
    await page.goto(appAddress());
    await askForTemplates(page);
    const { violations } = await axe(page).withTags(RULES).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    expect(complaints).toEqual([]);
    await context.close();
  });
});
