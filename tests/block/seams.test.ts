import { describe, expect, it } from 'vitest';
import { drawSeam, removeSeam, toggleSeam } from '../../src/block/seams.ts';
import { must, unpainted } from './drawn.ts';

describe('a drawn seam', () => {
  it('is drawn once, and drawn again taken away, from whichever end', () => {
    const once = must(toggleSeam(unpainted(4, 4), [[0, 2], [4, 2]], 1));
    expect(once.seams).toEqual([[[0, 2], [4, 2]]]);
    expect(must(drawSeam(once, [[4, 2], [0, 2]], 1))).toBe(once);
    expect(must(toggleSeam(once, [[4, 2], [0, 2]], 1))).toEqual(unpainted(4, 4));
    expect(removeSeam(once, 0)).toEqual(unpainted(4, 4));
  });

  it('may end between grid points, on a finer lattice', () => {
    const fine = must(toggleSeam(unpainted(4, 4), [[1, 0], [8, 7]], 2));
    expect(fine).toMatchObject({ denominator: 2, seams: [[[1, 0], [8, 7]]] });
    expect(must(toggleSeam(fine, [[16, 14], [2, 0]], 4)).seams).toEqual([]);
  });

  it('is refused off the block and where it has no length', () => {
    expect(toggleSeam(unpainted(4, 4), [[0, 2], [5, 2]], 1)).toMatchObject({ problem: { code: 'off-the-grid' } });
    expect(toggleSeam(unpainted(4, 4), [[2, 2], [2, 2]], 1)).toMatchObject({ problem: { code: 'seam-without-length' } });
  });
});
