import { blank } from '../block/blank.ts';
import type { Block } from '../block/block.ts';
import { rational } from '../measure/rational.ts';

/** @returns the empty block that lies on the table where there is no other */
export function firstBlock(): Block {
  const empty = blank({
    name: 'New block',
    finished: { width: rational(12), height: rational(12), unit: 'in' },
    grid: { columns: 4, rows: 4 },
    fabrics: [
      { id: 'sailcloth', name: 'Sailcloth', color: '#f1e9d8' },
      { id: 'deep-water', name: 'Deep water', color: '#234e63' },
      { id: 'buoy', name: 'Buoy', color: '#b5472a' },
      { id: 'marram', name: 'Marram', color: '#8a9a5b' },
    ],
  });
  if (!empty.ok) throw new Error(empty.problem.sentence);
  return empty.value;
}
