import type { ClothOrder } from '../cutting/cloth/order.ts';
import type { ClothLayout } from '../cutting/layout.ts';
import { equals } from '../measure/rational.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { mayTakeLess, relaid } from '../pattern/relaid.ts';
import { across } from './across.ts';
import type { ClothMaker } from './cloth-worker.ts';
import type { Cloths, ClothState } from './cloths.ts';
import type { Store } from './store.ts';

/** Cuts cloth away from this page; `stop` ends it at once. */
export interface ClothBench {
  readonly least: (order: ClothOrder) => Promise<ClothLayout>;
  readonly stop: () => void;
}

/** @returns one in a worker of its own */
export function workerBench(): ClothBench {
  const worker = new Worker(new URL('./cloth-worker.ts', import.meta.url), { type: 'module' });
  return { least: across<ClothMaker>(worker).least, stop: () => worker.terminate() };
}

/** Layouts that are remembered. */
const REMEMBERED = 200;

/**
 * @param cloths is told of every better layout
 * @param begin opens a bench: called when there is something to solve, and again after it was stopped
 * @param rest resolves when the hand rests: only then is something begun or shown
 * @returns shows a pattern and solves its fabrics one after another; null stops that. What was solved before is not solved again, whatever
 * the fabric and the lines of the list are called.
 */
export function createClothDesk(cloths: Store<Cloths>, begin: () => ClothBench, rest: () => Promise<void>): (pattern: Pattern | null) => void {
  const known = new Map<string, ClothLayout>();
  let bench: ClothBench | null = null;
  let busy = false;
  let shown: Pattern | null = null;

  const tell = (pattern: Pattern, solving: string | null): void => {
    const layouts = new Map<string, ClothLayout>();
    const states = new Map<string, ClothState>();
    for (const { fabric, order, layout } of pattern.fabrics) {
      const solved = known.get(keyOf(order));
      const best = solved === undefined ? layout : withLines(solved, order);
      if (solved !== undefined) layouts.set(fabric.id, best);
      const proved = equals(best.takes, best.least);
      states.set(fabric.id, proved ? 'proved' : solved !== undefined ? 'best known' : fabric.id === solving ? 'solving' : 'quick');
    }
    cloths.set({ of: pattern, pattern: layouts.size === 0 ? pattern : relaid(pattern, layouts), states });
  };

  const solve = async (pattern: Pattern): Promise<void> => {
    await rest();
    for (const { fabric, order, layout } of pattern.fabrics) {
      if (shown !== pattern) return;
      const key = keyOf(order);
      if (!mayTakeLess({ layout }) || known.has(key)) continue;
      tell(pattern, fabric.id);
      bench ??= begin();
      const here = bench;
      busy = true;
      const found = await here.least(nameless(order)).catch(() => null);
      if (bench !== here) return;
      busy = false;
      if (found === null) {
        stop();
        break;
      }
      known.set(key, found);
      const [oldest] = known.keys();
      if (known.size > REMEMBERED) known.delete(oldest!);
      await rest();
    }
    if (shown === pattern) tell(pattern, null);
  };

  const stop = (): void => {
    bench?.stop();
    bench = null;
    busy = false;
  };

  return (pattern) => {
    shown = pattern;
    if (busy) stop();
    if (pattern === null) return;
    tell(pattern, null);
    void solve(pattern);
  };
}

/** An order whose lines are called by their place in it. */
const nameless = (order: ClothOrder): ClothOrder => ({ ...order, wanted: order.wanted.map((one, at) => ({ ...one, cut: `${at}` })) });

const keyOf = (order: ClothOrder): string => JSON.stringify(nameless(order));

/** A layout of a nameless order with the lines of the list it is for. */
function withLines(layout: ClothLayout, { wanted }: ClothOrder): ClothLayout {
  const named = <T extends { readonly cut: string }>(one: T): T => ({ ...one, cut: wanted[Number(one.cut)]!.cut });
  return {
    ...layout,
    cloths: layout.cloths.map((cloth) => ({
      ...cloth,
      strips: cloth.strips.map((strip) => ({
        ...strip,
        columns: strip.columns.map((column) => ({ ...column, pieces: column.pieces.map(named) })),
      })),
    })),
    unplaced: layout.unplaced.map(named),
  };
}
