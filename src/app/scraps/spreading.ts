import { wrap, type Remote } from 'comlink';
import { MAX_SEED } from '../../block/limits.ts';
import { pieceInks } from '../../canvas/piece-ink.ts';
import { printsOnCloth, type PrintsOnCloth } from '../../canvas/draw-prints.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import type { ScrapFamily } from '../../pattern/scraps.ts';

interface Spreader {
  readonly scrapsOf: (pattern: Pattern) => readonly ScrapFamily[];
}

const known = new WeakMap<Pattern, Promise<readonly ScrapFamily[]>>();
/** How the worker is called: by one caller for as long as the page lives, for the last one that goes away takes the line down. */
let bench: Remote<Spreader> | null = null;

/** @returns how the prints of a pattern's scraps lie, worked out beside the page */
export function familiesOf(pattern: Pattern): Promise<readonly ScrapFamily[]> {
  let found = known.get(pattern);
  if (!found) known.set(pattern, (found = spread(pattern)));
  return found;
}

async function spread(pattern: Pattern): Promise<readonly ScrapFamily[]> {
  bench ??= opened();
  return await bench.scrapsOf(pattern);
}

const opened = (): Remote<Spreader> => wrap<Spreader>(new Worker(new URL('./scraps-worker.ts', import.meta.url), { type: 'module' }));

/** How many seeds are tried for another spread. */
const TRIES = 20;

/** @returns a seed by which the prints of a family lie otherwise than now, whatever they are numbered; null where none is found */
export async function otherSeed(pattern: Pattern, fabric: string): Promise<number | null> {
  const { seed } = pattern.scraps.find(({ id }) => id === fabric)!.scraps!;
  const lie = async (by: number): Promise<string> => {
    const scraps = pattern.scraps.map((each) => (each.id === fabric ? { ...each, scraps: { ...each.scraps!, seed: by } } : each));
    const families = await familiesOf({ ...pattern, scraps });
    const of = families.find((family) => family.fabric.id === fabric)!.of;
    const names = new Map<number, number>();
    return pattern.pieces.flatMap(({ id }) => {
      const print = of.get(id);
      if (print === undefined) return [];
      if (!names.has(print)) names.set(print, names.size);
      return [names.get(print)];
    }).join();
  };
  const now = await lie(seed);
  for (let i = 1; i <= TRIES; i++) {
    const next = (seed + i) % (MAX_SEED + 1);
    if ((await lie(next)) !== now) return next;
  }
  return null;
}

/** @returns the prints of a pattern's scraps as they are drawn on the cloth of a block */
export async function printsFor(pattern: Pattern, grid: { readonly columns: number; readonly rows: number }): Promise<PrintsOnCloth> {
  const families = await familiesOf(pattern);
  const inks = pieceInks(pattern, grid).flatMap((piece) => {
    const family = families.find(({ fabric }) => fabric.id === piece.fabric);
    const print = family?.of.get(piece.id);
    return family && print !== undefined ? [{ piece, print, of: family.prints }] : [];
  });
  return printsOnCloth(inks);
}
