import { useMemo } from 'react';
import type { Block } from '../../block/block.ts';
import { cellsOf } from '../../block/cells.ts';
import { QUARTER_MIDDLES } from '../../canvas/cell-fabrics.ts';
import type { Over } from '../../canvas/easel.ts';
import { sewnInk } from '../../canvas/draw-sewing.ts';
import { sizeInks, sizesInWords, unitInks } from '../../canvas/over-ink.ts';
import { piecesUnder, type PieceInk } from '../../canvas/piece-ink.ts';
import type { Cell } from '../../canvas/stride.ts';
import { gridPointIn } from '../../canvas/view.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { lights } from '../lights.ts';
import { usePrints } from '../scraps/use-prints.ts';
import { useStore } from '../store.ts';
import type { Shown } from './shown.ts';

/**
 * @returns what is drawn over the cloth
 * @param pattern that of this very drawing, or null while there is none
 */
export function useOver(block: Block, pattern: Pattern | null, pieces: readonly PieceInk[], letters: ReadonlyMap<string, string>, shown: Shown): Over {
  const { grid } = block;
  const units = useMemo(() => (shown.units && pattern ? unitInks(pattern, grid) : []), [shown.units, pattern, grid]);
  const sizes = useMemo(() => (shown.sizes && pattern ? sizeInks(pattern) : null), [shown.sizes, pattern]);
  const unfolded = useStore(lights, ({ divisions }) => divisions);
  const divided = shown.seams || unfolded;
  const prints = usePrints(pattern, block, shown.prints);
  const sewn = useMemo(() => sewnInk(pattern, grid, divided), [pattern, grid, divided]);
  return useMemo(
    () => ({ pieces, grid: shown.grid, edges: shown.edges, seams: shown.seams, units, sizes, letters: shown.letters ? letters : null, prints, sewn }),
    [pieces, shown.grid, shown.edges, shown.seams, shown.letters, units, sizes, letters, prints, sewn],
  );
}

/** @returns how the pieces in a cell are cut, in words that follow others: ", cut 4 7/8 in. square"; empty where nothing is */
export function cutsInCell(block: Block, pattern: Pattern, pieces: readonly PieceInk[], [column, row]: Cell): string {
  const places = QUARTER_MIDDLES.map(([u, v]) => gridPointIn(cellsOf(block.grid), { column, row, u, v }));
  const words = sizesInWords(pattern, piecesUnder(pieces, places));
  return words === '' ? '' : `, ${words}`;
}
