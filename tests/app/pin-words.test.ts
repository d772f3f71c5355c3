import { describe, expect, test } from 'vitest';
import { pinInWords } from '../../src/app/pin-words.ts';

const BLOCK = { denominator: 2, grid: { columns: 4, rows: 3 } } as const;

describe('where a pin lies, in words', () => {
  test('is told by columns and rows on the grid, and by its points elsewhere', () => {
    const unit = (from: [number, number], to: [number, number]) => pinInWords(BLOCK, { pin: 'one unit', from, to });
    const last = (from: [number, number], to: [number, number]) => pinInWords(BLOCK, { pin: 'sewn last', from, to });
    expect(unit([0, 0], [4, 2])).toBe('columns 1 to 2, row 1');
    expect(unit([8, 6], [6, 2])).toBe('column 4, rows 2 to 3');
    expect(unit([1, 0], [4, 2])).toBe('from 1/2 across, 0 down to 2 across, 1 down');
    expect(last([4, 0], [4, 6])).toBe('between columns 2 and 3');
    expect(last([8, 2], [0, 2])).toBe('between rows 1 and 2');
    expect(last([4, 0], [4, 4])).toBe('from 2 across, 0 down to 2 across, 2 down');
  });
});
