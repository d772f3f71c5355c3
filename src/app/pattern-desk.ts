import { releaseProxy, wrap, type Remote } from 'comlink';
import type { Block } from '../block/block.ts';
import type { Problem, Result } from '../measure/problem.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { PatternMaker } from './pattern-worker.ts';
import { createStore, type Store } from './store.ts';

/** The pattern as far as it is worked out. */
export interface Desk {
  /** The last pattern worked out; while `working` it is that of an older drawing. */
  readonly pattern: Pattern | null;
  /** Why the last drawing has no pattern. */
  readonly problem: Problem | null;
  readonly working: boolean;
}

/** A computation older than this is stopped when a newer drawing comes; a younger one is left to end, being nearly done. */
const PATIENCE = 250;

/** A pattern maker at work away from this page; `stop` ends it at once, whatever it does. */
export interface Bench {
  readonly makePattern: (block: Block) => Promise<Result<Pattern>>;
  readonly stop: () => void;
}

/** @returns a pattern maker in a worker of its own */
export function workerBench(): Bench {
  const worker = new Worker(new URL('./pattern-worker.ts', import.meta.url), { type: 'module' });
  const maker: Remote<PatternMaker> = wrap<PatternMaker>(worker);
  return {
    makePattern: (block) =>
      new Promise((resolve, reject) => {
        worker.onerror = () => reject(new Error('the pattern worker stopped'));
        maker.makePattern(block, block.choices ?? {}).then(resolve, reject);
      }),
    stop: () => {
      maker[releaseProxy]();
      worker.terminate();
    },
  };
}

/** Sentence for the one thing that is never the drawing's fault. */
const STOPPED: Problem = {
  code: 'pattern-stopped',
  sentence: 'The pattern of this drawing could not be worked out; the drawing is safe: change it a little, or undo, to try again.',
};

/**
 * Keeps the pattern of the newest drawing. One drawing is worked on at a time; a newer one waits for it briefly, then stops it.
 * @param begin opens a bench: called once, and again whenever one had to be stopped
 */
export function createDesk(begin: () => Bench): { readonly desk: Store<Desk>; readonly want: (block: Block) => void } {
  const desk = createStore<Desk>({ pattern: null, problem: null, working: true });
  let bench: Bench | null = null;
  let busyWith: Block | null = null;
  let wanted: Block | null = null;
  let impatience: ReturnType<typeof setTimeout> | undefined;

  const work = (block: Block): void => {
    bench ??= begin();
    const here = bench;
    busyWith = block;
    const over = (change: (now: Desk) => Desk): void => {
      if (bench !== here || busyWith !== block) return;
      clearTimeout(impatience);
      impatience = undefined;
      busyWith = null;
      if (wanted === block) desk.change(change);
      else if (wanted) work(wanted);
    };
    here.makePattern(block).then(
      (made) => over(() => ({ pattern: made.ok ? made.value : null, problem: made.ok ? null : made.problem, working: false })),
      () => {
        here.stop();
        if (bench !== here || busyWith !== block) return;
        bench = null;
        busyWith = null;
        if (wanted === block) desk.change((now) => ({ ...now, problem: STOPPED, working: false }));
        else if (wanted) work(wanted);
      },
    );
  };

  const losePatience = (): void => {
    impatience = undefined;
    if (busyWith === null || busyWith === wanted) return;
    bench?.stop();
    bench = null;
    if (wanted) work(wanted);
  };

  const want = (block: Block): void => {
    if (wanted === block) return;
    wanted = block;
    desk.change((now) => (now.working ? now : { ...now, working: true }));
    if (busyWith === null) work(block);
    else impatience ??= setTimeout(losePatience, PATIENCE);
  };

  return { desk, want };
}
