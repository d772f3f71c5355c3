import type { ValueWords } from '../kind-names.ts';

/** HST, QST and HRT are what English-speaking quilters write for these kinds (common practice); the others have no short name of their own. */
export const VALUES_IN_ENGLISH: ValueWords = {
  kinds: {
    square: { one: 'square', many: 'squares' },
    rectangle: { one: 'rectangle', many: 'rectangles' },
    'half-square triangle': { one: 'half-square triangle', many: 'half-square triangles', short: { one: 'HST', many: 'HSTs' } },
    'quarter-square triangle': { one: 'quarter-square triangle', many: 'quarter-square triangles', short: { one: 'QST', many: 'QSTs' } },
    'split quarter-square triangle': {
      one: 'split quarter-square triangle',
      many: 'split quarter-square triangles',
      short: { one: 'split QST', many: 'split QSTs' },
    },
    'flying geese': { one: 'flying geese', many: 'flying geese' },
    'corner-triangle unit': { one: 'corner-triangle unit', many: 'corner-triangle units' },
    'square in a square': { one: 'square in a square', many: 'squares in a square' },
    'half-rectangle triangle': { one: 'half-rectangle triangle', many: 'half-rectangle triangles', short: { one: 'HRT', many: 'HRTs' } },
    peak: { one: 'peak', many: 'peaks' },
    'joined unit': { one: 'joined unit', many: 'joined units' },
    'partial-seam ring': { one: 'partial-seam ring', many: 'partial-seam rings' },
    'free unit': { one: 'free unit', many: 'free units' },
  },
  inches: 'in.',
  point: '.',
};
