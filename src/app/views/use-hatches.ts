import { useMemo } from 'react';
import type { Fabric } from '../../block/block.ts';
import { hatchingOf, tileOf } from '../../canvas/hatching.ts';
import { luminance } from '../../block/colour/luminance.ts';
import { useStore } from '../store.ts';
import { shown } from './shown.ts';

const NONE: ReadonlyMap<string, string> = new Map();

/** @returns each fabric's hatch as a background picture, by its id; none while the cloth on the table is not hatched, nor for a plain fabric */
export function useHatches(fabrics: readonly Fabric[]): ReadonlyMap<string, string> {
  const hatched = useStore(shown, ({ hatches }) => hatches);
  return useMemo(() => {
    if (!hatched) return NONE;
    const hatching = hatchingOf(fabrics, luminance, 1);
    const tiles = fabrics.map(({ id }) => [id, tileOf(hatching, id)] as const);
    return new Map(tiles.flatMap(([id, tile]) => (tile ? [[id, `url(${tile.toDataURL()})`] as const] : [])));
  }, [fabrics, hatched]);
}
