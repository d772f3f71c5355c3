import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import type { Locator, Page } from 'playwright';
import { describe } from 'vitest';
import { inside } from '../cli/program.ts';
import { appAddress, expect, test, visit } from './browser.ts';
import { blockFile, eventually, openFile, sheetIsCurrent } from './on-the-table.ts';

const FILE = blockFile({ name: 'Boat shed', patches: [{ fabric: 'lamp', points: [[0, 0], [1, 0], [0, 1]] }, { fabric: 'chalk', points: [[1, 1], [2, 1], [2, 2], [1, 2]] }] });

const room = (page: Page): Locator => page.getByRole('dialog', { name: /^Publish/ });

async function saved(page: Page, button: string): Promise<Buffer> {
  const [file] = await Promise.all([page.waitForEvent('download'), room(page).getByRole('button', { name: button }).press('Enter')]);
  return readFileSync(await file.path());
}

describe('other files of a pattern', () => {
  test('are those that the terminal writes, with every picture in dots beside its drawing', async ({ browser }) => {
    const { context, page, complaints } = await visit(browser, { acceptDownloads: true });
    await page.goto(appAddress());
    await openFile(page, FILE);
    await sheetIsCurrent(page);
    await page.getByRole('button', { name: 'Publish' }).press('Enter');
    await eventually(() => room(page).getByRole('status').first().textContent()).toMatch(/^\d+ pages$/);
    await room(page).getByText('Other files', { exact: true }).click();
    await eventually(() => room(page).getByText('are still looked for').count()).toBe(0);

    const folder = mkdtempSync(join(tmpdir(), 'piecewright-'));
    const at = (name: string): string => join(folder, name);
    writeFileSync(at('block.json'), FILE);
    const here = async (command: string, name: string): Promise<Buffer> => {
      expect(await inside(command, at('block.json'), '-o', at(name))).toMatchObject({ exit: 0 });
      return readFileSync(at(name));
    };
    const text = await here('pattern', 'a.md');
    // Layouts of the cloth may still be on their way.
    await eventually(async () => (await saved(page, 'Text (Markdown)')).toString()).toBe(text.toString());
    expect((await saved(page, 'Cutting list (CSV)')).equals(await here('pattern', 'a.csv'))).toBe(true);
    expect((await saved(page, 'Pieces (SVG)')).equals(await here('cutter', 'a.svg'))).toBe(true);

    const [there, ours] = [await saved(page, 'Pictures (zip)'), await here('pictures', 'a.zip')].map((zip) => unzipSync(new Uint8Array(zip))) as [Files, Files];
    expect(Object.keys(there).filter((name) => name.endsWith('.svg'))).toEqual(Object.keys(ours));
    for (const [name, svg] of Object.entries(ours)) {
      expect(new TextDecoder().decode(there[name])).toBe(new TextDecoder().decode(svg));
      const png = there[name.replace(/svg$/, 'png')]!;
      const view = new DataView(png.buffer, png.byteOffset);
      const [, width] = / width="([\d.]+)pt"/.exec(new TextDecoder().decode(svg))!;
      // PNG (ISO/IEC 15948): the header's width, colour with opacity; 300 dots to an inch are 11811 to a metre.
      expect([view.getUint32(16), png[25], String.fromCharCode(...png.subarray(37, 41)), view.getUint32(41)]).toEqual([Math.ceil((Number(width) * 300) / 72), 6, 'pHYs', 11811]);
    }
    rmSync(folder, { recursive: true });
    expect(complaints).toEqual([]);
    await context.close();
  });
});

type Files = Readonly<Record<string, Uint8Array>>;
