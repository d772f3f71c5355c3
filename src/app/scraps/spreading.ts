import type { Block } from '../../block/block.ts';
import { MAX_SEED } from '../../block/limits.ts';
import type { Picture } from '../../block/publication.ts';
import { photosOnCloth } from '../../canvas/draw-photos.ts';
import { across, type Across } from '../across.ts';
import { jpegBitmap } from '../jpeg-bitmap.ts';
import { pieceInks } from '../../canvas/piece-ink.ts';
import { printsOnCloth, type PrintsOnCloth } from '../../canvas/draw-prints.ts';
import { toNumber } from '../../measure/rational.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { photosOnPieces } from '../../pattern/photo-places.ts';
import type { ScrapFamily } from '../../pattern/scraps.ts';

interface Spreader {
  readonly scrapsOf: (pattern: Pattern) => readonly ScrapFamily[];
}

const known = new WeakMap<Pattern, Promise<readonly ScrapFamily[]>>();
/** The worker, for as long as the page lives. */
let bench: Across<Spreader> | null = null;

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

const opened = (): Across<Spreader> => across<Spreader>(new Worker(new URL('./scraps-worker.ts', import.meta.url), { type: 'module' }));

/** How many seeds are tried for another spread. */
const TRIES = 20;

/** @returns a seed by which the prints of a family lie otherwise than now, whatever they are numbered where none is held; null where none is found */
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
      // Beside a print that is held it matters which one it is.
      if (pattern.heldPrints.length > 0) return [print];
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

/** @returns the photos of a pattern's cloth, and the prints of its scraps, as they are drawn on the cloth of a block */
export async function printsFor(pattern: Pattern, block: Block): Promise<PrintsOnCloth> {
  const { grid, finished } = block;
  const families = pattern.scraps.length > 0 ? await familiesOf(pattern) : [];
  const pieces = pieceInks(pattern, grid);
  const on = photosOnPieces(block, pattern);
  const shown = await Promise.all([...new Set([...on.values()].map(({ picture }) => picture))].map(async (picture) => [picture.id, await photoOf(picture)] as const));
  const photos = new Map(shown.flatMap(([id, drawn]) => (drawn ? [[id, drawn] as const] : [])));
  const cloth = photosOnCloth(pieces, on, photos, toNumber(finished.width) / grid.columns);
  const inks = pieces.flatMap((piece) => {
    const family = families.find(({ fabric }) => fabric.id === piece.fabric);
    const print = family?.of.get(piece.id);
    return family && print !== undefined ? [{ piece, print, of: family.prints }] : [];
  });
  const prints = printsOnCloth(inks);
  return {
    ...prints,
    shade: (pen, view) => {
      cloth(pen, view);
      prints.shade(pen, view);
    },
  };
}

const pictures = new WeakMap<Picture, Promise<ImageBitmap | null>>();

/** @returns a photo as it can be drawn; null where the browser cannot read it, and the cloth keeps its plain colour */
function photoOf(picture: Picture): Promise<ImageBitmap | null> {
  let found = pictures.get(picture);
  if (!found) {
    found = jpegBitmap(picture.jpeg).catch(() => null);
    pictures.set(picture, found);
  }
  return found;
}
