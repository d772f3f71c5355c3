import { describe, expect, test } from 'vitest';
import { randomHalves, drawingOf } from '../../bench/drawings.ts';
import { sewing, type Step } from '../../src/geometry/piecing/ways.ts';

describe.each([[5, 2, 1], [6, 4, 2], [9, 3, 3], [12, 5, 4]] as const)('in a drawing of %i x %i cells in %i fabrics', (cells, fabrics, seed) => {
  const drawing = drawingOf(randomHalves(cells, fabrics, seed));

  test.each(['standard units', 'fewest pieces'] as const)('%s are found step by step: the cost never rises, the bound never falls, the last is the way', (way) => {
    const steps: Step[] = [];
    const search = sewing(drawing).steps(way);
    let step = search.next();
    for (; !step.done; step = search.next()) steps.push(step.value);
    expect(step.value).toEqual(sewing(drawing).way(way));
    expect(steps.length).toBeGreaterThan(0);
    steps.slice(1).forEach(({ cost, bound, piecing }, i) => {
      const before = steps[i]!;
      expect(cost).toBeLessThanOrEqual(before.cost);
      if (bound !== null) expect(bound).toBeGreaterThanOrEqual(before.bound!);
      if (cost === before.cost) expect(piecing).toBe(before.piecing);
    });
    expect(steps.every(({ left }) => left >= 0)).toBe(true);
  });
});
