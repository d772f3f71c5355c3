import { releaseProxy, wrap, type Remote } from 'comlink';
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
  readonly ask: <T>(what: (maker: Remote<PagesMaker>) => Promise<T>) => Promise<T>;
  readonly stop: () => void;
}

/** @returns a desk with a worker of its own, which ends when it is stopped */
export function createPagesDesk(): PagesDesk {
  const pages = createStore<Pages>({ laid: null, of: null, busy: false, failed: false });
  let worker: Worker | null = null;
  let maker: Remote<PagesMaker> | null = null;
  let wanted: Wish | null = null;
  let working = false;

  const open = (): Remote<PagesMaker> => {
    if (maker) return maker;
    worker = new Worker(new URL('./pages-worker.ts', import.meta.url), { type: 'module' });
    maker = wrap<PagesMaker>(worker);
    void maker.begin(FACES);
    return maker;
  };
  const stop = (): void => {
    maker?.[releaseProxy]();
    worker?.terminate();
    worker = maker = null;
  };
  const ask: PagesDesk['ask'] = (what) => {
    const at = open();
    return new Promise((resolve, reject) => {
      worker!.onerror = () => reject(new Error('the worker of the pages stopped'));
      what(at).then(resolve, reject);
    });
  };
  const work = async (): Promise<void> => {
    working = true;
    for (let wish = wanted; wish; wish = wanted === wish ? null : wanted) {
      try {
        const sent = await ask(async (at) => await at.layOut(wish!));
        pages.change(({ laid }) => ({ laid: received(sent, laid?.document.pages ?? []), of: wish, busy: wanted !== wish, failed: false }));
      } catch {
        stop();
        pages.change((now) => ({ ...now, laid: null, of: null, busy: wanted !== wish, failed: true }));
      }
    }
    working = false;
  };
  return {
    pages,
    want: (wish) => {
      if (wanted && wanted.block === wish.block && wanted.pattern === wish.pattern && wanted.style === wish.style) return;
      wanted = wish;
      pages.change((now) => ({ ...now, busy: true }));
      if (!working) void work();
    },
    ask,
    stop: () => {
      wanted = null;
      stop();
    },
  };
}
