import type { Block } from '../block/block.ts';

let last: Block | null = null;

/**
 * @returns a block without what is printed beside its pattern, which changes nothing about how it is sewn; the same object as long as
 * nothing else changes
 */
export function drawingAlone({ publication: _, ...drawing }: Block): Block {
  const names = Object.keys(drawing) as (keyof typeof drawing)[];
  const same = last !== null && names.length === Object.keys(last).length && names.every((name) => last![name] === drawing[name]);
  return same ? last! : (last = drawing);
}
