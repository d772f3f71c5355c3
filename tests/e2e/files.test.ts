import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright';
import { describe } from 'vitest';
import { expect, test } from './browser.ts';
import { blockFile, click, eventually, openBlock, sheetIsCurrent, swatch, table } from './on-the-table.ts';

/** Gives the page files that can be written again: those of the browser's own private folder, in place of the device's. */
async function withDeviceFiles(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const folder = () => navigator.storage.getDirectory();
    let copies = 0;
    Object.assign(window, {
      showSaveFilePicker: async ({ suggestedName }: { suggestedName: string }) =>
        (await folder()).getFileHandle(copies++ === 0 ? suggestedName : `${copies}-${suggestedName}`, { create: true }),
      showOpenFilePicker: async () => [await (await folder()).getFileHandle('drawer.block.json', { create: true })],
    });
  });
  await page.reload();
}

const contentOf = (page: Page, name: string): Promise<string> =>
  page.evaluate(async (of) => (await (await (await navigator.storage.getDirectory()).getFileHandle(of)).getFile()).text(), name);

const writeFile = (page: Page, name: string, text: string): Promise<void> =>
  page.evaluate(async ([of, what]) => {
    const writing = await (await (await navigator.storage.getDirectory()).getFileHandle(of, { create: true })).createWritable();
    await writing.write(what);
    await writing.close();
  }, [name, text] as const);

const notice = (page: Page) => page.locator('.notice > span');

describe('a file on the device', () => {
  test('is saved to again and again, and a copy goes to another', async ({ page }) => {
    await withDeviceFiles(page);
    await openBlock(page);
    await click(page, 0.5, 0.5);
    await page.keyboard.press('Control+s');
    await eventually(() => notice(page).textContent()).toBe('Saved to boat-shed.block.json.');
    const once = await contentOf(page, 'boat-shed.block.json');
    expect(JSON.parse(once).patches).toHaveLength(1);

    await click(page, 1.5, 1.5);
    await page.getByRole('button', { name: 'Save a copy' }).click();
    await eventually(() => notice(page).textContent()).toBe('Saved to 2-boat-shed.block.json.');
    expect(await contentOf(page, 'boat-shed.block.json')).toBe(once);
    expect(JSON.parse(await contentOf(page, '2-boat-shed.block.json')).patches).toHaveLength(2);

    // The drawing knows its own file also after the page is loaded anew.
    await page.mouse.move(5, 5);
    await eventually(() => page.locator('.here').textContent()).toBe('Kept in this browser');
    await page.reload();
    await eventually(() => table(page).getAttribute('data-patches')).toBe('2');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await eventually(() => notice(page).textContent()).toBe('Saved to boat-shed.block.json.');
    expect(JSON.parse(await contentOf(page, 'boat-shed.block.json')).patches).toHaveLength(2);
  });

  test('that was opened is the one that is saved to', async ({ page }) => {
    await withDeviceFiles(page);
    await writeFile(page, 'drawer.block.json', blockFile({ name: 'From the drawer' }));
    await table(page).waitFor();
    await page.keyboard.press('Control+o');
    await eventually(() => table(page).getAttribute('aria-label')).toContain('From the drawer');
    await click(page, 0.5, 0.5);
    // What is being typed is taken before it is saved.
    await page.getByLabel('Name of the block').fill('Out of the drawer');
    await page.keyboard.press('Control+s');
    await eventually(() => notice(page).textContent()).toBe('Saved to drawer.block.json.');
    expect(JSON.parse(await contentOf(page, 'drawer.block.json'))).toMatchObject({ name: 'Out of the drawer', patches: [{}] });
  });

  test('is a download where the browser lets no page write files', async ({ page }) => {
    await page.addInitScript(() => Object.assign(window, { showSaveFilePicker: undefined, showOpenFilePicker: undefined }));
    await page.reload();
    await openBlock(page);
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save a copy' }).click()]);
    expect(download.suggestedFilename()).toBe('boat-shed.block.json');
    await eventually(() => notice(page).textContent()).toBe('boat-shed.block.json is among your downloads.');
    const [chooser] = await Promise.all([page.waitForEvent('filechooser'), page.getByRole('button', { name: 'Open', exact: true }).click()]);
    await chooser.setFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from(blockFile({ name: 'Chosen' })) });
    await eventually(() => table(page).getAttribute('aria-label')).toContain('Chosen');
  });
});

describe('a picture to take away', () => {
  const dialog = (page: Page) => page.getByRole('dialog', { name: 'A picture to take away' });

  test('is an SVG of the finished size', async ({ page }) => {
    await openBlock(page, { side: '10.5' });
    await swatch(page, 'Lamp').click();
    await click(page, 0.5, 0.5);
    await page.getByRole('button', { name: 'Picture' }).click();
    const [download] = await Promise.all([page.waitForEvent('download'), dialog(page).getByRole('button', { name: 'Take it' }).click()]);
    expect(download.suggestedFilename()).toBe('boat-shed.svg');
    const root = await page.evaluate((text) => {
      const parsed = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
      return { name: parsed.localName, width: parsed.getAttribute('width'), height: parsed.getAttribute('height') };
    }, await readFile(await download.path(), 'utf8'));
    expect(root).toEqual({ name: 'svg', width: '10.5in', height: '10.5in' });
    await eventually(() => dialog(page).count()).toBe(0);
  });

  test('is a PNG of as many dots as are asked for, clear where only ground is', async ({ page }) => {
    await openBlock(page, { side: '6' });
    await swatch(page, 'Lamp').click();
    await click(page, 0.5, 0.5);
    await sheetIsCurrent(page);
    await page.getByRole('button', { name: 'Picture' }).click();
    await dialog(page).getByLabel('dots (PNG)').check();
    expect(await dialog(page).getByLabel('Dots across').inputValue()).toBe('1800');
    await dialog(page).getByLabel('Dots across').fill('600');
    expect(await dialog(page).getByLabel('Dots per inch').inputValue()).toBe('100');
    await dialog(page).getByLabel('clear where only ground is').check();
    const [download] = await Promise.all([page.waitForEvent('download'), dialog(page).getByRole('button', { name: 'Take it' }).click()]);
    expect(download.suggestedFilename()).toBe('boat-shed.png');
    const picture = await readFile(await download.path());
    const seen = await page.evaluate(async (base64) => {
      const bytes = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
      const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
      const canvas = new OffscreenCanvas(image.width, image.height);
      const ink = canvas.getContext('2d')!;
      ink.drawImage(image, 0, 0);
      const at = (x: number, y: number) => [...ink.getImageData(x, y, 1, 1).data];
      return { width: image.width, height: image.height, laid: at(100, 100), ground: at(500, 500) };
    }, picture.toString('base64'));
    // Lamp is #f2c230; clear is no ink at all.
    expect(seen).toEqual({ width: 600, height: 600, laid: [0xf2, 0xc2, 0x30, 255], ground: [0, 0, 0, 0] });
    // 100 dots to the inch are 3937 to the metre.
    const physical = picture.indexOf('pHYs');
    expect([picture.readUInt32BE(physical + 4), picture.readUInt32BE(physical + 8), picture[physical + 12]]).toEqual([3937, 3937, 1]);
  });
});
