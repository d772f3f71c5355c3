import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright';
import { describe } from 'vitest';
import { JPEG } from '../block/photo.ts';
import { expect, test } from './browser.ts';
import { eventually, openBlock, openFile, swatch, tool } from './on-the-table.ts';

/** What a PNG says of itself that would be 60,000 pixels wide and high (ISO/IEC 15948), with nothing behind it. */
const HUGE = Buffer.from('89504e470d0a1a0a0000000d494844520000ea600000ea600806000000', 'hex');

const HOSTILE: readonly (readonly [file: string, mimeType: string, buffer: Buffer, says: string])[] = [
  ['long.jpg', 'image/jpeg', Buffer.concat([Buffer.from(JPEG, 'base64'), Buffer.alloc(31 * 2 ** 20)]), 'has 32 MB, and a picture may have 30'],
  ['huge.png', 'image/png', HUGE, 'has more than 150 million pixels'],
  ['broken.jpg', 'image/jpeg', Buffer.from(JPEG, 'base64').subarray(0, 90), 'cannot be read as a picture'],
  ['drawing.svg', 'image/svg+xml', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" onload="window.planted = 1"><script>window.planted = 1</script></svg>'), 'is a drawing'],
  ['letter.jpg', 'image/jpeg', Buffer.from('Dear guild, <b>enclosed</b> is no picture.'), 'is no picture that can be read here'],
];

async function lamp(page: Page): Promise<Locator> {
  await swatch(page, 'Lamp').click();
  await page.getByRole('button', { name: 'Change Lamp' }).click();
  return page.getByRole('dialog');
}

const chosen = (dialog: Locator, name: string, mimeType: string, buffer: Buffer): Promise<void> =>
  dialog.getByLabel(/picture of the cloth/).setInputFiles({ name, mimeType, buffer });

const shownOn = (page: Page): Promise<string> =>
  swatch(page, 'Lamp').locator('.swatch-cloth').evaluate((each) => (each as HTMLElement).style.getPropertyValue('--photo'));

async function savedFile(page: Page): Promise<string> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  return readFileSync(await (await download).path(), 'utf8');
}

describe('a photo of cloth', () => {
  test('that is hostile gets a sentence and harms nothing', async ({ page }) => {
    await openBlock(page, { patches: [{ fabric: 'lamp', points: [[0, 0], [2, 0], [2, 2], [0, 2]] }] });
    const dialog = await lamp(page);
    for (const [name, mimeType, buffer, says] of HOSTILE) {
      await chosen(dialog, name, mimeType, buffer);
      await eventually(() => dialog.getByRole('alert').textContent()).toContain(`“${name}” ${says}`);
      expect(await dialog.locator('.fabric-photo-frame').count()).toBe(0);
    }
    await dialog.getByRole('button', { name: 'Done' }).click();
    await eventually(() => dialog.count()).toBe(0);
    expect(await page.evaluate(() => 'planted' in window)).toBe(false);
    expect(await page.getByRole('button', { name: 'Undo' }).isEnabled()).toBe(false);
  });

  test('is kept through undo, reload and its file, and moved within a patch', async ({ page }) => {
    await openBlock(page, { patches: [{ fabric: 'lamp', points: [[0, 0], [2, 0], [2, 2], [0, 2]] }] });
    const dialog = await lamp(page);
    await chosen(dialog, 'lamp.jpg', 'image/jpeg', Buffer.from(JPEG, 'base64'));
    await dialog.getByLabel('Cut off at the left').fill('50');
    // The usual six inches, by half.
    await eventually(() => dialog.getByLabel('What is left shows').inputValue()).toBe('3');
    await dialog.getByRole('button', { name: 'Done' }).click();
    await eventually(() => shownOn(page)).toContain('image/jpeg');
    await page.getByRole('button', { name: 'Undo' }).click();
    await eventually(() => shownOn(page)).toBe('');
    await page.getByRole('button', { name: 'Redo' }).click();
    await eventually(() => shownOn(page)).toContain('image/jpeg');
    await tool(page, 'Choose').click();
    await page.getByRole('button', { name: 'All', exact: true }).click();
    await page.getByRole('button', { name: 'Photo', exact: true }).click();
    await page.getByLabel('From the left of the photo').fill('250');
    await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
    const text = await savedFile(page);
    expect(text).toContain('"photoAt": [250, 500]');
    expect(JSON.parse(text).fabrics[2].photo).toEqual({ picture: 'photo-1', across: '3' });
    await page.reload();
    await eventually(() => shownOn(page)).toContain('image/jpeg');
    await openBlock(page, { name: 'Empty shed' });
    await eventually(() => shownOn(page)).toBe('');
    await openFile(page, text);
    await eventually(() => shownOn(page)).toContain('image/jpeg');
  });
});
