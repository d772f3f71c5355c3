import { inflateSync } from 'node:zlib';
import type { CDPSession, Page } from 'playwright';
import { describe } from 'vitest';
import { axe } from './axe.ts';
import { appAddress, expect, test, visit } from './browser.ts';
import { click, drawingInWords, eventually, openBlock, placeOf, sheetIsCurrent, stroke, swatch, table, viewOf } from './on-the-table.ts';

const zoom = async (page: Page): Promise<number> => Number(await table(page).getAttribute('data-zoom'));
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

/** Turns the wheel with Ctrl held over a point of the drawing. */
async function wheelNearer(page: Page, x: number, y: number, turns: number): Promise<void> {
  const at = await placeOf(page, x, y);
  await page.mouse.move(at.x, at.y);
  await page.keyboard.down('Control');
  for (let i = 0; i < turns; i++) {
    // Turns that come together count as one: each is waited for.
    const before = await zoom(page);
    await page.mouse.wheel(0, -100);
    await eventually(() => zoom(page)).toBeGreaterThan(before);
  }
  await page.keyboard.up('Control');
  await stands(page);
}

/** Waits until the drawing lies still. */
async function stands(page: Page): Promise<void> {
  let last = '';
  await eventually(async () => {
    const now = (await table(page).getAttribute('data-view'))!;
    const same = now === last;
    last = now;
    return same;
  }).toBe(true);
}

/** @returns the colour, red, green and blue, that the page shows at a point of the drawing */
async function colorAt(page: Page, x: number, y: number): Promise<readonly number[]> {
  await page.mouse.move(2, 2);
  const at = await placeOf(page, x, y);
  return onlyPixel(await page.screenshot({ clip: { x: Math.floor(at.x), y: Math.floor(at.y), width: 1, height: 1 } }));
}

/** @returns the pixel of a PNG file that has just one; beside and above it lies nothing, so whatever its filter it is written as it is */
function onlyPixel(png: Buffer): readonly number[] {
  const data: Buffer[] = [];
  for (let at = 8; at < png.length; at += 12 + png.readUInt32BE(at)) {
    if (png.toString('latin1', at + 4, at + 8) === 'IDAT') data.push(png.subarray(at + 8, at + 8 + png.readUInt32BE(at)));
  }
  return [...inflateSync(Buffer.concat(data)).subarray(1, 4)];
}

/** @returns whether two colours look the same */
const near = (a: readonly number[], b: readonly number[]): boolean => a.every((part, i) => Math.abs(part - b[i]!) <= 6);

const LAMP = [0xf2, 0xc2, 0x30];
const MARRAM = [0xb9, 0xa4, 0x4c];

/** @returns which of some points show a colour */
async function showing(page: Page, color: readonly number[], points: readonly (readonly [number, number])[]): Promise<readonly string[]> {
  const found: string[] = [];
  for (const [x, y] of points) if (near(await colorAt(page, x, y), color)) found.push(`${x} ${y}`);
  return found;
}

/** Puts fingers on points of the table, given in CSS pixels of the window, and takes up those that are left out. */
const fingers = (cdp: CDPSession, type: 'touchStart' | 'touchMove' | 'touchEnd', ...points: readonly { x: number; y: number }[]): Promise<unknown> =>
  cdp.send('Input.dispatchTouchEvent', { type, touchPoints: points.map((point, id) => ({ ...point, id })) });

const square = (fabric: string, x: number, y: number) => ({ fabric, points: [[x, y], [x + 1, y], [x + 1, y + 1], [x, y + 1]] as const });

