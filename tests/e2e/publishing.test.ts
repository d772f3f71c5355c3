import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright';
import { describe } from 'vitest';
import { onItsSide } from '../block/photo.ts';
import { inside } from '../cli/program.ts';
import { axe } from './axe.ts';
import { appAddress, expect, test, visit } from './browser.ts';
import { click, eventually, openBlock, sheetIsCurrent } from './on-the-table.ts';

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** A drawing with a script, and with something from elsewhere. */
const GULL =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20"><script>window.planted = true</script>' +
  '<image href="http://elsewhere.invalid/a.png" width="9" height="9"/><path fill="#357" d="M0 5l20 9 20-9-20 13z"/></svg>';

/** Three half-square triangles, a square, and ground. */
const SAIL = {
  name: 'Boat shed',
  patches: [
    { fabric: 'lamp', points: [[0, 0], [1, 0], [0, 1]] },
    { fabric: 'lamp', points: [[1, 0], [2, 0], [1, 1]] },
    { fabric: 'chalk', points: [[1, 1], [2, 1], [2, 2], [1, 2]] },
  ],
} as const;

const room = (page: Page): Locator => page.getByRole('dialog', { name: /^Publish/ });
const count = (page: Page): Locator => room(page).getByRole('status').first();
const choices = (page: Page, name: string): Locator => room(page).locator('summary').filter({ hasText: name });
/** Of the pages that are in view. */
const textOn = (page: Page) => room(page).locator('.page-picture text').allTextContents().then((lines) => lines.join(' '));

const alerts = (page: Page): Promise<string[]> => room(page).getByRole('alert').allTextContents();

async function openRoom(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Publish' }).press('Enter');
  await eventually(() => count(page).textContent()).toMatch(/^\d+ pages$/);
}

/** Goes to the page on which a section begins. @returns the sentences of that page */
async function goTo(page: Page, section: string): Promise<Locator> {
  // Where there is no room for both, pages and choices are shown by turns.
  const turn = room(page).getByRole('button', { name: 'Choices', exact: true });
  if (await turn.isVisible()) await turn.press('Enter');
  const button = room(page).getByRole('button', { name: `${section}: go to page` });
  const number = await button.textContent();
  await button.press('Enter');
  const sentences = room(page).getByRole('listbox', { name: `Sentences of page ${number}`, exact: true });
  await sentences.waitFor();
  return sentences;
}

/** Opens the sentence that begins so, by keys. @returns the field it is worded in */
async function openSentence(page: Page, section: string, begins: string): Promise<Locator> {
  const sentences = await goTo(page, section);
  await sentences.focus();
  const texts = await sentences.getByRole('option').evaluateAll((all) => all.map((each) => each.getAttribute('aria-label') ?? ''));
  const index = texts.findIndex((text) => text.startsWith(begins));
  expect(index, texts.join('\n')).toBeGreaterThanOrEqual(0);
  await page.keyboard.press('Home');
  for (let i = 0; i < index; i++) await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  const field = room(page).getByLabel('The sentence in your words');
  await field.waitFor();
  return field;
}

async function download(page: Page, button: Locator): Promise<Buffer> {
  const [file] = await Promise.all([page.waitForEvent('download'), button.press('Enter')]);
  return readFileSync(await file.path());
}

