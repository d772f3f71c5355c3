import { good, type Result } from '../measure/problem.ts';
import type { Block, Fabric, Patch } from './block.ts';
import { checkPhotos } from './colour/photos.ts';
import { broughtPhoto, withoutStrays } from './colour/shown-photos.ts';
import { checkFabrics } from './fabric-checks.ts';
import { liftedBox, moved, type Lifted } from './lifted.ts';
import { refused } from './problems.ts';
import { all, lift } from './selecting.ts';

/*
 * Patches that were copied are a block by themselves, a scrap: on the grid they came from, with the fabrics they are of. So they can be
 * kept, written as a file and read again anywhere.
 */

/** @returns patches that lie on a block, as a scrap of it; nothing else of the block comes with them but its ground and their photos */
export function scrapOf(lifted: Lifted, { name, finished, grid, fabrics, ground, photos }: Block): Block {
  const used = new Set([ground, ...lifted.patches.map(({ fabric }) => fabric)]);
  const { denominator, patches, seams } = lifted;
  const own = fabrics.filter(({ id }) => used.has(id));
  return withoutStrays({ name, finished, grid, denominator, fabrics: own, ground, patches, seams, ...(photos && { photos }) });
}

/** A scrap in the hand over a block that has its fabrics. */
export interface TakenOver {
  readonly block: Block;
  readonly lifted: Lifted;
  /** Names of fabrics that the block did not have. */
  readonly added: readonly string[];
}

/**
 * Takes a scrap in the hand over a block. Its fabrics become those of the block: the one of the same id that has the same name or
 * colour, else the one of the same name and colour, else a new one in the tray.
 */
export function takeOver(block: Block, scrap: Block): Result<TakenOver> {
  const found = lift(scrap, all(scrap));
  if (!found.ok) return found;
  const fabrics = [...block.fabrics];
  const added: string[] = [];
  let photos = block.photos ?? [];
  const known = new Map<string, string>();
  for (const fabric of scrap.fabrics) {
    if (!found.value.patches.some((patch) => patch.fabric === fabric.id)) continue;
    const own = matching(fabrics, fabric);
    known.set(fabric.id, own?.id ?? freshId(fabrics, fabric.id));
    if (own) continue;
    const brought = broughtPhoto(photos, fabric, scrap.photos ?? []);
    photos = brought.photos;
    fabrics.push({ ...brought.fabric, id: known.get(fabric.id)! });
    added.push(fabric.name);
  }
  const next: Block = added.length > 0 ? { ...block, fabrics, ...(photos.length > 0 && { photos }) } : block;
  const fault = added.length > 0 ? (checkFabrics(fabrics) ?? checkPhotos(next)) : null;
  if (fault) return refused(fault);
  const patches = found.value.patches.map((patch): Patch => ({ ...patch, fabric: known.get(patch.fabric)! }));
  return good({ block: next, lifted: { ...found.value, patches }, added });
}

function matching(fabrics: readonly Fabric[], { id, name, color }: Fabric): Fabric | undefined {
  return (
    fabrics.find((fabric) => fabric.id === id && (fabric.name === name || fabric.color === color)) ??
    fabrics.find((fabric) => fabric.name === name && fabric.color === color)
  );
}

/** @returns an id that no fabric has, the given one if it is free */
function freshId(fabrics: readonly Fabric[], id: string): string {
  const known = new Set(fabrics.map((fabric) => fabric.id));
  if (!known.has(id)) return id;
  let n = fabrics.length + 1;
  while (known.has(`fabric-${n}`)) n++;
  return `fabric-${n}`;
}

/** @returns patches moved beside where they lie: to the right if they fit there on the block, else below, left or above, else nowhere */
export function beside(lifted: Lifted, { columns, rows }: Block['grid']): Lifted {
  const { left, top, right, bottom } = liftedBox(lifted);
  const { denominator } = lifted;
  const [wide, high] = [right - left, bottom - top];
  const shift = (dx: number, dy: number): Lifted => moved(lifted, { dx, dy, denominator });
  if (right + wide <= columns * denominator) return shift(wide, 0);
  if (bottom + high <= rows * denominator) return shift(0, high);
  if (left >= wide) return shift(-wide, 0);
  return top >= high ? shift(0, -high) : lifted;
}