describe('the glass over the table', () => {
  test('brings nearer what the wheel is turned over, with Ctrl; without, it moves the drawing', async ({ page }) => {
    await openBlock(page, { cells: 8 });
    await wheelNearer(page, 6, 2, 4);
    // Now that the block is larger than its window, what is pointed at stays where it is, but for the pixel that is rounded.
    const before = await placeOf(page, 6, 2);
    await wheelNearer(page, 6, 2, 2);
    const after = await placeOf(page, 6, 2);
    expect(Math.hypot(after.x - before.x, after.y - before.y)).toBeLessThan(2);
    expect(await zoom(page)).toBeGreaterThan(2);
    const [left, top] = await viewOf(page);
    await page.mouse.wheel(30, 40);
    await eventually(() => viewOf(page)).toEqual([left - 30, top - 40, ...(await viewOf(page)).slice(2)]);
  });

  test('lets the page scroll while the whole block is seen', async ({ browser }) => {
    const { context, page } = await visit(browser, { viewport: { width: 700, height: 500 } });
    await page.goto(appAddress());
    await openBlock(page);
    const at = await placeOf(page, 1.5, 1.5);
    await page.mouse.move(at.x, at.y);
    const before = await page.evaluate(() => scrollY);
    await page.mouse.wheel(0, 120);
    await eventually(() => page.evaluate(() => scrollY)).toBeGreaterThan(before);
    expect(await zoom(page)).toBe(1);
    await context.close();
  });

  test('is moved by keys, and keeps the cell cursor in sight', async ({ page }) => {
    await openBlock(page, { cells: 12 });
    await table(page).focus();
    for (let i = 0; i < 8; i++) await page.keyboard.press('+');
    await eventually(() => zoom(page)).toBeGreaterThan(5);
    await page.keyboard.press('End');
    await page.keyboard.press('PageDown');
    await stands(page);
    const inSight = async (column: number, row: number): Promise<boolean> => {
      const box = (await table(page).boundingBox())!;
      const [a, b] = [await placeOf(page, column, row), await placeOf(page, column + 1, row + 1)];
      return a.x >= box.x && a.y >= box.y && b.x <= box.x + box.width && b.y <= box.y + box.height;
    };
    await eventually(() => inSight(11, 11)).toBe(true);
    await page.keyboard.press('Space');
    const words = await drawingInWords(page);
    expect(words[11]).toContain('Column 12: Chalk.');
    const [left] = await viewOf(page);
    await page.keyboard.press('Alt+ArrowLeft');
    await eventually(async () => (await viewOf(page))[0]).toBeGreaterThan(left);
    await page.keyboard.press('-');
    await eventually(() => zoom(page)).toBeLessThan(5.9);
    await page.keyboard.press('0');
    await eventually(() => zoom(page)).toBe(1);
  });

  test('has buttons that say what they do', async ({ page }) => {
    await openBlock(page);
    await button(page, 'Nearer').click();
    await button(page, 'Nearer').click();
    await eventually(() => zoom(page)).toBe(2.25);
    await button(page, 'Farther').click();
    await eventually(() => zoom(page)).toBe(1.5);
    await button(page, 'Whole block').click();
    await eventually(() => zoom(page)).toBe(1);
  });

  test('shows the block as large as it will be sewn, as this screen was measured', async ({ page }) => {
    await openBlock(page, { side: '3' });
    await button(page, 'True size').click();
    await eventually(async () => (await viewOf(page))[2]).toBe(3 * 96);
    await page.getByLabel('The bar is').fill('2');
    await button(page, 'Take this measure').click();
    // 2 1/2 inches of the page are 2 inches of this screen.
    await eventually(async () => (await viewOf(page))[2]).toBe(3 * 120);
    await page.reload();
    await table(page).waitFor();
    await openBlock(page, { side: '3' });
    await button(page, 'True size').click();
    await eventually(async () => (await viewOf(page))[2]).toBe(3 * 120);
    await expect.poll(() => page.getByLabel('The bar is').count()).toBe(0);
  });
});

