import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { availableParallelism, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium, type Browser, type Page } from 'playwright';
import { build, preview, type InlineConfig, type PreviewServer } from 'vite';
import { median } from './timing.ts';
import { paintThrough, watch, type Seen } from './watch.ts';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const SIDES = [12, 24, 48, 64];
/** Moves of one stroke. */
const MOVES = 90;
/** One frame at 60 Hz, in milliseconds. */
const FRAME = 1000 / 60;
/** How long the sheet of the drawing may take before painting begins, in milliseconds; it may be there or not. */
const SHEET = 15_000;

/** @returns a browser that runs, or in one sentence why there is none */
export async function browserHere(): Promise<Browser | string> {
  try {
    const found = JSON.parse(await readFile(join(ROOT, 'node_modules/.piecewright/browser.json'), 'utf8')) as { executable: string; flags: string[] };
    return await chromium.launch({ executablePath: found.executable, args: found.flags });
  } catch {
    return 'There is no browser to paint in: run "node scripts/setup.mjs all" and then this again.';
  }
}

/** Builds a page into a folder and serves it. */
export async function served(root: string, outDir: string, plain: boolean): Promise<PreviewServer> {
  const place: InlineConfig = { root, logLevel: 'error', ...(plain && { configFile: false }) };
  await build({ ...place, base: './', build: { outDir, emptyOutDir: true, chunkSizeWarningLimit: 2000 } });
  return preview({ ...place, build: { outDir }, preview: { host: '127.0.0.1', port: 4373 } });
}

export const address = (server: PreviewServer): string => server.resolvedUrls!.local[0]!;

/** @returns the middles of cells, row after row, back and forth, from the first one on; in grid units */
const backAndForth = (cells: number): readonly (readonly [number, number])[] =>
  Array.from({ length: MOVES + 1 }, (_, i) => {
    const [row, at] = [Math.floor(i / cells), i % cells];
    return [(row % 2 === 0 ? at : cells - 1 - at) + 0.6, row + 0.6] as const;
  });

/** @returns a full grid as a block file: a triangle on the ground in every cell */
const fullGrid = (cells: number): string =>
  JSON.stringify({
    format: 'piecewright/block',
    version: 1,
    name: `Full grid ${cells}`,
    finished: { width: `${cells}`, height: `${cells}`, unit: 'in' },
    grid: { columns: cells, rows: cells },
    fabrics: [['marram', '#b9a44c'], ['chalk', '#f4f1ea'], ['lamp', '#f2c230']].map(([id, color]) => ({ id, name: id, color })),
    ground: 'marram',
    patches: Array.from({ length: cells * cells }, (_, i) => {
      const [x, y] = [i % cells, Math.floor(i / cells)];
      return { fabric: (x + y) % 2 === 0 ? 'chalk' : 'lamp', points: [[x, y], [x + 1, y], [x, y + 1]] };
    }),
  });

/** Opens a full grid in our app. @param patience how long its sheet may take, in milliseconds; it may be there or not */
export async function openFullGrid(page: Page, home: string, cells: number, patience: number): Promise<void> {
  await page.goto(home);
  await page.getByRole('application').waitFor();
  const file = { name: 'full.block.json', mimeType: 'application/json', buffer: Buffer.from(fullGrid(cells)) };
  await page.locator('input[type=file][accept*=json]').first().setInputFiles(file);
  await page.locator(`[role=application][data-grid="${cells} ${cells}"]`).waitFor();
  await page.locator('article[aria-busy=false]').waitFor({ timeout: patience }).catch(() => undefined);
}

async function onOurTable(page: Page, home: string, cells: number): Promise<Seen> {
  await openFullGrid(page, home, cells, SHEET);
  const table = page.getByRole('application');
  const box = (await table.boundingBox())!;
  const [left, top, width, height] = (await table.getAttribute('data-view'))!.split(' ').map(Number) as [number, number, number, number];
  const seen = await paintThrough(page, backAndForth(cells).map(([x, y]) => [box.x + left + (x * width) / cells, box.y + top + (y * height) / cells]));
  // A stroke is an entry of the drawing's past.
  await page.getByRole('button', { name: 'Undo' }).click();
  return seen;
}

async function inThePlainWay(page: Page, home: string, cells: number): Promise<Seen> {
  await page.goto(`${home}?cells=${cells}`);
  const canvas = page.locator('canvas').first();
  await canvas.waitFor();
  const box = (await canvas.boundingBox())!;
  const seen = await paintThrough(page, backAndForth(cells).map(([x, y]) => [box.x + (x * box.width) / cells, box.y + (y * box.height) / cells]));
  const patches = Number(await page.locator('#table').getAttribute('data-patches'));
  if (patches !== cells * cells + 2 * MOVES) throw new Error(`the plain way painted ${patches - cells * cells} patches of ${2 * MOVES}`);
  return seen;
}

export const ninetyFifth = (times: readonly number[]): number => [...times].sort((a, b) => a - b)[Math.ceil(0.95 * times.length) - 1]!;
export const ms = (time: number): string => time.toFixed(1);
export const column = (text: string): string => text.padStart(13);

/** Prints how long it takes from a move of the pointer to the painted frame, on our table and in the plain way, in one run. */
export async function painting(): Promise<void> {
  console.log('\nPainting one stroke over a full grid: milliseconds from a move of the pointer to the painted frame that shows it, median and');
  console.log('95th percentile, on our table and beside it with one react-konva shape for each patch.');
  const browser = await browserHere();
  if (typeof browser === 'string') return console.log(`  ${browser}`);
  const folder = await mkdtemp(join(tmpdir(), 'piecewright-bench-'));
  const servers: PreviewServer[] = [];
  try {
    servers.push(await served(ROOT, join(folder, 'ours'), false), await served(join(ROOT, 'bench/plain'), join(folder, 'plain'), true));
    const [ours, plain] = servers.map(address) as [string, string];
    console.log(`  ${'cells'.padEnd(9)}${['ours', 'p95', 'since moved', 'plain', 'p95', 'ratio of p95', 'work: ours', 'plain', 'longest', 'plain'].map(column).join('')}`);
    for (const cells of SIDES) {
      const [a, b] = [await alone(browser, (page) => onOurTable(page, ours, cells)), await alone(browser, (page) => inThePlainWay(page, plain, cells))];
      const [p95, plainly] = [ninetyFifth(a.sinceTold), ninetyFifth(b.sinceTold)];
      const figures = [ms(median(a.sinceTold)), ms(p95), ms(ninetyFifth(a.sinceMoved)), ms(median(b.sinceTold)), ms(plainly), `1 : ${ms(plainly / p95)}`];
      console.log(`  ${`${cells} × ${cells}`.padEnd(9)}${[...figures, ms(a.work), ms(b.work), `${a.longest}`, `${b.longest}`].map(column).join('')}`);
    }
    console.log(`  A frame at 60 Hz takes ${ms(FRAME)} ms. "Since moved" is our 95th percentile with the wait for the next frame to begin.`);
    console.log('  "Work" and "longest" are processor time of the page, which no other program makes longer: for one move, and of its longest task.');
    console.log(`  ${availableParallelism()} processors, on which ${loadavg()[0]!.toFixed(1)} programs would have liked to run.`);
  } finally {
    await Promise.all(servers.map((server) => server.close()));
    await browser.close();
    await rm(folder, { recursive: true, force: true });
  }
}

/** Does something in a page of its own, watched. */
async function alone(browser: Browser, deed: (page: Page) => Promise<Seen>): Promise<Seen> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  const page = await context.newPage();
  await watch(page);
  const seen = await deed(page);
  await context.close();
  return seen;
}
