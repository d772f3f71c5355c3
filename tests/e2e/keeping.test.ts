import { readFile } from 'node:fs/promises';
import { describe } from 'vitest';
import { appAddress, expect, test, visit } from './browser.ts';
import {
  blockFile, click, drawingInWords, eventually, openBlock, openFile, sheet, sheetIsCurrent, swatch, table, tool,
} from './on-the-table.ts';

const keptWords = 'Kept in this browser';

describe('nothing is lost', () => {
  test('a reload brings back the drawing and everything that can be undone', async ({ page }) => {
    await openBlock(page);
    await swatch(page, 'Lamp').click();
    await click(page, 0.5, 0.5);
    await click(page, 1.5, 1.5);
    await page.mouse.move(5, 5);
    const before = await drawingInWords(page);
    expect(before[0]).toContain('Lamp');
    await eventually(() => page.locator('.here').textContent()).toBe(keptWords);
    await page.reload();
    await eventually(() => drawingInWords(page)).toEqual(before);
    const undo = page.getByRole('button', { name: 'Undo' });
    await undo.click();
    await undo.click();
    await eventually(async () => (await drawingInWords(page))[0]).toBe('Columns 1 to 3: Marram.');
    // The past is that of this drawing; what lay on the table before it has its own.
    expect(await undo.isDisabled()).toBe(true);
    expect(await table(page).getAttribute('aria-label')).toContain('Boat shed');
  });

  test('a tab closed at once keeps its last stroke', async ({ browser }) => {
    const { context, page, complaints } = await visit(browser);
    await page.goto(appAddress());
    await openBlock(page);
    await click(page, 0.5, 0.5);
    await page.close({ runBeforeUnload: true });
    const again = await context.newPage();
    await again.goto(appAddress());
    await eventually(() => table(again).getAttribute('aria-label')).toContain('Boat shed');
    await eventually(() => table(again).getAttribute('data-patches')).toBe('1');
    expect(complaints).toEqual([]);
    await context.close();
  });

  test('two windows on one drawing do not overwrite each other', async ({ browser }) => {
    const { context, page, complaints } = await visit(browser);
    await page.goto(appAddress());
    await openBlock(page);
    await page.mouse.move(5, 5);
    await eventually(() => page.locator('.here').textContent()).toBe(keptWords);
    const other = await context.newPage();
    await other.goto(appAddress());
    await eventually(() => table(other).getAttribute('aria-label')).toContain('Boat shed');
    await other.getByLabel('Name of the block').fill('Other window');
    await other.getByLabel('Name of the block').press('Enter');
    await eventually(() => other.locator('.here').textContent()).toBe(keptWords);
    await eventually(() => page.locator('.notice').textContent()).toContain('Another window has changed this drawing');
    await click(page, 0.5, 0.5);
    await eventually(() => page.locator('.notice').textContent()).toContain('yours goes on as a drawing of its own');
    await page.mouse.move(5, 5);
    await eventually(() => page.locator('.here').textContent()).toBe(keptWords);
    await page.reload();
    await eventually(() => table(page).getAttribute('data-patches')).toBe('1');
    await page.getByRole('button', { name: 'Shelf' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Other window', exact: true }).click();
    await eventually(() => table(page).getAttribute('aria-label')).toContain('Other window');
    expect(await table(page).getAttribute('data-patches')).toBe('0');
    expect(complaints).toEqual([]);
    await context.close();
  });

  test('a saved file opens again as the same drawing', async ({ page }) => {
    await openBlock(page);
    await swatch(page, 'Chalk').click();
    await tool(page, 'Quarter-square').click();
    await click(page, 0.5, 0.1);
    const before = await drawingInWords(page);
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save', exact: true }).click()]);
    expect(download.suggestedFilename()).toBe('boat-shed.block.json');
    const text = await readFile(await download.path(), 'utf8');
    await openFile(page, blockFile({ name: 'Something else' }));
    await eventually(() => table(page).getAttribute('aria-label')).toContain('Something else');
    await openFile(page, text);
    await eventually(() => drawingInWords(page)).toEqual(before);
  });
});

describe('the sampler', () => {
  test('opens each of its blocks, with a proof that holds, and leaves no unchanged ones on the shelf', async ({ page }) => {
    const open = page.getByRole('button', { name: 'Shelf' });
    const sampler = page.getByRole('dialog').getByRole('region', { name: 'Kittiwake Point sampler' });
    await open.click();
    await sampler.getByRole('listitem').first().waitFor();
    await eventually(() => sampler.locator('.card-picture:empty').count()).toBe(0);
    const names = await sampler.getByRole('listitem').allTextContents();
    expect(names.length).toBeGreaterThan(3);
    await page.keyboard.press('Escape');
    for (const [i, name] of names.entries()) {
      await open.click();
      await eventually(() => sampler.locator('.card-picture:empty').count()).toBe(0);
      await sampler.getByRole('listitem').nth(i).getByRole('button').click();
      await eventually(() => sheet(page).getByRole('heading', { level: 2 }).textContent()).toBe(name);
      await sheetIsCurrent(page);
      expect(await page.locator('[data-proof]').getAttribute('data-proof'), name).toBe('holds');
    }
    await open.click();
    await eventually(() => page.locator('.shelf-line').count()).toBe(1);
    expect(await page.locator('.shelf-line').textContent()).toContain(names.at(-1));
  });
});

describe('a file that is no block', () => {
  const files: readonly (readonly [what: string, text: string | Buffer, sentence: RegExp])[] = [
    ['is not JSON', '{ "format": ', /JSON/],
    ['is another format', '{ "format": "elsewhere/quilt" }', /format/],
    ['comes from the future', '{ "format": "piecewright/block", "version": 99 }', /version/],
    ['paints in a fabric it does not have', blockFile({ patches: [{ fabric: 'silk', points: [[0, 0], [1, 0], [1, 1]] }] }), /silk/],
    ['is 28 MB', Buffer.alloc(28_000_000, ' '), /MB|bytes|large/],
    ['has HTML for a name', blockFile({ name: '<img src=x onerror=alert(1)>', side: '0' }), /finished width/i],
  ];

  for (const [what, text, sentence] of files) {
    test(`${what}: one sentence says so, and the drawing stays`, async ({ page }) => {
      await openBlock(page);
      await click(page, 0.5, 0.5);
      const before = await drawingInWords(page);
      await openFile(page, text);
      const alert = page.locator('.alert');
      await alert.waitFor();
      const said = (await alert.locator('span').first().textContent())!;
      expect(said).toMatch(sentence);
      expect(said).not.toMatch(/\bat \w+ \(|Error:/);
      expect(await drawingInWords(page)).toEqual(before);
      expect(await table(page).getAttribute('data-patches')).toBe('1');
      await alert.getByRole('button', { name: 'Put away' }).click();
      await eventually(() => alert.count()).toBe(0);
    });
  }

  test('dropped on the window, a good one opens', async ({ page }) => {
    await openBlock(page);
    const dropped = await page.evaluateHandle((text) => {
      const data = new DataTransfer();
      data.items.add(new File([text], 'dropped.block.json', { type: 'application/json' }));
      return data;
    }, blockFile({ name: 'Washed up' }));
    await page.dispatchEvent('main', 'dragover', { dataTransfer: dropped });
    await page.dispatchEvent('main', 'drop', { dataTransfer: dropped });
    await eventually(() => table(page).getAttribute('aria-label')).toContain('Washed up');
  });
});
