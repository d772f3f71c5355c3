import type { Fabric } from '../../block/block.ts';

/** @returns "fabric-4" or the next id that no fabric has */
export function freshId(fabrics: readonly Pick<Fabric, 'id'>[]): string {
  const known = new Set(fabrics.map(({ id }) => id));
  let n = fabrics.length + 1;
  while (known.has(`fabric-${n}`)) n++;
  return `fabric-${n}`;
}
