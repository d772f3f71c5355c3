import type { Browser, Page } from 'playwright';

/** A task that keeps the page busy longer than this, in milliseconds, is one that the hand can feel. */
export const FELT = 50;

/** What kept the page busy, in whole milliseconds, longest first. */
export interface Busy {
  /** The tasks over FELT as the page's own PerformanceObserver sees them: by the clock, waiting for a busy machine included. */
  readonly byTheClock: readonly number[];
  /** What the page itself worked in its longest tasks: processor time of its main thread, the same on a busy machine. */
  readonly worked: readonly number[];
}

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args: { readonly name?: string };
}

/** Watches the main thread of a page while something is done in it. */
export async function whatKeptBusy(browser: Browser, page: Page, deed: () => Promise<void>): Promise<Busy> {
  await page.evaluate(() => {
    const tasks: number[] = [];
    const observer = new PerformanceObserver((list) => list.getEntries().forEach(({ duration }) => tasks.push(Math.round(duration))));
    observer.observe({ type: 'longtask' });
    Object.assign(window, { tasks });
  });
  await browser.startTracing(page, { categories: ['disabled-by-default-devtools.timeline'] });
  await deed();
  // A task is reported after it is over.
  await page.waitForTimeout(100);
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString()) as { traceEvents: TraceEvent[] };
  const thread = ({ pid, tid }: TraceEvent): string => `${pid} ${tid}`;
  const main = new Set(traceEvents.filter(({ name, args }) => name === 'thread_name' && args.name === 'CrRendererMain').map(thread));
  const tasks = traceEvents.filter((event) => event.name === 'RunTask' && main.has(thread(event)));
  if (tasks.length === 0) throw new Error('the browser told nothing about its tasks');
  const worked = tasks.map(({ tdur, dur }) => Math.round((tdur ?? dur ?? 0) / 1000)).sort((a, b) => b - a);
  const byTheClock = await page.evaluate(() => Reflect.get(window, 'tasks') as number[]);
  return { byTheClock: byTheClock.filter((task) => task > FELT).sort((a, b) => b - a), worked: worked.slice(0, 3) };
}