describe('painting under the glass', () => {
  test('lands in the cell that is pointed at, and shows there', async ({ page }) => {
    await openBlock(page, { cells: 16 });
    await swatch(page, 'Lamp').click();
    await wheelNearer(page, 11.5, 4.5, 4);
    await page.mouse.wheel(25, -35);
    await stands(page);
    await click(page, 11.5, 4.5);
    await stroke(page, [10.5, 5.5], [12.5, 5.5]);
    await eventually(() => drawingInWords(page).then((rows) => rows[4])).toContain('Column 12: Lamp.');
    expect((await drawingInWords(page))[5]).toBe('Columns 1 to 10: Marram. Columns 11 to 13: Lamp. Columns 14 to 16: Marram.');
    const points = [[11.4, 4.6], [10.4, 5.6], [11.4, 5.6], [12.4, 5.6], [12.4, 4.6], [10.4, 4.6]] as const;
    await eventually(() => showing(page, LAMP, points)).toEqual(['11.4 4.6', '10.4 5.6', '11.4 5.6', '12.4 5.6']);
    await page.keyboard.press('Control+z');
    await eventually(() => showing(page, MARRAM, points)).toEqual(['10.4 5.6', '11.4 5.6', '12.4 5.6', '12.4 4.6', '10.4 4.6']);
    await button(page, 'Whole block').click();
    await eventually(() => showing(page, LAMP, points)).toEqual(['11.4 4.6']);
  });

  test('shows what is laid before the hand is lifted', async ({ page }) => {
    await openBlock(page, { cells: 16 });
    await swatch(page, 'Lamp').click();
    await wheelNearer(page, 8.5, 8.5, 6);
    const [from, to] = [await placeOf(page, 8.5, 8.5), await placeOf(page, 9.5, 8.5)];
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y, { steps: 3 });
    const at = await placeOf(page, 8.3, 8.7);
    await eventually(async () => near(onlyPixel(await page.screenshot({ clip: { x: Math.floor(at.x), y: Math.floor(at.y), width: 1, height: 1 } })), LAMP)).toBe(true);
    await page.mouse.up();
  });

  test('is not what the middle button does, nor a drag with the Space bar held', async ({ page }) => {
    await openBlock(page, { cells: 8 });
    await wheelNearer(page, 4, 4, 6);
    const push = async (dx: number): Promise<void> => {
      const [from] = [await placeOf(page, 4, 4)];
      const [left] = await viewOf(page);
      await page.mouse.move(from.x, from.y);
      if (dx < 0) await page.mouse.down({ button: 'middle' });
      else {
        await page.keyboard.down('Space');
        await page.mouse.down();
      }
      await page.mouse.move(from.x + dx, from.y, { steps: 3 });
      if (dx < 0) await page.mouse.up({ button: 'middle' });
      else {
        await page.mouse.up();
        await page.keyboard.up('Space');
      }
      await eventually(async () => (await viewOf(page))[0]).toBe(left + dx);
    };
    await push(-40);
    await table(page).focus();
    await push(30);
    expect(new Set(await drawingInWords(page))).toEqual(new Set(['Columns 1 to 8: Marram.']));
    // Pressed and let go where the mouse is, the Space bar lays as ever.
    await page.keyboard.press('Space');
    await eventually(() => drawingInWords(page).then((rows) => rows.join(' '))).toContain('Chalk');
  });

  test('with a finger is dropped when a second one comes: two fingers bring the drawing nearer and move it', async ({ browser }) => {
    const { context, page } = await visit(browser, { viewport: { width: 390, height: 844 }, hasTouch: true });
    await page.goto(appAddress());
    await openBlock(page, { cells: 8 });
    const cdp = await context.newCDPSession(page);
    const [a, b] = [await placeOf(page, 2.5, 2.5), await placeOf(page, 5.5, 5.5)];
    await fingers(cdp, 'touchStart', a);
    await fingers(cdp, 'touchStart', a, b);
    for (let i = 1; i <= 6; i++) await fingers(cdp, 'touchMove', { x: a.x - 8 * i, y: a.y - 8 * i }, { x: b.x + 8 * i, y: b.y + 8 * i });
    await eventually(() => zoom(page)).toBeGreaterThan(1.5);
    const spread = [{ x: a.x - 48, y: a.y - 48 }, { x: b.x + 48, y: b.y + 48 }] as const;
    await stands(page);
    const [left, top] = await viewOf(page);
    for (let i = 1; i <= 5; i++) await fingers(cdp, 'touchMove', ...spread.map(({ x, y }) => ({ x: x + 4 * i, y: y + 3 * i })));
    await eventually(() => viewOf(page).then(([x, y]) => [x, y])).toEqual([left + 20, top + 15]);
    await fingers(cdp, 'touchEnd', { x: spread[0].x + 20, y: spread[0].y + 15 });
    await fingers(cdp, 'touchEnd');
    expect(new Set(await drawingInWords(page))).toEqual(new Set(['Columns 1 to 8: Marram.']));
    // One finger draws again.
    const at = await placeOf(page, 3.5, 3.5);
    await page.touchscreen.tap(at.x, at.y);
    await eventually(() => drawingInWords(page).then((rows) => rows[3])).toBe('Columns 1 to 3: Marram. Column 4: Chalk. Columns 5 to 8: Marram.');
    await context.close();
  });
});

