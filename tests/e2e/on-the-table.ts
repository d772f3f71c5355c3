import type { Locator, Page } from 'playwright';
import { expect } from './browser.ts';

/** What a block file says, as far as these tests write one. */
export interface BlockFile {
  readonly name?: string;
  readonly side?: string;
  readonly cells?: number;
  readonly fabrics?: readonly (readonly [string, string])[];
  readonly patches?: readonly { readonly fabric: string; readonly points: readonly (readonly [number, number])[]; readonly whole?: boolean }[];
  readonly pins?: readonly object[];
}

/** Three fabrics from the boat shed; the first is the ground. */
export const SHED = [['Marram', '#b9a44c'], ['Chalk', '#f4f1ea'], ['Lamp', '#f2c230']] as const;

/** @returns the text of a block file: an empty 12 in. block of 3 by 3 cells in the shed's fabrics, but for what is given */
export function blockFile({ name = 'Boat shed', side = '12', cells = 3, fabrics = SHED, patches = [], pins = [] }: BlockFile = {}): string {
  return JSON.stringify({
    format: 'piecewright/block',
    version: 1,
    name,
    finished: { width: side, height: side, unit: 'in' },
    grid: { columns: cells, rows: cells },
    fabrics: fabrics.map(([fabric, color]) => ({ id: fabric.toLowerCase(), name: fabric, color })),
    ground: fabrics[0]![0].toLowerCase(),
    patches,
    pins,
  });
}

/** Chooses a file with this content in the Open dialog. */
export async function openFile(page: Page, text: string | Buffer, name = 'drawing.block.json'): Promise<void> {
  await page.getByLabel('Open a block file').setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** Opens a block of the test's own and waits until it lies on the table. */
export async function openBlock(page: Page, block: BlockFile = {}): Promise<void> {
  const name = block.name ?? 'Boat shed';
  await openFile(page, blockFile(block));
  await eventually(() => table(page).getAttribute('aria-label')).toContain(name);
}

/** What is expected as soon as the page has got to it; the limit is only there for what never comes. */
export const eventually = <T>(read: () => T | Promise<T>) => expect.poll(read, { timeout: 60_000, interval: 20 });

export const table = (page: Page): Locator => page.getByRole('application');
export const sheet = (page: Page): Locator => page.getByRole('article');
export const tool = (page: Page, name: string): Locator =>
  page.getByRole('group', { name: 'Shapes and tools' }).getByRole('button', { name, exact: true });
export const swatch = (page: Page, name: string): Locator =>
  page.getByRole('group', { name: 'Swatch tray' }).getByRole('listitem').getByRole('button', { name });

/** @returns where the block lies on the table: left, top, width and height in CSS pixels */
export async function viewOf(page: Page): Promise<[number, number, number, number]> {
  const view = await table(page).getAttribute('data-view');
  return view!.split(' ').map(Number) as [number, number, number, number];
}

/** @returns the place in the window of a point of the drawing, in grid units from its top-left corner */
export async function placeOf(page: Page, x: number, y: number): Promise<{ x: number; y: number }> {
  await table(page).scrollIntoViewIfNeeded();
  const box = (await table(page).boundingBox())!;
  const [left, top, width, height] = await viewOf(page);
  const [columns, rows] = (await table(page).getAttribute('data-grid'))!.split(' ').map(Number);
  return { x: box.x + left + (x * width) / columns!, y: box.y + top + (y * height) / rows! };
}

/** Clicks a point of the drawing. */
export async function click(page: Page, x: number, y: number): Promise<void> {
  const at = await placeOf(page, x, y);
  await page.mouse.click(at.x, at.y);
}

/** Draws one stroke through points of the drawing. */
export async function stroke(page: Page, ...points: readonly (readonly [number, number])[]): Promise<void> {
  const places = await Promise.all(points.map(([x, y]) => placeOf(page, x, y)));
  await page.mouse.move(places[0]!.x, places[0]!.y);
  await page.mouse.down();
  for (const { x, y } of places.slice(1)) await page.mouse.move(x, y, { steps: 4 });
  await page.mouse.up();
}

/** @returns the drawing as it is told to those who listen, a line for each row */
export async function drawingInWords(page: Page): Promise<string[]> {
  const inWords = page.locator('.table .in-words');
  // The words follow the drawing when there is time.
  await eventually(() => inWords.getAttribute('aria-busy')).toBe('false');
  return inWords.locator('ol > li').allTextContents();
}

/** Waits until the sheet is that of the drawing on the table. */
export async function sheetIsCurrent(page: Page): Promise<void> {
  await eventually(() => sheet(page).getAttribute('aria-busy')).toBe('false');
}

/** @returns the cutting list of one fabric, each line as "2 squares 4 7/8 in. for A" */
export async function cutsOf(page: Page, fabric: string): Promise<string[]> {
  await sheetIsCurrent(page);
  const lines = await page.getByRole('region', { name: fabric }).locator('[data-line^="cut"]').all();
  return Promise.all(
    lines.map(async (line) => {
      const parts = await line.locator(':scope > :not(.line-badge)').allTextContents();
      return parts.join(' ').replace(/\s+/g, ' ').trim();
    }),
  );
}
