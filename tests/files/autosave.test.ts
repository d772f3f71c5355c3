import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright';
import { build, type Rollup } from 'vite';
import { beforeAll } from 'vitest';
import { begun } from '../../src/block/history.ts';
import type { Autosave, SavedDrawing } from '../../src/files/autosave.ts';
import { unpainted } from '../block/drawn.ts';
import { expect, test } from '../e2e/browser.ts';

/** The script of a page that does nothing but keep drawings. */
let script = '';

beforeAll(async () => {
  const entry = fileURLToPath(new URL('../../src/files/autosave.ts', import.meta.url));
  const lib = { entry, formats: ['iife' as const], name: 'keeping', fileName: 'keeping' };
  const [output] = (await build({ configFile: false, logLevel: 'silent', build: { write: false, lib } })) as Rollup.RollupOutput[];
  script = (output!.output[0] as Rollup.OutputChunk).code;
});

/** In the page: the keeping place it has open, and what its watch has heard. */
interface Keeping {
  readonly keeping: { readonly openAutosave: () => Promise<Autosave> };
  autosave: Autosave;
  heard: string[];
}

/** Opens a tab that has the keeping place open; tabs of one visitor share it. */
async function tab(page: Page): Promise<Page> {
  await page.route('http://127.0.0.1/keeping', (route) => route.fulfill({ contentType: 'text/html', body: '<!doctype html>' }));
  await page.goto('http://127.0.0.1/keeping');
  await page.addScriptTag({ content: script });
  await page.evaluate(async () => {
    const here = globalThis as unknown as Keeping;
    here.autosave = await here.keeping.openAutosave();
    here.heard = [];
    here.autosave.watch((id, version) => here.heard.push(`${id} ${version}`));
  });
  return page;
}

const work = begun(unpainted(3, 3));
const named = (name: string) => ({ ...work, block: { ...work.block, name } });

const save = (page: Page, id: string, from: number, name: string) =>
  page.evaluate(([to, start, what]) => (globalThis as unknown as Keeping).autosave.save(to, start, what), [id, from, named(name)] as const);
const load = (page: Page, id: string): Promise<SavedDrawing | undefined> =>
  page.evaluate((of) => (globalThis as unknown as Keeping).autosave.load(of), id);

test('a drawing and its history are there again after the tab is closed', async ({ visitor }) => {
  const first = await tab(visitor.page);
  expect(await save(first, 'light', 0, 'Harbour light')).toEqual({ saved: true, version: 1 });
  expect(await save(first, 'light', 1, 'Harbour light by night')).toEqual({ saved: true, version: 2 });
  await first.close();
  const second = await tab(await visitor.context.newPage());
  expect(await load(second, 'light')).toMatchObject({ id: 'light', version: 2, work: named('Harbour light by night') });
  expect(await load(second, 'boat')).toBeUndefined();
});

test('of two tabs with one drawing, the second to save is told, and overwrites nothing', async ({ visitor }) => {
  const [one, other] = [await tab(visitor.page), await tab(await visitor.context.newPage())];
  await save(one, 'light', 0, 'Begun');
  expect(await save(one, 'light', 1, 'From the one tab')).toEqual({ saved: true, version: 2 });
  const refused = await save(other, 'light', 1, 'From the other tab');
  expect(refused).toMatchObject({ saved: false, theirs: { version: 2, work: named('From the one tab') } });
  expect((await load(other, 'light'))?.work.block.name).toBe('From the one tab');
  expect(await save(other, 'light', 2, 'From the other tab')).toEqual({ saved: true, version: 3 });
});

test('of two tabs that save in the same moment, exactly one saves', async ({ visitor }) => {
  const [one, other] = [await tab(visitor.page), await tab(await visitor.context.newPage())];
  for (let version = 0; version < 10; version++) {
    const both = await Promise.all([save(one, 'light', version, 'One'), save(other, 'light', version, 'Other')]);
    expect(both.map((saving) => saving.saved).sort()).toEqual([false, true]);
  }
});

test('a tab hears what others save, and not what it saves itself', async ({ visitor }) => {
  const [one, other] = [await tab(visitor.page), await tab(await visitor.context.newPage())];
  await save(one, 'boat', 0, 'Another drawing');
  await save(one, 'light', 0, 'Harbour light');
  await other.waitForFunction(() => (globalThis as unknown as Keeping).heard.length > 1);
  expect(await other.evaluate(() => (globalThis as unknown as Keeping).heard)).toEqual(['boat 1', 'light 1']);
  expect(await one.evaluate(() => (globalThis as unknown as Keeping).heard)).toEqual([]);
});

const cards = (page: Page) => page.evaluate(() => (globalThis as unknown as Keeping).autosave.cards());

test('drawings are listed, the last saved first, until they are forgotten', async ({ visitor }) => {
  const page = await tab(visitor.page);
  for (const id of ['boat', 'rope', 'tide']) {
    await save(page, id, 0, id);
    await page.waitForTimeout(5);
  }
  const ids = async () => (await cards(page)).map(({ id }) => id);
  expect(await ids()).toEqual(['tide', 'rope', 'boat']);
  expect((await cards(page))[0]).toEqual({
    id: 'tide', version: 1, savedAt: expect.any(Number), name: 'tide', finished: work.block.finished, grid: work.block.grid,
  });
  await page.evaluate(() => (globalThis as unknown as Keeping).autosave.remove('rope'));
  expect(await ids()).toEqual(['tide', 'boat']);
  expect(await load(page, 'rope')).toBeUndefined();
});

test('a drawing that was put away is kept as it was, and is on the shelf again when it is brought back or saved', async ({ visitor }) => {
  const page = await tab(visitor.page);
  const putAway = (when: number | null) =>
    page.evaluate((at) => (globalThis as unknown as Keeping).autosave.putAway('boat', at), when);
  await save(page, 'boat', 0, 'Guild sloop');
  await putAway(5000);
  expect(await cards(page)).toMatchObject([{ id: 'boat', putAway: 5000 }]);
  expect(await load(page, 'boat')).toMatchObject({ version: 1, putAway: 5000, work: named('Guild sloop') });
  await putAway(null);
  expect((await cards(page))[0]).not.toHaveProperty('putAway');
  await putAway(6000);
  expect(await save(page, 'boat', 1, 'Guild sloop')).toEqual({ saved: true, version: 2 });
  expect(await load(page, 'boat')).not.toHaveProperty('putAway');
  await page.evaluate(() => (globalThis as unknown as Keeping).autosave.putAway('no such drawing', 1));
  expect((await cards(page)).length).toBe(1);
});

test('what an earlier app kept is on the shelf of this one', async ({ visitor }) => {
  const { page } = visitor;
  await page.route('http://127.0.0.1/keeping', (route) => route.fulfill({ contentType: 'text/html', body: '<!doctype html>' }));
  await page.goto('http://127.0.0.1/keeping');
  await page.evaluate(
    (old) =>
      new Promise<void>((done, fail) => {
        const opening = indexedDB.open('piecewright', 1);
        opening.onupgradeneeded = () => void opening.result.createObjectStore('drawings', { keyPath: 'id' }).put(old);
        opening.onerror = () => fail(new Error('not opened'));
        opening.onsuccess = () => {
          opening.result.close();
          done();
        };
      }),
    { id: 'light', version: 3, work: named('Harbour light'), savedAt: 7 },
  );
  await tab(page);
  expect(await cards(page)).toMatchObject([{ id: 'light', version: 3, name: 'Harbour light', savedAt: 7 }]);
  expect(await load(page, 'light')).toMatchObject({ version: 3, work: named('Harbour light') });
});
