import type { Fabric } from '../block.ts';

/**
 * @returns the fabrics with every one that is cut from the cloth of another pointing at the one whose cloth it is in the end; from its own
 * where that leads back to it, to none, or to scraps
 */
export function ownCloths(fabrics: readonly Fabric[]): readonly Fabric[] {
  const known = new Map(fabrics.map((fabric) => [fabric.id, fabric]));
  return fabrics.map((fabric) => {
    if (fabric.same === undefined) return fabric;
    const { same, ...own } = fabric;
    const seen = new Set([fabric.id]);
    let cloth = known.get(same);
    while (cloth?.same !== undefined && !seen.has(cloth.id)) {
      seen.add(cloth.id);
      cloth = known.get(cloth.same);
    }
    if (!cloth || cloth.id === fabric.id || cloth.same !== undefined || cloth.scraps || own.scraps) return own;
    return cloth.id === same ? fabric : { ...own, same: cloth.id };
  });
}
