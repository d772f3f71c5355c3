import type { Page } from 'playwright';
import { describe } from 'vitest';
import { unpainted } from '../block/drawn.ts';
import { appAddress, expect, test, visit } from './browser.ts';
import { click, drawingInWords, eventually, openBlock, swatch, table } from './on-the-table.ts';

const keptWords = 'Kept in this browser';
const shelf = (page: Page) => page.getByRole('dialog', { name: 'Shelf' });
const lines = (page: Page) => shelf(page).getByRole('region', { name: keptWords }).getByRole('listitem');
const names = (page: Page) => lines(page).locator('.shelf-name').allTextContents();
const said = (page: Page) => shelf(page).locator('.shelf-said').first();

const focused = (page: Page) => page.evaluate(() => document.activeElement?.textContent);

async function openShelf(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Shelf' }).click();
  await shelf(page).waitFor();
}

async function untilKept(page: Page): Promise<void> {
  await page.mouse.move(5, 5);
  await eventually(() => page.locator('.here').textContent()).toBe(keptWords);
}

describe('the shelf', () => {
  test('holds one drawing beside the other, each with its own past', async ({ page }) => {
    await openBlock(page, { name: 'Slipway' });
    await swatch(page, 'Lamp').click();
    await click(page, 0.5, 0.5);
    await openBlock(page, { name: 'Sail loft' });
    await eventually(() => page.locator('.notice').textContent()).toContain('“Sail loft” is on the table.');
    await swatch(page, 'Chalk').click();
    await click(page, 1.5, 1.5);
    await eventually(() => page.locator('.notice').count()).toBe(0);
    await click(page, 2.5, 1.5);
    await openShelf(page);
    await eventually(() => names(page)).toEqual(['Sail loft', 'Slipway']);
    await eventually(() => lines(page).locator('img').count()).toBe(2);
    await lines(page).getByRole('button', { name: 'Slipway', exact: true }).click();
    await eventually(() => table(page).getAttribute('aria-label')).toContain('Slipway');
    await eventually(() => page.getByRole('dialog').count()).toBe(0);
    expect((await drawingInWords(page))[0]).toContain('Lamp');
    const undo = page.getByRole('button', { name: 'Undo' });
    await undo.click();
    await eventually(() => table(page).getAttribute('data-patches')).toBe('0');
    expect(await undo.isDisabled()).toBe(true);
    await page.getByRole('button', { name: 'Redo' }).click();
    await eventually(() => table(page).getAttribute('data-patches')).toBe('1');
    // What lies on the table is there again after the page is loaded anew, though another was saved later.
    await untilKept(page);
    await page.reload();
    await eventually(() => table(page).getAttribute('aria-label')).toContain('Slipway');
    await openShelf(page);
    await lines(page).getByRole('button', { name: 'Sail loft', exact: true }).click();
    await eventually(() => table(page).getAttribute('data-patches')).toBe('2');
  });

  test('renames, duplicates, puts away and brings back, also after the page is loaded anew', async ({ page }) => {
    await openBlock(page, { name: 'Slipway' });
    await openBlock(page, { name: 'Sail loft' });
    await openShelf(page);
    await eventually(() => names(page)).toEqual(['Sail loft', 'Slipway']);

    await shelf(page).getByRole('button', { name: 'Rename Slipway' }).click();
    await shelf(page).getByLabel('New name for Slipway').fill('Old slipway');
    await page.keyboard.press('Enter');
    await eventually(() => names(page)).toEqual(['Old slipway', 'Sail loft']);
    await eventually(() => said(page).textContent()).toContain('“Old slipway”');
    await eventually(() => focused(page)).toBe('Old slipway');

    await shelf(page).getByRole('button', { name: 'Rename Sail loft' }).click();
    await page.keyboard.press('Escape');
    expect(await shelf(page).getByLabel('New name for Sail loft').count()).toBe(0);
    expect(await shelf(page).count()).toBe(1);
    expect(await focused(page)).toBe('Rename');

    await shelf(page).getByRole('button', { name: 'Duplicate Old slipway' }).click();
    await eventually(() => names(page)).toEqual(['Old slipway again', 'Old slipway', 'Sail loft']);

    await shelf(page).getByRole('button', { name: 'Put away Old slipway', exact: true }).click();
    await eventually(() => names(page)).toEqual(['Old slipway again', 'Sail loft']);
    await eventually(() => focused(page)).toBe('Bring back');
    await said(page).getByRole('button', { name: 'Bring back' }).click();
    await eventually(async () => (await names(page)).toSorted()).toEqual(['Old slipway', 'Old slipway again', 'Sail loft']);

    await shelf(page).getByRole('button', { name: 'Put away Old slipway again' }).click();
    await eventually(async () => (await names(page)).toSorted()).toEqual(['Old slipway', 'Sail loft']);
    await page.reload();
    await openShelf(page);
    await eventually(async () => (await names(page)).toSorted()).toEqual(['Old slipway', 'Sail loft']);
    await shelf(page).getByText('Put away (1)').click();
    await shelf(page).getByRole('button', { name: 'Bring back Old slipway again' }).click();
    await eventually(async () => (await names(page)).toSorted()).toEqual(['Old slipway', 'Old slipway again', 'Sail loft']);
  });

  test('puts away the drawing on the table, and lays the next one there', async ({ page }) => {
    await openBlock(page, { name: 'Slipway' });
    await openBlock(page, { name: 'Sail loft' });
    await openShelf(page);
    await shelf(page).getByRole('button', { name: 'Put away Sail loft' }).click();
    await eventually(() => names(page)).toEqual(['Slipway']);
    await eventually(() => table(page).getAttribute('aria-label')).toContain('Slipway');
    await shelf(page).getByRole('button', { name: 'Put away Slipway' }).click();
    await eventually(() => table(page).getAttribute('aria-label')).toContain('New block');
    await shelf(page).getByText('Put away (2)').click();
    await shelf(page).getByRole('button', { name: 'Empty' }).click();
    await shelf(page).getByRole('button', { name: 'Forget for good' }).click();
    await eventually(() => shelf(page).getByText(/^Put away \(/).count()).toBe(0);
    await eventually(() => names(page)).toEqual(['New block']);
  });

  test('of a hundred drawings shows pictures where they are looked at, and finds one by name', async ({ page }) => {
    await openBlock(page, { name: 'Slipway' });
    await untilKept(page);
    await page.evaluate(
      (block) =>
        new Promise<void>((done, fail) => {
          const opening = indexedDB.open('piecewright');
          opening.onerror = () => fail(new Error('not opened'));
          opening.onsuccess = () => {
            const transaction = opening.result.transaction(['drawings', 'cards'], 'readwrite');
            for (let i = 1; i <= 100; i++) {
              const facts = { id: `seeded ${i}`, version: 1, savedAt: i };
              const named = { ...block, name: `Tide table ${i}` };
              transaction.objectStore('drawings').put({ ...facts, work: { block: named, history: { done: [], undone: [] } } });
              transaction.objectStore('cards').put({ ...facts, name: named.name, finished: named.finished, grid: named.grid });
            }
            transaction.oncomplete = () => {
              opening.result.close();
              done();
            };
          };
        }),
      unpainted(4, 4),
    );
    await openShelf(page);
    await eventually(() => names(page)).toHaveLength(60);
    await eventually(() => lines(page).locator('img').count()).toBeGreaterThan(2);
    await page.waitForTimeout(1000);
    expect(await lines(page).locator('img').count()).toBeLessThan(30);
    await shelf(page).getByRole('button', { name: 'Show 41 older ones' }).click();
    await eventually(() => names(page)).toHaveLength(101);
    await shelf(page).getByLabel('Look for').fill('table 77');
    await eventually(() => names(page)).toEqual(['Tide table 77']);
    expect(await shelf(page).textContent()).toContain('1 of 101 drawings');
  });
});

describe('what the browser does not keep', () => {
  test('is said in a sentence, and stays while the page is open', async ({ page, visitor }) => {
    await openBlock(page, { name: 'Slipway' });
    await untilKept(page);
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('no room', 'QuotaExceededError');
      };
    });
    await click(page, 0.5, 0.5);
    await eventually(() => page.locator('.alert').textContent()).toContain("The browser's storage is full");
    await openBlock(page, { name: 'Sail loft' });
    await openShelf(page);
    await eventually(() => names(page)).toContain('Slipway');
    await lines(page).getByRole('button', { name: 'Slipway', exact: true }).click();
    await eventually(() => table(page).getAttribute('aria-label')).toContain('Slipway');
    expect(await table(page).getAttribute('data-patches')).toBe('1');
    expect(visitor.complaints).toEqual([]);
  });
});

describe('two windows on one drawing', () => {
  test('tell of each other, and what one has done can be taken up in the other', async ({ browser }) => {
    const { context, page, complaints } = await visit(browser);
    await page.goto(appAddress());
    await openBlock(page);
    await untilKept(page);
    const other = await context.newPage();
    await other.goto(appAddress());
    await eventually(() => table(other).getAttribute('aria-label')).toContain('Boat shed');
    await click(other, 0.5, 0.5);
    await eventually(() => page.locator('.notice').textContent()).toContain('Another window has changed this drawing');
    await page.getByRole('button', { name: 'Show the change' }).click();
    await eventually(() => table(page).getAttribute('data-patches')).toBe('1');
    await click(page, 1.5, 1.5);
    await eventually(() => other.locator('.notice').textContent()).toContain('Another window');
    await openShelf(page);
    await eventually(() => names(page)).toEqual(['Boat shed']);
    expect(complaints).toEqual([]);
    await context.close();
  });
});
