import type { Block, LengthUnit } from '../../src/block/block.ts';
import type { Choices } from '../../src/block/choices.ts';
import type { Rational } from '../../src/measure/rational.ts';

/** Every row that can be is sewn in strip sets. */
export const IN_SETS: Choices = { methods: { 'joined unit': 'strip-sets' } };

/** A block of cells, row by row, each a letter that is its fabric. */
export function checks(side: Rational, rows: readonly string[], unit: LengthUnit = 'in'): Block {
  const cells = rows.flatMap((row, y) => [...row].map((fabric, x) => ({ fabric, x, y })));
  return {
    name: 'Strips',
    finished: { width: side, height: side, unit },
    grid: { columns: rows[0]!.length, rows: rows.length },
    fabrics: [...new Set(rows.join(''))].map((id) => ({ id, name: id, color: '#808080' })),
    ground: rows[0]![0]!,
    denominator: 1,
    patches: cells.map(({ fabric, x, y }) => ({ fabric, points: [[x, y], [x + 1, y], [x + 1, y + 1], [x, y + 1]] })),
    seams: [],
  };
}
