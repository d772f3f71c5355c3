import { good, type Result } from '../../measure/problem.ts';
import { chanceFrom } from '../../measure/chance.ts';
import type { Block, Colourway, Fabric, Look } from '../block.ts';
import { checkText } from '../checks.ts';
import { checkFabrics } from '../fabric-checks.ts';
import { refused } from '../problems.ts';
import { nameTaken, noSuchColourway } from './colourway-problems.ts';
import { tooManyColourways } from './problems.ts';
import { MAX_COLOURWAYS } from '../limits.ts';
import type { Colouring } from './colourings.ts';
import { ownCloths } from './own-cloths.ts';
import { inPhotos } from './shown-photos.ts';

/** @returns what a fabric is, but for what the block calls it */
export function lookOf({ id: _, ...look }: Fabric): Look {
  return look;
}

/** @returns the block with other looks for some of its fabrics; all that is drawn stays */
export function inLooks(block: Block, looks: Readonly<Record<string, Look>>): Result<Block> {
  const { photos = [] } = block;
  const fabrics = ownCloths(block.fabrics.map((fabric): Fabric => (Object.hasOwn(looks, fabric.id) ? inPhotos(photos, { id: fabric.id, ...looks[fabric.id]! }) : fabric)));
  const fault = checkFabrics(fabrics);
  return fault ? refused(fault) : good({ ...block, fabrics });
}

/**
 * @param ids the roles, in the colouring's order
 * @param cloths what the colouring's numbers stand for
 * @returns the looks of the roles; of several that take one cloth, the first has it, and the others are cut from the same
 */
export function looksOf(ids: readonly string[], colouring: Colouring, cloths: readonly Look[]): Readonly<Record<string, Look>> {
  const first = new Map<number, string>();
  return Object.fromEntries(
    ids.map((id, role): readonly [string, Look] => {
      const cloth = colouring[role]!;
      const { same: _, ...look } = cloths[cloth]!;
      const before = first.get(cloth);
      if (before === undefined) first.set(cloth, id);
      return [id, before === undefined || look.scraps ? look : { ...look, same: before }];
    }),
  );
}

/** @returns the looks of some fabrics handed on, each to the one so many places further in the list, round and round */
export function rotated(block: Block, ids: readonly string[], by: number): Readonly<Record<string, Look>> {
  const from = ids.map((_, i) => (((i - by) % ids.length) + ids.length) % ids.length);
  return exchanged(block, ids, from);
}

/** @returns the looks of some fabrics in another order, by chance: the same for the same seed, and not as they are where there are two or more */
export function shuffled(block: Block, ids: readonly string[], seed: number): Readonly<Record<string, Look>> {
  const chance = chanceFrom(seed);
  const order = ids.map((_, i) => i);
  const from = chance.shuffled(order);
  return exchanged(block, ids, ids.length > 1 && from.every((i, at) => i === at) ? [...order.slice(1), 0] : from);
}

/** What is cut from the cloth of a fabric that changes its place is cut from the cloth of the one it goes to. */
function exchanged(block: Block, ids: readonly string[], from: readonly number[]): Readonly<Record<string, Look>> {
  const fabrics = new Map(block.fabrics.map((fabric) => [fabric.id, fabric]));
  const place = new Map(ids.map((id, to) => [ids[from[to]!]!, id]));
  const moved = (id: string): string => place.get(id) ?? id;
  const looks = new Map(ids.map((id, to): readonly [string, Look] => [id, lookOf(fabrics.get(ids[from[to]!]!)!)]));
  for (const { id, ...look } of block.fabrics) if (!looks.has(id) && look.same !== undefined) looks.set(id, look);
  return Object.fromEntries([...looks].map(([id, { same, ...look }]) => [id, same === undefined ? look : { ...look, same: moved(same) }]));
}

/** @returns the block with its looks kept under a name, in place of what was kept under it before */
export function keepColourway(block: Block, name: string): Result<Block> {
  const fault = checkText("The colourway's name", name);
  if (fault) return refused(fault);
  const colourway: Colourway = { name, looks: Object.fromEntries(block.fabrics.map((fabric) => [fabric.id, lookOf(fabric)])) };
  const all = block.colourways ?? [];
  const known = all.some((each) => each.name === name);
  if (!known && all.length === MAX_COLOURWAYS) return refused(tooManyColourways(all.length + 1));
  return good({ ...block, colourways: known ? all.map((each) => (each.name === name ? colourway : each)) : [...all, colourway] });
}

/** @returns the block in the looks that are kept under a name */
export function takeColourway(block: Block, name: string): Result<Block> {
  const colourway = block.colourways?.find((each) => each.name === name);
  return colourway ? inLooks(block, colourway.looks) : refused(noSuchColourway(name, namesOf(block)));
}

/** @returns the block without what is kept under a name */
export function dropColourway(drawn: Block, name: string): Result<Block> {
  const { colourways = [], ...block } = drawn;
  const rest = colourways.filter((each) => each.name !== name);
  if (rest.length === colourways.length) return refused(noSuchColourway(name, namesOf(drawn)));
  return good({ ...block, ...(rest.length > 0 && { colourways: rest }) });
}

/** @returns the block with another name, which no other has, for what is kept under one */
export function renameColourway(block: Block, name: string, to: string): Result<Block> {
  const names = namesOf(block);
  if (!names.includes(name)) return refused(noSuchColourway(name, names));
  const fault = checkText("The colourway's name", to) ?? (to !== name && names.includes(to) ? nameTaken(to) : null);
  if (fault) return refused(fault);
  return good({ ...block, colourways: block.colourways!.map((each) => (each.name === name ? { ...each, name: to } : each)) });
}

const namesOf = ({ colourways = [] }: Block): readonly string[] => colourways.map(({ name }) => name);

/** @returns the name of the colourway that the block is in; null where its looks are kept under none */
export function worn({ fabrics, colourways = [] }: Block): string | null {
  const same = (a: Look, b: Look): boolean => JSON.stringify(inOrder(a)) === JSON.stringify(inOrder(b));
  return colourways.find(({ looks }) => fabrics.every((fabric) => Object.hasOwn(looks, fabric.id) && same(lookOf(fabric), looks[fabric.id]!)))?.name ?? null;
}

const inOrder = (look: Look): readonly unknown[] => Object.entries(look).sort(([a], [b]) => (a < b ? -1 : 1));
