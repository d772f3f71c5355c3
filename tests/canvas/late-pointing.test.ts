import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Pointing } from '../../src/canvas/hand/bench.ts';
import { createLatePointing } from '../../src/canvas/late-pointing.ts';

const at = (column: number, by: Pointing['by'] = 'pointer'): Pointing => ({ by, cell: [column, 0], places: [[column + 0.5, 0.5]] });

describe('where the hand is', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  const heard: (number | null)[] = [];
  let drawing = false;
  const pointing = () => {
    heard.length = 0;
    drawing = false;
    return createLatePointing((told) => void heard.push(told && told.cell[0]), () => drawing);
  };

  it('is told in the pauses of a pointer that moves, the last place only', () => {
    const { point } = pointing();
    [1, 2, 3].forEach((column) => point(at(column)));
    expect(heard).toEqual([]);
    vi.runAllTimers();
    expect(heard).toEqual([3]);
    point(at(4));
    vi.runAllTimers();
    expect(heard).toEqual([3, 4]);
  });

  it('is not told while the pointer draws, and at once when it is lifted', () => {
    const { point, lifted } = pointing();
    point(at(1));
    drawing = true;
    [2, 3].forEach((column) => point(at(column)));
    vi.runAllTimers();
    expect(heard).toEqual([]);
    drawing = false;
    lifted();
    expect(heard).toEqual([3]);
    vi.runAllTimers();
    lifted();
    expect(heard).toEqual([3]);
  });

  it('is told at once by keys and when the pointer leaves, and nothing older comes after', () => {
    const { point } = pointing();
    point(at(1));
    point(at(5, 'keys'));
    point(at(2));
    point(null);
    vi.runAllTimers();
    expect(heard).toEqual([5, null]);
  });
});
