import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright';
import { whatKeptBusy } from '../tests/e2e/long-tasks.ts';

/** How long every move of a pressed pointer took until the frame was painted that shows it, in milliseconds. */
export interface Seen {
  /** From when the page was told of the move. */
  readonly sinceTold: readonly number[];
  /** From when the browser had it: the wait for the next frame included. */
  readonly sinceMoved: readonly number[];
  /** Processor time of the page's main thread, for each move: other programs on the machine do not count in it. */
  readonly work: number;
  /** Processor time of the page's longest task in the same stroke once more, traced, to the lifting of the pointer and a moment on. */
  readonly longest: number;
}

/** Watches a page from its beginning on: which frame is the first to draw on a canvas in the page after a move of a pressed pointer. */
export async function watch(page: Page): Promise<void> {
  await page.addInitScript({ path: fileURLToPath(new URL('watch-page.js', import.meta.url)) });
}

/** Paints one stroke through places of the window, each move once the one before is seen, and then again, traced. @returns what was seen */
export async function paintThrough(page: Page, places: readonly (readonly [number, number])[]): Promise<Seen> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const worked = async (): Promise<number> =>
    1000 * (await session.send('Performance.getMetrics')).metrics.find(({ name }) => name === 'TaskDuration')!.value;
  const draw = async (): Promise<void> => {
    for (const place of places.slice(1)) {
      await page.mouse.move(...place);
      await page.evaluate(() => Reflect.get(window, 'settled')());
    }
  };
  await page.mouse.move(...places[0]!);
  await page.mouse.down();
  await page.evaluate(() => Reflect.get(window, 'forget')());
  const before = await worked();
  await draw();
  const work = ((await worked()) - before) / (places.length - 1);
  const seen = (await page.evaluate(() => Reflect.get(window, 'seen')())) as Pick<Seen, 'sinceTold' | 'sinceMoved'>;
  await page.mouse.up();
  const { worked: tasks } = await whatKeptBusy(page.context().browser()!, page, async () => {
    await page.mouse.move(...places[0]!);
    await page.mouse.down();
    await draw();
    await page.mouse.up();
    await page.waitForTimeout(300);
  });
  return { ...seen, work, longest: tasks[0]! };
}