describe('on the cloth', () => {
  const shown = (page: Page, name: string) => page.getByRole('group', { name: 'On the cloth' }).getByRole('checkbox', { name });

  test('each thing is shown or not, and remembered in this browser', async ({ page }) => {
    await openBlock(page, { patches: [square('lamp', 1, 1)] });
    await sheetIsCurrent(page);
    expect(await showing(page, LAMP, [[1.3, 1.3]])).toHaveLength(1);
    await button(page, 'On the cloth').click();
    await shown(page, 'Values only').check();
    await page.keyboard.press('Escape');
    await eventually(async () => new Set(await colorAt(page, 1.3, 1.3)).size).toBe(1);
    await page.reload();
    await table(page).waitFor();
    await openBlock(page, { patches: [square('lamp', 1, 1)] });
    await eventually(async () => new Set(await colorAt(page, 1.3, 1.3)).size).toBe(1);
    await button(page, 'On the cloth').click();
    await shown(page, 'Values only').uncheck();
    await page.keyboard.press('Escape');
    await eventually(() => showing(page, LAMP, [[1.3, 1.3]])).toHaveLength(1);
  });

  test('grid, edges, seams, units, sizes, letters and hatching can be seen', async ({ page }) => {
    await openBlock(page, { patches: [square('lamp', 1, 1), { fabric: 'chalk', points: [[0, 0], [1, 0], [0, 1]] }] });
    await sheetIsCurrent(page);
    const picture = async (): Promise<string> => {
      await page.mouse.move(2, 2);
      return (await table(page).screenshot()).toString('base64');
    };
    const turn = async (name: string): Promise<void> => {
      await button(page, 'On the cloth').click();
      await shown(page, name).setChecked(!(await shown(page, name).isChecked()));
      await page.keyboard.press('Escape');
    };
    const before = await picture();
    for (const name of ['Grid', 'Patch edges', 'Seams', 'Units', 'Cut sizes', 'Fabric letters', 'Hatching']) {
      await turn(name);
      await expect.poll(picture, { message: name, timeout: 30_000 }).not.toBe(before);
      await turn(name);
      await expect.poll(picture, { message: `no ${name}`, timeout: 30_000 }).toBe(before);
    }
  });

  test('cut sizes are said of the cell the keys are at', async ({ page }) => {
    await openBlock(page, { patches: [square('lamp', 1, 1)] });
    await sheetIsCurrent(page);
    await button(page, 'On the cloth').click();
    await shown(page, 'Cut sizes').check();
    await page.keyboard.press('Escape');
    await table(page).focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowDown');
    // A 4 in. cell with 1/4 in. seams.
    await eventually(() => page.locator('.table .unseen[aria-live]').first().textContent()).toBe('Row 2, column 2: Lamp, cut 4 1/2 in. square');
  });
});

