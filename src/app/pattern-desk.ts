import type { Block } from '../block/block.ts';
import type { Problem, Result } from '../measure/problem.ts';
import type { Alternative, Pattern } from '../pattern/pattern.ts';
import { across } from './across.ts';
import type { PatternMaker, Standing } from './pattern-maker.ts';
import { createStore, type Store } from './store.ts';

/** The pattern as far as it is worked out. */
export interface Desk {
  /** The drawing that pattern or problem are about; null before the first. */
  readonly drawn: Block | null;
  /** The last pattern worked out; while `working` it is that of an older drawing. */
  readonly pattern: Pattern | null;
  /** Every way to sew that pattern's drawing; null while they are still looked for. */
  readonly ways: readonly Alternative[] | null;
  /** Why the last drawing has no pattern. */
  readonly problem: Problem | null;
  readonly working: boolean;
  /** How the search for that pattern stands: a first one is shown while a better one is looked for; null before the first. */
  readonly standing: Standing | null;
}

/**
 * How long a newer drawing waits for work on an older one before it is stopped, in milliseconds: a pattern may be nearly done, and
 * another worker takes a moment to begin; nobody misses the other ways to sew an older drawing.
 */
const PATIENCE = { pattern: 250, ways: 30 } as const;

/** A pattern maker at work away from this page; `stop` ends it at once, whatever it does. */
export interface Bench {
  /** Works out the pattern of a drawing, sewn the way that is chosen in it, or where that takes long a first one. */
  readonly workOut: (block: Block) => Promise<Standing>;
  /** Goes on with the drawing whose search is not over. */
  readonly goOn: () => Promise<Standing>;
  /** Fetches the pattern that was worked out. */
  readonly collect: () => Promise<Result<Pattern> | null>;
  /** Every way to sew a drawing, the chosen one too. */
  readonly everyWay: (block: Block) => Promise<readonly Alternative[]>;
  readonly stop: () => void;
}

/** @returns a pattern maker in a worker of its own */
export function workerBench(): Bench {
  const worker = new Worker(new URL('./pattern-worker.ts', import.meta.url), { type: 'module' });
  const { workOut, goOn, collect, everyWay } = across<PatternMaker>(worker);
  return { workOut, goOn, collect, everyWay, stop: () => worker.terminate() };
}

/** Sentence for the one thing that is never the drawing's fault. */
const STOPPED: Problem = {
  code: 'pattern-stopped',
  sentence: 'The pattern of this drawing could not be worked out; the drawing is safe: change it a little, or undo, to try again.',
};

/** What of a block decides which ways there are to sew it. */
const DRAWN = ['finished', 'grid', 'denominator', 'ground', 'patches', 'seams', 'pins'] as const satisfies readonly (keyof Block)[];

/** @returns which fabrics stand for scraps, whose patches lie apart */
const familiesOf = ({ fabrics }: Block): string => fabrics.flatMap(({ id, scraps }) => (scraps ? [id] : [])).join();

/**
 * Keeps the pattern of the newest drawing: first the chosen way, then every way there is. One drawing is worked on at a time;
 * a newer one waits for it briefly, then stops it.
 * @param begin opens a bench: called once, and again whenever one had to be stopped
 * @param rest resolves when the hand rests: a finished pattern is fetched only then
 */
export function createDesk(begin: () => Bench, rest: () => Promise<void>): { readonly desk: Store<Desk>; readonly want: (block: Block) => void } {
  const desk = createStore<Desk>({ drawn: null, pattern: null, ways: null, problem: null, working: true, standing: null });
  let bench: Bench | null = null;
  let task: { readonly block: Block; readonly patience: number } | null = null;
  let wanted: Block | null = null;
  /** The drawing whose ways the desk has. */
  let explored: Block | null = null;
  let impatience: ReturnType<typeof setTimeout> | undefined;

  const run = <T>(block: Block, patience: number, ask: (at: Bench) => Promise<T>, done: (made: T) => void, broken: () => void): void => {
    bench ??= begin();
    const here = bench;
    const mine = { block, patience };
    task = mine;
    const over = (next: () => void): void => {
      clearTimeout(impatience);
      impatience = undefined;
      task = null;
      if (wanted === block) next();
      else if (wanted) work(wanted);
    };
    ask(here).then(
      (made) => task === mine && over(() => done(made)),
      () => {
        here.stop();
        if (task !== mine) return;
        bench = null;
        over(broken);
      },
    );
  };

  /** What a bench tells, with the pattern where there is a new one. */
  interface Told {
    readonly standing: Standing;
    readonly made: Result<Pattern> | null;
  }

  const listen = async (block: Block, at: Bench, told: Promise<Standing>, before: number): Promise<Told> => {
    const standing = await told;
    if (standing.patterns === before) return { standing, made: null };
    await rest();
    return { standing, made: wanted === block ? await at.collect() : null };
  };

  const work = (block: Block): void => {
    const show = ({ standing, made }: Told): void => {
      if (!made?.ok) {
        explored = null;
        desk.set({ drawn: block, pattern: null, ways: null, problem: made?.problem ?? STOPPED, working: false, standing: null });
        return;
      }
      const known = explored !== null && DRAWN.every((name) => explored![name] === block[name]) && familiesOf(explored) === familiesOf(block);
      desk.change(({ ways }) => ({ drawn: block, pattern: made.value, ways: known ? ways : null, problem: null, working: false, standing }));
      if (!known) explored = null;
      follow(block, standing);
    };
    const stopped = (): void => desk.change((now) => ({ ...now, problem: STOPPED, working: false }));
    run(block, PATIENCE.pattern, (at) => listen(block, at, at.workOut(block), 0), show, stopped);
  };

  /** What comes after a pattern: a better one, or every other way. */
  const follow = (block: Block, standing: Standing): void => {
    if (!standing.looking) {
      if (explored === null) explore(block);
      return;
    }
    const show = ({ standing: after, made }: Told): void => {
      desk.change((now) => ({ ...now, pattern: made?.ok ? made.value : now.pattern, standing: after }));
      follow(block, after);
    };
    // The pattern that is there is sound.
    const over = (): void => {
      desk.change((now) => ({ ...now, standing: { ...standing, looking: false } }));
      explore(block);
    };
    run(block, PATIENCE.ways, (at) => listen(block, at, at.goOn(), standing.patterns), show, over);
  };

  const explore = (block: Block): void => {
    const found = (ways: readonly Alternative[]): void => {
      explored = block;
      desk.change((now) => ({ ...now, ways }));
    };
    run(block, PATIENCE.ways, (at) => at.everyWay(block), found, () => found([]));
  };

  const losePatience = (): void => {
    impatience = undefined;
    if (task === null || task.block === wanted) return;
    bench?.stop();
    bench = null;
    task = null;
    if (wanted) work(wanted);
  };

  const want = (block: Block): void => {
    if (wanted === block) return;
    wanted = block;
    desk.change((now) => (now.working ? now : { ...now, working: true }));
    if (task === null) work(block);
    else impatience ??= setTimeout(losePatience, task.patience);
  };

  return { desk, want };
}
