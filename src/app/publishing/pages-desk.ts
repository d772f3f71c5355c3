import type { Pattern } from '../../pattern/pattern.ts';
import { across, type Across } from '../across.ts';
import { FACES } from '../sheet/templates/faces.ts';
import { createStore, type Store } from '../store.ts';
import { received } from './laid-pages.ts';
import type { Laid, Wish } from './pages-maker.ts';
import type { PagesMaker } from './pages-worker.ts';

/** The pages as far as they are laid out. */
export interface Pages {
  /** The last that were laid out; while `busy` those of an older wish. */
  readonly laid: Laid | null;
  /** What they were laid out from. */
  readonly of: Wish | null;
  readonly busy: boolean;
  /** The last wish could not be laid out. */
  readonly failed: boolean;
}

/** Lays pages out beside this page, one wish at a time; of those that come meanwhile the newest. */
export interface PagesDesk {
  readonly pages: Store<Pages>;
  readonly want: (wish: Wish) => void;
  /** @returns what the worker makes of the pages it has laid out last */
  readonly ask: <T>(what: (maker: Across<PagesMaker>) => Promise<T>) => Promise<T>;
  /** Ends the worker; with the next wish another one begins. */
  readonly stop: () => void;
}

/** A worker and what it can be asked. */
interface Bench {
  readonly worker: Worker;
  readonly maker: Across<PagesMaker>;
  /** The pattern that was sent there last. */
  has: Pattern | null;
}

function begun(): Bench {
  const worker = new Worker(new URL('./pages-worker.ts', import.meta.url), { type: 'module' });
  const maker = across<PagesMaker>(worker);
  // Where that fails, so does what is asked next.
  maker.begin(FACES).catch(() => undefined);
  return { worker, maker, has: null };
}

const sameWish = (one: Wish, other: Wish): boolean => one.block === other.block && one.pattern === other.pattern && one.style === other.style;

/** @returns a desk with a worker of its own */
export function createPagesDesk(): PagesDesk {
  const pages = createStore<Pages>({ laid: null, of: null, busy: false, failed: false });
  let bench: Bench | null = null;
  let wanted: Wish | null = null;
  /** The bench that lays out just now. */
  let working: Bench | null = null;

  const stop = (): void => {
    bench?.worker.terminate();
    bench = working = wanted = null;
  };
  const work = async (): Promise<void> => {
    const here = (bench ??= begun());
    working = here;
    for (let wish = wanted; wish && working === here; wish = wanted === wish ? null : wanted) {
      const pattern = here.has === wish.pattern ? null : (here.has = wish.pattern);
      const sent = await here.maker.layOut({ ...wish, pattern }).catch(() => null);
      if (working !== here) return;
      const busy = wanted !== wish;
      if (sent) pages.change(({ laid }) => ({ laid: received(sent, laid?.document.pages ?? []), of: wish, busy, failed: false }));
      else {
        const next = wanted;
        stop();
        pages.set({ laid: null, of: null, busy, failed: true });
        wanted = next;
        if (busy) void work();
        return;
      }
    }
    working = null;
  };
  return {
    pages,
    want: (wish) => {
      if (wanted && sameWish(wanted, wish)) return;
      wanted = wish;
      pages.change((now) => ({ ...now, busy: true }));
      if (!working) void work();
    },
    ask: (what) => what((bench ??= begun()).maker),
    stop,
  };
}