describe('the publishing room', () => {
  test('shows the pages as they are printed, takes her words with live measures, and saves what the terminal writes', async ({ browser }) => {
    const { context, page, complaints } = await visit(browser, { acceptDownloads: true, viewport: { width: 1440, height: 900 } });
    await page.addInitScript(() => Object.assign(window, { showSaveFilePicker: undefined, showOpenFilePicker: undefined }));
    await page.goto(appAddress());
    await openBlock(page, SAIL);
    await sheetIsCurrent(page);
    await openRoom(page);
    expect(await textOn(page)).toContain('Boat shed');

    const field = await openSentence(page, 'Units, step by step', 'Pair ');
    const typed = await field.inputValue();
    expect(typed).toContain('{4⅞ in.}');
    await field.fill(`${typed} Mind the {tide}.`);
    await field.press('Enter');
    await eventually(() => alerts(page)).toEqual([expect.stringContaining('“{tide}” is no value of this sentence')]);
    await field.fill('Before high water, pair squares of {4⅞ in.} and sew.');
    await field.press('Enter');
    await eventually(() => textOn(page)).toContain('Before high water, pair squares of 4⅞ in. and sew.');
    // The hand is where it was.
    await eventually(() => page.evaluate(() => document.activeElement?.getAttribute('role'))).toBe('listbox');

    await room(page).getByRole('checkbox', { name: 'Cautions' }).press(' ');
    await eventually(() => room(page).getByRole('button', { name: 'Cautions: go to page' }).count()).toBe(0);

    // Another size and another patch, the pages beside the table.
    await room(page).getByRole('button', { name: 'Beside the table' }).press('Enter');
    await goTo(page, 'Units, step by step');
    await page.getByRole('button', { name: /^Size and grid:/ }).click();
    const size = page.getByRole('dialog', { name: 'Size and grid' });
    for (const side of ['Width', 'Height']) await size.getByLabel(side, { exact: true }).fill('6');
    await size.getByLabel('Height', { exact: true }).press('Enter');
    await eventually(() => textOn(page)).toContain('Before high water, pair squares of 2⅞ in. and sew.');
    await page.keyboard.press('Escape');
    await eventually(() => size.count()).toBe(0);
    const before = await textOn(page);
    await click(page, 2.5, 2.5);
    await eventually(() => textOn(page)).not.toBe(before);
    await room(page).getByRole('button', { name: 'Beside the table' }).press('Enter');

    // What is no picture is told, and nothing changes.
    await room(page).getByLabel('Choose a photo').setInputFiles({ name: 'gull.txt', mimeType: 'text/plain', buffer: Buffer.from('kittiwake') });
    await eventually(() => alerts(page)).toContain('“gull.txt” is no picture that can be read here: choose a PNG, JPEG, WebP or SVG file.');
    await room(page).getByLabel('Choose a photo').setInputFiles({ name: 'gull.svg', mimeType: 'image/svg+xml', buffer: Buffer.from(GULL) });
    await eventually(() => choices(page, 'Your own parts').textContent()).toBe('Your own parts (1)');
    expect(await alerts(page)).toEqual([]);
    expect(await page.evaluate(() => 'planted' in window)).toBe(false);
    await room(page).getByLabel('Choose a photo').setInputFiles({ name: 'gull.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(onItsSide()) });
    await eventually(() => choices(page, 'Your own parts').textContent()).toBe('Your own parts (2)');

    await eventually(() => room(page).getByText('are still looked for').count()).toBe(0);
    const save = room(page).getByRole('button', { name: 'Save PDF' });
    await eventually(() => save.isEnabled()).toBe(true);
    const pdf = await download(page, save);
    await page.keyboard.press('Escape');
    await eventually(() => room(page).count()).toBe(0);
    await eventually(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Publish');
    const file = await download(page, page.getByRole('button', { name: 'Save a copy' }));
    const folder = mkdtempSync(join(tmpdir(), 'piecewright-'));
    writeFileSync(join(folder, 'block.json'), file);
    expect(await inside('pattern', join(folder, 'block.json'), '-o', join(folder, 'pattern.pdf'))).toMatchObject({ exit: 0 });
    expect(pdf.equals(readFileSync(join(folder, 'pattern.pdf')))).toBe(true);
    const { pictures } = (JSON.parse(file.toString()) as { publication: { pictures: { width: number; height: number }[] } }).publication;
    expect(pictures).toMatchObject([{ width: 1000, height: 500 }, { width: 2, height: 3 }]);
    rmSync(folder, { recursive: true });
    expect(complaints).toEqual([]);
    await context.close();
  });

  test('breaks no accessibility rule on a phone in the dark, every part unfolded', async ({ browser }) => {
    const { context, page, complaints } = await visit(browser, { colorScheme: 'dark', viewport: { width: 360, height: 800 }, reducedMotion: 'reduce' });
    await page.goto(appAddress());
    await openBlock(page, SAIL);
    await sheetIsCurrent(page);
    await openRoom(page);
    const broken = async (): Promise<readonly string[]> => {
      const { violations } = await axe(page).withTags(RULES).analyze();
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`);
    };
    await openSentence(page, 'Units, step by step', 'Pair ');
    expect(await broken()).toEqual([]);
    await page.keyboard.press('Escape');
    await eventually(() => room(page).getByLabel('The sentence in your words').count()).toBe(0);
    expect(await room(page).count()).toBe(1);
    await room(page).getByRole('button', { name: 'Choices', exact: true }).press('Enter');
    for (const summary of await room(page).locator('.room-choices summary').all()) {
      if (!(await summary.evaluate((it) => (it.parentElement as HTMLDetailsElement).open))) await summary.press('Enter');
    }
    expect(await broken()).toEqual([]);
    expect(await room(page).evaluate((it) => Math.max(it.scrollWidth, ...[...it.querySelectorAll('.room-body > *')].map((each) => each.scrollWidth)))).toBeLessThanOrEqual(360);
    expect(complaints).toEqual([]);
    await context.close();
  });
});
