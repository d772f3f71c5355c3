import { wrap } from 'comlink';
import { pieceInks } from '../../canvas/piece-ink.ts';
import { printsOnCloth, type PrintsOnCloth } from '../../canvas/draw-prints.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import type { ScrapFamily } from '../../pattern/scraps.ts';

interface Spreader {
  readonly scrapsOf: (pattern: Pattern) => readonly ScrapFamily[];
}

const known = new WeakMap<Pattern, Promise<readonly ScrapFamily[]>>();
let worker: Worker | null = null;
let busy = false;

/** @returns how the prints of a pattern's scraps lie, worked out beside the page; what was asked for before and is not done is dropped */
export function familiesOf(pattern: Pattern): Promise<readonly ScrapFamily[]> {
  let found = known.get(pattern);
  if (!found) known.set(pattern, (found = spread(pattern)));
  return found;
}

async function spread(pattern: Pattern): Promise<readonly ScrapFamily[]> {
  if (busy) {
    worker?.terminate();
    worker = null;
  }
  const here = (worker ??= new Worker(new URL('./scraps-worker.ts', import.meta.url), { type: 'module' }));
  busy = true;
  const families = await wrap<Spreader>(here).scrapsOf(pattern);
  if (worker === here) busy = false;
  return families;
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
