import { good, type Problem, type Result } from '../measure/problem.ts';
import type { Block, Fabric } from './block.ts';
import { ownCloths } from './colour/own-cloths.ts';
import type { Value } from './colour/lightness.ts';
import { withoutStrays } from './colour/shown-photos.ts';
import { checkFabricKnown } from './checks.ts';
import { checkFabrics } from './fabric-checks.ts';
import { refused } from './problems.ts';
import { ownPlace } from './colour/problems.ts';

/** @returns the block with one fabric more, which must have a new id */
export const addFabric = (block: Block, fabric: Fabric): Result<Block> => withFabrics(block, [...block.fabrics, fabric]);

/** @returns the block with another name for a fabric */
export const renameFabric = (block: Block, id: string, name: string): Result<Block> =>
  changed(block, id, (fabric) => ({ ...fabric, name }));

/** @returns the block with another colour for a fabric, as #rrggbb */
export const recolourFabric = (block: Block, id: string, color: string): Result<Block> =>
  changed(block, id, (fabric) => ({ ...fabric, color: color.toLowerCase() }));

/** @returns the block with a fabric whose print has an up and a down, or has none */
export const setDirectional = (block: Block, id: string, directional: boolean): Result<Block> =>
  changed(block, id, ({ directional: _, ...fabric }) => ({ ...fabric, ...(directional && { directional }) }));

/** @returns the block with a fabric that stands for scraps of so many prints, or (null) for one cloth */
export const setPrints = (block: Block, id: string, prints: number | null): Result<Block> =>
  changed(block, id, ({ scraps, ...fabric }) => ({ ...fabric, ...(prints !== null && { scraps: { prints, seed: scraps?.seed ?? 1 } }) }));

/** @returns the block with the prints of a family of scraps spread by another seed */
export const spreadBy = (block: Block, id: string, seed: number): Result<Block> =>
  changed(block, id, (fabric) => (fabric.scraps ? { ...fabric, scraps: { ...fabric.scraps, seed } } : fabric));

/**
 * Takes a fabric out of the block.
 * @param into the fabric that its patches, and the ground, take instead
 */
export function deleteFabric(block: Block, id: string, into: string): Result<Block> {
  const fault = checkTwo(block, id, into);
  if (fault) return refused(fault);
  const rest = withFabricIds(block, (each) => (each === id ? into : each));
  const fabrics = block.fabrics.filter((fabric) => fabric.id !== id).map((fabric) => (fabric.same === id ? { ...fabric, same: into } : fabric));
  return good(withoutStrays(withoutCloth({ ...rest, fabrics: ownCloths(fabrics) }, id)));
}

/** @returns the block with a fabric that is cut from the cloth of another one, and looks like it, or (null) again from its own */
export function setSame(block: Block, id: string, other: string | null): Result<Block> {
  const fault = other === null ? checkFabricKnown('The swatch tray', id, block.fabrics) : checkTwo(block, id, other);
  if (fault) return refused(fault);
  const cloth = block.fabrics.find((fabric) => fabric.id === other);
  const next = changed(block, id, ({ same: _, ...fabric }) => (cloth ? { ...cloth, id, same: cloth.same ?? cloth.id } : fabric));
  return next.ok ? good(withoutStrays(next.value)) : next;
}

/** @returns the block in which areas of different fabrics that are cut from one cloth become one area, or keep their seams */
export const setFuses = ({ fuses: _, ...block }: Block, fuses: boolean): Block => ({ ...block, ...(fuses && { fuses }) });

/** @returns the block with a fabric once more, beside the first and under a new id; nothing is painted with it yet */
export function duplicateFabric(block: Block, id: string, newId: string): Result<Block> {
  const at = block.fabrics.findIndex((fabric) => fabric.id === id);
  if (at < 0) return refused(checkFabricKnown('The swatch tray', id, block.fabrics)!);
  const { same: _, ...fabric } = block.fabrics[at]!;
  return withFabrics(block, block.fabrics.toSpliced(at + 1, 0, { ...fabric, id: newId }));
}

/** @returns the block with a fabric moved to another place in the swatch tray, from 0 on */
export function moveFabric(block: Block, id: string, to: number): Result<Block> {
  const fabric = block.fabrics.find((each) => each.id === id);
  if (!fabric) return refused(checkFabricKnown('The swatch tray', id, block.fabrics)!);
  const rest = block.fabrics.filter((each) => each !== fabric);
  return good({ ...block, fabrics: rest.toSpliced(Math.min(Math.max(0, to), rest.length), 0, fabric) });
}

/** @returns the block with a fabric of another value than its colour's, or (null) again of that */
export const setValue = (block: Block, id: string, value: Value | null): Result<Block> =>
  changed(block, id, ({ value: _, ...fabric }) => ({ ...fabric, ...(value !== null && { value }) }));

/** @returns the block with two fabrics in each other's place throughout, on the ground too */
export function exchangeFabrics(block: Block, one: string, other: string): Result<Block> {
  const fault = checkTwo(block, one, other);
  if (fault) return refused(fault);
  const exchanged = (id: string): string => (id === one ? other : id === other ? one : id);
  return good(withFabricIds(block, exchanged));
}

/** @returns the block with one fabric instead of another throughout, on the ground too; the other stays in the swatch tray */
export function replaceFabric(block: Block, id: string, by: string): Result<Block> {
  const fault = checkTwo(block, id, by);
  return fault ? refused(fault) : good(withFabricIds(block, (each) => (each === id ? by : each)));
}

/** @returns the block with another fabric where nothing is painted */
export function setGround(block: Block, id: string): Result<Block> {
  const unknown = checkFabricKnown('The ground', id, block.fabrics);
  return unknown ? refused(unknown) : good({ ...block, ground: id });
}

const checkTwo = (block: Block, one: string, other: string): Problem | null =>
  checkFabricKnown('The swatch tray', one, block.fabrics) ??
  checkFabricKnown('The swatch tray', other, block.fabrics) ??
  (one === other ? ownPlace(one) : null);

/** @returns the block without what was chosen about the cloth of a fabric that is gone */
function withoutCloth(block: Block, id: string): Block {
  const { cloths, ...others } = block.choices ?? {};
  if (!cloths || !Object.hasOwn(cloths, id)) return block;
  const rest = Object.entries(cloths).filter(([each]) => each !== id);
  return { ...block, choices: { ...others, ...(rest.length > 0 && { cloths: Object.fromEntries(rest) }) } };
}

const withFabricIds = (block: Block, idOf: (id: string) => string): Block => ({
  ...block,
  ground: idOf(block.ground),
  patches: block.patches.map((patch) => (idOf(patch.fabric) === patch.fabric ? patch : { ...patch, fabric: idOf(patch.fabric) })),
});

function changed(block: Block, id: string, change: (fabric: Fabric) => Fabric): Result<Block> {
  const unknown = checkFabricKnown('The swatch tray', id, block.fabrics);
  return unknown ? refused(unknown) : withFabrics(block, block.fabrics.map((fabric) => (fabric.id === id ? change(fabric) : fabric)));
}

function withFabrics(block: Block, fabrics: readonly Fabric[]): Result<Block> {
  const fault = checkFabrics(fabrics);
  return fault ? refused(fault) : good({ ...block, fabrics });
}
