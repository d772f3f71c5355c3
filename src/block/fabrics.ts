import { good, type Result } from '../measure/problem.ts';
import type { Block, Fabric } from './block.ts';
import { checkFabricKnown, checkFabrics } from './checks.ts';
import { ownPlace, refused } from './problems.ts';

/** @returns the block with one fabric more, which must have a new id */
export const addFabric = (block: Block, fabric: Fabric): Result<Block> => withFabrics(block, [...block.fabrics, fabric]);

/** @returns the block with another name for a fabric */
export const renameFabric = (block: Block, id: string, name: string): Result<Block> =>
  changed(block, id, (fabric) => ({ ...fabric, name }));

/** @returns the block with another colour for a fabric, as #rrggbb */
export const recolourFabric = (block: Block, id: string, color: string): Result<Block> =>
  changed(block, id, (fabric) => ({ ...fabric, color: color.toLowerCase() }));

/**
 * Takes a fabric out of the block.
 * @param into the fabric that its patches, and the ground, take instead
 */
export function deleteFabric(block: Block, id: string, into: string): Result<Block> {
  const unknown = checkFabricKnown('The swatch tray', id, block.fabrics) ?? checkFabricKnown('The swatch tray', into, block.fabrics);
  if (unknown) return refused(unknown);
  if (id === into) return refused(ownPlace(id));
  return good({
    ...block,
    fabrics: block.fabrics.filter((fabric) => fabric.id !== id),
    ground: block.ground === id ? into : block.ground,
    patches: block.patches.map((patch) => (patch.fabric === id ? { ...patch, fabric: into } : patch)),
  });
}

/** @returns the block with another fabric where nothing is painted */
export function setGround(block: Block, id: string): Result<Block> {
  const unknown = checkFabricKnown('The ground', id, block.fabrics);
  return unknown ? refused(unknown) : good({ ...block, ground: id });
}

function changed(block: Block, id: string, change: (fabric: Fabric) => Fabric): Result<Block> {
  const unknown = checkFabricKnown('The swatch tray', id, block.fabrics);
  return unknown ? refused(unknown) : withFabrics(block, block.fabrics.map((fabric) => (fabric.id === id ? change(fabric) : fabric)));
}

function withFabrics(block: Block, fabrics: readonly Fabric[]): Result<Block> {
  const fault = checkFabrics(fabrics);
  return fault ? refused(fault) : good({ ...block, fabrics });
}
