import type { Block } from '../../block/block.ts';
import { areaAt, type Area } from '../../block/filling.ts';
import { whereIs } from '../../block/outline.ts';
import type { Stroke } from '../../block/painting.ts';
import { patchAt } from '../../block/patches.ts';
import type { Point } from '../../geometry/point.ts';
import { fabricAt, pointNear } from '../cell-fabrics.ts';
import { lineAlong, lineNear, outlineOf, type GridOutline } from '../gesture.ts';
import { AT_ONCE, type Grip, type Use } from './use.ts';

/** Most patches of a drawing in which areas are shown before they are filled: they are looked for anew where the pointer comes to one. */
const FEW = 250;

/** Fill, pick up, keep whole, sewn last: what they do, they do at once where they point. */
export function tapping({ bench, cells, at, aim, cell, turn, shifted, fabric, deeds, by }: Grip): Use {
  const line = (): Stroke | null => (by() === 'keys' ? lineAlong(cells(), cell(), turn()) : lineNear(cells(), at()));
  const area = areaFinder();

  const tap = (onePatch: boolean): void => {
    const { tool, block } = bench();
    if (tool === 'pick') return deeds.takeUpFabric(fabricAt(block, aim()));
    if (tool === 'fill') return deeds.fill([pointNear(aim())], onePatch ? 'patch' : 'area', fabric());
    if (tool === 'whole') return deeds.keepWhole([pointNear(aim())]);
    const here = line();
    if (here) deeds.pin('sewn last', [here]);
    else deeds.say('The edge of the block is no seam; point at a grid line inside it.');
  };

  return {
    ...AT_ONCE,
    marks: () => {
      const { tool, block } = bench();
      if (by() === null) return {};
      const cursor = by() === 'keys' || tool === 'pick' ? cell() : null;
      if (tool === 'last') {
        const here = line();
        return { basting: here && [outlineOf(here)], cursor };
      }
      if (tool === 'fill') {
        const color = block.fabrics.find(({ id }) => id === fabric())?.color ?? '#ffffff';
        const outlines = area(block, pointNear(aim()));
        return outlines ? { ghost: { outlines, color }, cursor } : { cursor: cell() };
      }
      const patch = tool === 'whole' ? block.patches[patchAt(block, pointNear(aim()))] : undefined;
      return { basting: patch ? [outlineOf({ points: patch.points, denominator: block.denominator })] : null, cursor };
    },
    press: () => tap(shifted()),
    use: () => tap(false),
    close: () => tap(true),
  };
}

/** @returns what finds the outlines of the area at a place, looking anew only where another one begins; null where none is to be shown */
function areaFinder(): (block: Block, at: Point) => readonly GridOutline[] | null {
  let known: { readonly block: Block; readonly area: Area; readonly outlines: readonly GridOutline[] } | null = null;
  const holds = ({ region, denominator }: Area, at: Point): boolean => {
    const scaled = { x: at.x * denominator, y: at.y * denominator, w: at.w };
    return whereIs(scaled, region.outer) === 'inside' && region.holes.every((hole) => whereIs(scaled, hole) === 'outside');
  };
  return (block, at) => {
    if (block.patches.length + block.seams.length > FEW) return null;
    if (known?.block === block && holds(known.area, at)) return known.outlines;
    const found = areaAt(block, at);
    if (!found.ok) return null;
    const { region, denominator } = found.value;
    const outlines = [region.outer, ...region.holes].map((points) => outlineOf({ points, denominator }));
    known = { block, area: found.value, outlines };
    return outlines;
  };
}
