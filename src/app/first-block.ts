import type { Block } from '../block/block.ts';
import { rational } from '../measure/rational.ts';

/** The empty block that lies on the table where there is no other. */
export const firstBlock = (): Block => ({
  name: 'New block',
  finished: { width: rational(12), height: rational(12), unit: 'in' },
  grid: { columns: 4, rows: 4 },
  denominator: 1,
  fabrics: [
    { id: 'sailcloth', name: 'Sailcloth', color: '#f1e9d8' },
    { id: 'deep-water', name: 'Deep water', color: '#234e63' },
    { id: 'buoy', name: 'Buoy', color: '#b5472a' },
    { id: 'marram', name: 'Marram', color: '#8a9a5b' },
  ],
  ground: 'sailcloth',
  patches: [],
  seams: [],
});
