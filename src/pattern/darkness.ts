import type { Fabric } from '../block/block.ts';
import type { Darkness } from '../sewing/pressing/trouble.ts';

/** @returns how dark these fabrics are: only the order means anything (the luma weights of ITU-R BT.601) */
export function darknessIn(fabrics: readonly Fabric[]): Darkness {
  const colors = new Map(fabrics.map(({ id, color }) => [id, color]));
  const channel = (color: string, at: number): number => Number.parseInt(color.slice(at, at + 2), 16);
  return (id) => {
    const color = colors.get(id)!;
    return -(299 * channel(color, 1) + 587 * channel(color, 3) + 114 * channel(color, 5));
  };
}