describe('under the cloth', () => {
  /** @returns a PNG file that is red all over */
  const redPicture = async (page: Page, width: number, height: number): Promise<Buffer> =>
    Buffer.from(
      await page.evaluate(
        async ([wide, high]) => {
          const canvas = Object.assign(document.createElement('canvas'), { width: wide, height: high });
          const pen = canvas.getContext('2d')!;
          pen.fillStyle = '#ff0000';
          pen.fillRect(0, 0, wide!, high!);
          return canvas.toDataURL('image/png').split(',')[1]!;
        },
        [width, height],
      ),
      'base64',
    );
  const choose = (page: Page, name: string, mimeType: string, buffer: Buffer): Promise<void> =>
    page.getByLabel('Choose a picture to trace').setInputFiles({ name, mimeType, buffer });
  const isRed = (color: readonly number[]): boolean => color[0]! > 240 && color[1]! < 30 && color[2]! < 30;

  test('a picture lies under the ground, is moved, and is there again after a reload, but never in the file', async ({ page }) => {
    await openBlock(page, { patches: [square('lamp', 1, 1)] });
    await button(page, 'Under the cloth').click();
    await choose(page, 'sketch.png', 'image/png', await redPicture(page, 3000, 3000));
    await button(page, 'It lies right').click();
    await eventually(() => colorAt(page, 0.3, 0.3).then(isRed)).toBe(true);
    // Cloth lies over it, half transparent: neither the one nor the other.
    const over = await colorAt(page, 1.3, 1.3);
    expect(isRed(over) || near(over, LAMP)).toBe(false);

    await button(page, 'Under the cloth').click();
    await page.getByLabel('Wide, in.').fill('4');
    await page.getByLabel('Cloth over it').fill('100');
    await page.getByLabel('Middle across, in.').fill('2');
    await page.keyboard.press('Escape');
    await eventually(() => colorAt(page, 0.3, 1.3).then(isRed)).toBe(true);
    await eventually(() => colorAt(page, 2.3, 1.3).then(isRed)).toBe(false);
    await eventually(() => showing(page, LAMP, [[1.3, 1.3]])).toHaveLength(1);

    // It waits a moment before it is kept.
    await eventually(() =>
      page.evaluate(
        () =>
          new Promise<unknown>((done) => {
            const opening = indexedDB.open('piecewright pictures');
            opening.onsuccess = () => {
              const asked = opening.result.transaction('pictures').objectStore('pictures').getAll();
              asked.onsuccess = () => {
                opening.result.close();
                done(asked.result.map((kept: { lie: { width: number; x: number }; cover: number }) => [kept.lie.width, kept.lie.x, kept.cover].join()));
              };
            };
          }),
      ),
    ).toEqual([[1 / 3, 1 / 6, 1].join()]);
    await page.reload();
    await eventually(() => colorAt(page, 0.3, 1.3).then(isRed)).toBe(true);
    await eventually(() => colorAt(page, 0.3, 0.3).then(isRed)).toBe(false);

    await button(page, 'Under the cloth').click();
    await page.getByRole('checkbox', { name: 'Show the picture' }).uncheck();
    await page.keyboard.press('Escape');
    await eventually(() => showing(page, MARRAM, [[0.3, 1.3]])).toHaveLength(1);
    await button(page, 'Under the cloth').click();
    await button(page, 'Take it away').click();
    await eventually(() => page.getByRole('checkbox', { name: 'Show the picture' }).count()).toBe(0);
  });

  test('a picture is drawn by its corners, by hand and by keys', async ({ page }) => {
    await openBlock(page);
    await button(page, 'Under the cloth').click();
    await choose(page, 'sketch.png', 'image/png', await redPicture(page, 400, 400));
    const corner = page.getByRole('button', { name: 'Bottom right corner of the picture' });
    const box = (await corner.boundingBox())!;
    const [from, to] = [{ x: box.x + box.width / 2, y: box.y + box.height / 2 }, await placeOf(page, 1.5, 1.5)];
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y, { steps: 5 });
    await page.mouse.up();
    const field = (name: string) => async (): Promise<number> => Number(await page.getByLabel(name).inputValue());
    await button(page, 'Under the cloth').click();
    await eventually(field('Wide, in.')).toBeCloseTo(6, 1);
    await eventually(field('Turned, degrees')).toBe(0);
    await corner.focus();
    await page.keyboard.press('Shift+ArrowUp');
    await eventually(field('Turned, degrees')).toBeLessThan(0);
    await page.keyboard.press('Enter');
    await eventually(() => corner.count()).toBe(0);
    expect(new Set(await drawingInWords(page))).toEqual(new Set(['Columns 1 to 3: Marram.']));
  });

  test('what cannot be traced is refused in a sentence', async ({ page }) => {
    await openBlock(page);
    await button(page, 'Under the cloth').click();
    const said = page.getByRole('group', { name: 'Under the cloth' }).getByRole('alert');
    await choose(page, 'notes.png', 'image/png', Buffer.from('only words'));
    await eventually(() => said.textContent()).toBe('“notes.png” is no picture that can be traced: choose a PNG, JPEG or WebP file.');
    await choose(page, 'torn.png', 'image/png', (await redPicture(page, 40, 40)).subarray(0, 40));
    await eventually(() => said.textContent()).toContain('“torn.png” cannot be read as a picture');
    await choose(page, 'vast.jpg', 'image/jpeg', Buffer.alloc(31 * 1024 * 1024, 0xff));
    await eventually(() => said.textContent()).toContain('“vast.jpg” has 31 MB, and a picture to trace may have 30');
  });
});

describe('the row under the table, for everyone', () => {
  const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
  for (const colorScheme of ['light', 'dark'] as const) {
    for (const width of [360, 1280]) {
      test(`breaks no accessibility rule in ${colorScheme}, ${width} px wide, whatever is unfolded`, async ({ browser }) => {
        const { context, page, complaints } = await visit(browser, { colorScheme, viewport: { width, height: 800 }, reducedMotion: 'reduce' });
        await page.goto(appAddress());
        await openBlock(page, { patches: [square('lamp', 1, 1)] });
        await sheetIsCurrent(page);
        for (const name of ['True size', 'On the cloth', 'Under the cloth']) {
          await button(page, name).click();
          const flap = page.locator('.flap');
          await eventually(() => flap.locator('input').count()).toBeGreaterThan(0);
          const { violations } = await axe(page).withTags(RULES).analyze();
          expect(violations.map(({ id, nodes }) => `${name}, ${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)).toEqual([]);
          const box = (await flap.boundingBox())!;
          expect(box.x).toBeGreaterThanOrEqual(0);
          expect(box.x + box.width).toBeLessThanOrEqual(width);
          await page.keyboard.press('Escape');
          await eventually(() => flap.count()).toBe(0);
          expect(await page.evaluate(() => document.activeElement?.textContent?.trim())).toBe(name);
        }
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
        expect(complaints).toEqual([]);
        await context.close();
      });
    }
  }
});
